import { parseRun, UNKNOWN_RUN_CIRCUMSTANCES } from '@evenfall/clinical';
import { chartRun, NOTHING_CHOSEN, type StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { AGENT, AT, begun, DEVICE, ID, NO_PROTOCOL, NOTHING_BEFORE, PERSON } from '../round/testing.js';
import { readBefore } from './readBefore.js';

const UNDER = { facts: NOTHING_BEFORE, inForce: NO_PROTOCOL, program: 'evenfall test' };

/** A reading by ear that was charted at a minute; its signing is not needed for it to be the newest. */
function charted(minute: number, moments: readonly { what: string; mmHg: number }[]): StoredEntry {
  const read = parseRun({ method: 'auscultation', moments });
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const arm = { site: 'upper-arm', side: 'right', posture: 'sit' } as const;
  const place = { ...arm, cuff: null, armCm: null, override: null };
  const done = {
    run: read.value,
    place,
    circumstances: { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: null },
    override: null,
    note: null,
  };
  const at = AT(minute);
  return {
    ...{ frame: 1, id: ID(20), book: 'care', kind: 'run', schema: 6, person: PERSON, round: ID(50) },
    ...{ session: null, agent: AGENT, role: 'observer', device: DEVICE, sequence: 1, measuredAt: at },
    ...{ writtenAt: at.at, recordedAt: at.at, amends: null },
    content: chartRun(done, NOTHING_CHOSEN, 'evenfall test'),
  } as unknown as StoredEntry;
}
const HEARD = [
  { what: 'first sound', mmHg: 118 },
  { what: 'last sound', mmHg: 62 },
];
const at = (minute: number) => Date.parse(AT(minute).at);

test('the reading before is the newest that is charted, with its age', () => {
  expect(readBefore(begun(), [], at(9), UNDER)).toBeNull();
  expect(readBefore(begun(), [charted(5, HEARD)], at(9), UNDER)).toEqual({
    systolic: 118,
    diastolic: 62,
    minutesAgo: 4,
  });
});

// Bedside handbook 3.7: with sounds to zero the diastolic is where they muffled.
test('with sounds to zero its diastolic is the one that is used', () => {
  const muffled = { what: 'muffled', mmHg: 62 };
  const toZero = [HEARD[0], muffled, { what: 'last sound', mmHg: 0 }] as typeof HEARD;
  expect(readBefore(begun(), [charted(5, toZero)], at(9), UNDER)).toMatchObject({ diastolic: 62 });
});

test('of one that seems later that is said', () => {
  expect(readBefore(begun(), [charted(5, HEARD)], at(4), UNDER)).toMatchObject({ minutesAgo: -1 });
});
