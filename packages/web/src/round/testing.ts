import { type CountOf, NO_ROUND_FACTS } from '@evenfall/clinical';
import { type InForce, NOTHING_CHOSEN } from '@evenfall/record';
import { begunRound, type DraftValue, NOTHING_NOTICED, type RoundDraft, withValue } from './draft.js';
import type { Facts } from './facts.js';

/** Parts that the tests of a round share: ids of the right shape, one clinic without a protocol. */
export const ID = (n: number) => `01890a5d-ac96-774b-bcce-${String(n).padStart(12, '0')}`;
export const PERSON = ID(1);
export const AGENT = ID(2);
export const DEVICE = ID(3);

export const AT = (minute: number) => ({
  at: `2026-03-05T10:${String(minute).padStart(2, '0')}:00.000+01:00`,
  zone: 'Europe/Vienna',
  asEntered: null,
});

export const NO_PROTOCOL: InForce = NOTHING_CHOSEN;
export const NOTHING_BEFORE: Facts = {
  ageMonths: null,
  isFirstSet: false,
  previousPerMinute: { pulse: null, breaths: null },
  round: { ...NO_ROUND_FACTS, arms: [] },
};

export const begun = (): RoundDraft => begunRound(PERSON, { round: ID(10), signing: ID(11), begunAt: AT(0) });

/** A value counted: `counted(20, 'pulse', 19, 15)` is 19 beats in 15 s. */
export function counted(id: number, of: CountOf, n: number, windowSeconds: number): DraftValue {
  return {
    entry: ID(id),
    sequence: id,
    measuredAt: AT(1),
    noticed: NOTHING_NOTICED,
    kind: 'count',
    count: { of, n, windowSeconds, clock: 'any', first: 1 },
  };
}

/** A round with 19 beats in 15 s and 16 breaths in 60 s. */
export const complete = (): RoundDraft =>
  withValue(
    withValue(begun(), 'pulse', counted(20, 'pulse', 19, 15)),
    'breaths',
    counted(21, 'breaths', 16, 60),
  );

/** How the round of the tests is signed: by an observer in a clinic without a protocol. */
export const SIGNED = {
  agent: AGENT,
  role: 'observer',
  device: DEVICE,
  signedAt: AT(5),
  sequence: 40,
  facts: NOTHING_BEFORE,
  inForce: NO_PROTOCOL,
  program: 'evenfall test',
} as const;
