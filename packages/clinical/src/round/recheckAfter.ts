import type { RecheckRules } from './recheckRules.js';

/** Why a pressure is looked at again, the most urgent first. */
export const RECHECK_CLASSES = ['very-low-or-unwell', 'severe-in-pregnancy', 'severe', 'abnormal'] as const;
export type RecheckClass = (typeof RECHECK_CLASSES)[number];

/** What a repeat is due for; the sentence of each says what to do. */
export type RecheckCode =
  | 'recheck-at-once'
  | 'recheck-pregnancy'
  | 'recheck-severe'
  | 'recheck-abnormal-soon'
  | 'recheck-abnormal-later';

/** A repeat that is due, in seconds after the end of the reading: not before `fromSeconds`, by `withinSeconds` at the latest. */
export type Recheck = {
  readonly code: RecheckCode;
  readonly fromSeconds: number;
  /** Null where no source gives a latest time. */
  readonly withinSeconds: number | null;
};

/**
 * The repeats that are due for a class, the first one first; the place's own delays. Somebody who is unwell is never
 * told to wait.
 *
 * Source: bedside handbook 3.15 and 3.16; docs/conventions.md; at once and 10 to 15 minutes are common practice.
 */
export function recheckAfter(recheckClass: RecheckClass, rules: RecheckRules): Recheck[] {
  switch (recheckClass) {
    case 'very-low-or-unwell':
      return [{ code: 'recheck-at-once', fromSeconds: 0, withinSeconds: rules.atOnceWithinSeconds }];
    case 'severe-in-pregnancy':
      return [{ code: 'recheck-pregnancy', fromSeconds: 0, withinSeconds: rules.pregnancyWithinSeconds }];
    case 'severe':
      return [{ code: 'recheck-severe', fromSeconds: rules.severeRestSeconds, withinSeconds: null }];
    case 'abnormal':
      return [
        {
          code: 'recheck-abnormal-soon',
          fromSeconds: rules.abnormalSoonSeconds,
          withinSeconds: rules.abnormalSoonWithinSeconds,
        },
        {
          code: 'recheck-abnormal-later',
          fromSeconds: rules.abnormalLaterSeconds,
          withinSeconds: rules.abnormalLaterWithinSeconds,
        },
      ];
  }
}

/** The most urgent first; null is an alert of which no pressure is to be looked at again. */
const BY_URGENCY: readonly (string | null)[] = [
  'recheck-at-once',
  null,
  'recheck-pregnancy',
  'recheck-severe',
  'recheck-abnormal-soon',
  'recheck-abnormal-later',
] satisfies readonly (RecheckCode | null)[];

/**
 * How urgent a repeat is beside others: 0 is the most urgent; a code of another program comes last.
 *
 * @param code null: an alert is open, and no pressure is to be looked at again
 * Source: bedside handbook 3.15 and 3.16, as `RECHECK_CLASSES`; where an alert alone stands: common practice, no source.
 */
export function recheckUrgency(code: string | null): number {
  const at = BY_URGENCY.indexOf(code);
  return at === -1 ? BY_URGENCY.length : at;
}
