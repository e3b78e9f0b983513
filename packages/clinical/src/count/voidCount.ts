import { type NumberFault, readFields } from '../contract/fields.js';
import type { Flag } from '../contract/flag.js';
import { inOrder } from '../contract/inOrder.js';
import { isBlank } from '../contract/numberText.js';
import type { Parsed } from '../contract/refusal.js';
import type { CountFlagCode, CountReasonCode } from './codes.js';
import type { Count } from './count.js';
import type { CountResult } from './countResult.js';
import { parseCount, readStart } from './parseCount.js';
import { type CountRules, DEFAULT_COUNT_RULES } from './rules.js';

/** Why a count was broken off. Source: this project; the words of a note belong to the note. */
export const INTERRUPTIONS = [
  'lost-count',
  'person-moved',
  'spoken-to',
  'called-away',
  'screen-left',
  'other',
] as const;

export type Interruption = {
  /** Since the clock was started; null if nothing timed it. */
  readonly atSeconds: number | null;
  readonly reason: (typeof INTERRUPTIONS)[number];
};

/**
 * A count that was broken off: it is kept, and it has no value. The beats counted until then are left out on
 * purpose, so that nothing can turn them into a rate.
 */
export type VoidCount = Omit<Count, 'n'> & { readonly interrupted: Interruption };

/** The result of a void count: every number null, why `interrupted`, and the same window again. */
export type VoidResult = {
  readonly [Key in Exclude<keyof CountResult, 'flags' | 'nextWindowSeconds' | 'why'>]: null;
} & {
  readonly flags: readonly Flag<CountFlagCode>[];
  readonly nextWindowSeconds: number;
  readonly why: readonly Flag<CountReasonCode>[];
};

const FIELDS = ['windowSeconds', 'clock', 'first', 'of', 'interrupted'] as const;

/**
 * Reads a count or a void one from outside. An object whose `interrupted` is not blank is void; it then has no `n`
 * (a count of a window that was not finished is refused as an unknown field, not dropped in silence).
 *
 * Errors: those of `parseCount`, and `/interrupted/atSeconds`, `/interrupted/reason`.
 */
export function parseCountOrVoid(
  input: unknown,
  rules: CountRules = DEFAULT_COUNT_RULES,
): Parsed<Count | VoidCount> {
  if (typeof input !== 'object' || input === null || !('interrupted' in input))
    return parseCount(input, rules);
  const { interrupted, ...rest } = input as { interrupted: unknown };
  if (isBlank(interrupted)) return parseCount(rest, rules);
  const reader = readFields(input, FIELDS);
  const { of, windowSeconds, clock, first } = readStart(reader, rules);
  const inner = readFields(interrupted, ['atSeconds', 'reason'], '/interrupted');
  const isTimed = !isBlank((interrupted as { atSeconds?: unknown }).atSeconds);
  const atSeconds = !isTimed
    ? null
    : inner.number('atSeconds', (value) => interruptionFault(value, windowSeconds));
  const reason = inner.choice('reason', INTERRUPTIONS, null);
  const refusals = inOrder([...reader.refusals, ...inner.refusals], FIELDS);
  if (refusals.length > 0 || of === null || windowSeconds === null) return { ok: false, refusals };
  if (clock === null || first === null || reason === null) return { ok: false, refusals };
  return { ok: true, value: { of, windowSeconds, clock, first, interrupted: { atSeconds, reason } } };
}

/** Whether a count was broken off and so has no value. */
export function isVoid(count: Count | VoidCount): count is VoidCount {
  return 'interrupted' in count;
}

/**
 * The result of a void count. Stop, wait, start again; do not guess: the window to count next is the same one.
 * Source: bedside handbook 1.2 (common practice, no source).
 */
export function voidResult({ windowSeconds, interrupted }: VoidCount): VoidResult {
  const { atSeconds } = interrupted;
  return {
    perMinute: null,
    stepPerMinute: null,
    lowPerMinute: null,
    highPerMinute: null,
    lowIncluded: null,
    highIncluded: null,
    flags: [],
    nextWindowSeconds: windowSeconds,
    why: [{ code: 'interrupted', figures: atSeconds === null ? {} : { atSeconds } }],
  };
}

function interruptionFault(atSeconds: number, windowSeconds: number | null): NumberFault | null {
  if (atSeconds < 0) return { code: 'out-of-range', expected: 'not-negative', figures: { minimum: 0 } };
  if (windowSeconds === null || atSeconds < windowSeconds) return null;
  return { code: 'contradicts', expected: 'before-window-ends', figures: { windowSeconds } };
}
