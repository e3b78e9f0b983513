import { listPresets, presetProtocol } from '@evenfall/clinical';
import { type InForce, inForceUnder } from '@evenfall/record';
import { expect, test } from 'vitest';
import { NO_PRESSURE } from '../pressure/pressureDraft.js';
import { beforeAnything } from './beforeAnything.js';
import { type RoundDraft, withMeasureNotDone, withNotDone } from './draft.js';
import { isAnythingTaken } from './events.js';
import { standingOf } from './standing.js';
import { begun, complete, NO_PROTOCOL, NOTHING_BEFORE } from './testing.js';

const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: null,
  armCm: null,
  override: null,
} as const;
const ASLEEP = { reason: 'asleep', text: null } as const;

const prepared: RoundDraft = { ...begun(), exceptions: [] };
const withoutCounts = withNotDone(withNotDone(prepared, 'pulse', ASLEEP), 'breaths', ASLEEP);
const placed: RoundDraft = { ...withoutCounts, pressure: { ...NO_PRESSURE, place: PLACE } };
const DRAFTS: readonly RoundDraft[] = [
  begun(),
  prepared,
  { ...prepared, exceptions: ['calm'], wanted: ['other-arm', 'lying-and-standing'] },
  { ...prepared, isPregnant: true, unwell: true },
  withNotDone(prepared, 'pulse', ASLEEP),
  withoutCounts,
  placed,
  { ...placed, pressure: { ...placed.pressure, notDone: ASLEEP } },
  withMeasureNotDone(prepared, 'temperature', ASLEEP),
];

/** No protocol, and one of each preset of the section that says what a round takes. */
const IN_FORCE: readonly InForce[] = [
  NO_PROTOCOL,
  ...listPresets()
    .filter(({ section }) => section === 'round')
    .map(({ id }) => {
      const made = presetProtocol({ round: id });
      if (!made.ok) throw new Error(id);
      return inForceUnder(made.value, id);
    }),
];

// What the whole of a round says is the measure: the short way to its first step must say the same.
test('what comes first in a round is the same without what readings are judged by', () => {
  expect(IN_FORCE.length).toBeGreaterThan(1);
  const steps = new Set<string>();
  for (const inForce of IN_FORCE) {
    for (const draft of DRAFTS) {
      const under = { facts: NOTHING_BEFORE, inForce };
      const { state, next } = standingOf(draft, { ...under, program: 'evenfall 0.0.0' });
      expect(beforeAnything(draft, under)).toEqual({ state, step: next.step });
      steps.add(next.step);
    }
  }
  expect([...steps]).toEqual(expect.arrayContaining(['prepare', 'pulse', 'breaths', 'cuff', 'palpate']));
});

test('it is asked only where nothing was taken', () => {
  expect(DRAFTS.map(isAnythingTaken)).toEqual(DRAFTS.map(() => false));
  expect(isAnythingTaken(complete())).toBe(true);
});
