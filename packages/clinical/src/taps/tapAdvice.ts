import type { Flag } from '../contract/flag.js';
import type { Circumstances } from '../count/circumstances.js';
import type { CountFlagCode, CountReasonCode } from '../count/codes.js';
import type { Count, CountOf } from '../count/count.js';
import { farOutFlags } from '../count/farOut.js';
import { nextWindow } from '../count/nextWindow.js';
import type { CountRules } from '../count/rules.js';
import type { Rhythm } from './rhythm.js';
import { IRREGULAR, type TapResult } from './tapResult.js';

/** What to do after tapping, by the same rules as after a count; null where the taps stand. */
export type TapAdvice = {
  readonly nextWindowSeconds: number | null;
  readonly nextWhy: readonly Flag<CountReasonCode>[];
  /** Very slow, very fast: look at the person first. */
  readonly flags: readonly Flag<CountFlagCode>[];
};

/** Rules about the length of a window do not hold for taps: each is known at its moment, and none is cut off. */
const OF_WINDOWS: readonly CountReasonCode[] = ['shorter-than-offered', 'fast-for-window'];

/**
 * The full-minute rules for taps: beats from the first to the last tap, in the seconds between them. A rhythm that was
 * tapped irregular counts as felt irregular. Without a rate there is nothing to advise.
 * Source: bedside handbook 1.5, 1.12.
 */
export function tapAdvice(
  of: CountOf,
  result: TapResult,
  circumstances: Circumstances,
  rules: CountRules,
): TapAdvice {
  const { perMinute, beats } = result;
  if (perMinute === null) return { nextWindowSeconds: null, nextWhy: [], flags: [] };
  const n = beats - 1;
  const tapped: Count = { of, n, windowSeconds: (60 * n) / perMinute, clock: 'beat', first: 0 };
  const known = { ...circumstances, rhythmFelt: feltOf(result.rhythm, circumstances) };
  const { why } = nextWindow(tapped, known, rules);
  const nextWhy = why.filter(({ code }) => !OF_WINDOWS.includes(code));
  return {
    nextWindowSeconds: nextWhy.length === 0 ? null : rules.fullWindowSeconds,
    nextWhy,
    flags: farOutFlags(tapped, circumstances, rules),
  };
}

function feltOf(rhythm: Rhythm, { rhythmFelt }: Circumstances): Circumstances['rhythmFelt'] {
  return IRREGULAR.includes(rhythm) ? 'irregular' : rhythmFelt;
}
