import { DEFAULT_DEFLATION_RULES, DEFAULT_INFLATION_RULES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { AT, begun, ID } from '../round/testing.js';
import type { DraftRun } from './pressureDraft.js';
import { secondsToWait, withPlace, withReading } from './pressureSteps.js';
import { readRun } from './readRun.js';
import { previousInflation } from './runCircumstances.js';

const RIGHT = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: null,
  armCm: null,
  override: null,
} as const;
const LEFT = { ...RIGHT, side: 'left' } as const;
const at = (seconds: number) => ({ session: 's', atMs: seconds * 1000 });

function taken(
  sequence: number,
  place: DraftRun['place'],
  { up, kept }: { readonly up: number; readonly kept: number },
): DraftRun {
  const typedAs = { method: 'auscultation', typed: '148/92', fields: {}, reinflated: false } as const;
  const { run } = readRun(typedAs, { pulsePerMinute: null, lostMmHg: null }, DEFAULT_DEFLATION_RULES);
  if (run === null) throw new Error('148/92');
  return {
    kind: 'run',
    entry: ID(sequence),
    sequence,
    measuredAt: AT(2),
    run,
    place,
    uprightMinutes: null,
    inflatedAt: at(up),
    keptAt: at(kept),
    typedAs,
    note: null,
  };
}

// Bedside handbook 3.10: under 30 s is too short for the blood that a cuff holds back in its arm; 60 s by default.
test('an arm is measured from when its own cuff was let go, not from the other one', () => {
  const first = taken(10, RIGHT, { up: 0, kept: 40 });
  const other = taken(11, LEFT, { up: 69, kept: 110 });
  const back = taken(12, { ...RIGHT, posture: 'stand' }, { up: 120, kept: 160 });
  const { pressure } = [first, other, back].reduce(withReading, begun());
  expect(previousInflation(pressure, first)).toBeNull();
  expect(previousInflation(pressure, other)).toBeNull();
  expect(previousInflation(pressure, back)).toEqual({ was: 'reading', secondsSinceRelease: 80 });
  const forearm = taken(13, { ...LEFT, site: 'forearm' }, { up: 139, kept: 170 });
  expect(previousInflation(withReading({ ...begun(), pressure }, forearm).pressure, forearm)).toEqual({
    was: 'reading',
    secondsSinceRelease: 29,
  });
  const thigh = taken(14, { ...LEFT, site: 'thigh' }, { up: 180, kept: 200 });
  expect(previousInflation(withReading({ ...begun(), pressure }, thigh).pressure, thigh)).toBeNull();
});

test('nobody waits for the other arm', () => {
  const draft = withReading(withPlace(begun(), RIGHT, false), taken(10, RIGHT, { up: 0, kept: 40 }));
  const wait = (place: DraftRun['place']) =>
    secondsToWait({ ...draft.pressure, place }, at(69), DEFAULT_INFLATION_RULES);
  expect(wait(RIGHT)).toBe(31);
  expect(wait(LEFT)).toBe(0);
});
