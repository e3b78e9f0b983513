import type { Flag } from '../contract/flag.js';
import { settled } from '../contract/threshold.js';
import type { Circumstances } from '../count/circumstances.js';
import type { CountFlagCode, CountReasonCode } from '../count/codes.js';
import type { Count, CountOf } from '../count/count.js';
import { farOutFlags } from '../count/farOut.js';
import { nextWindow } from '../count/nextWindow.js';
import type { CountRules } from '../count/rules.js';
import type { TapFlagCode } from './codes.js';
import { IRREGULAR, type TapResult } from './tapResult.js';

/** What to do after tapping, by the same rules as after a count; null where the taps stand. */
export type TapAdvice = {
  readonly nextWindowSeconds: number | null;
  readonly nextWhy: readonly Flag<CountReasonCode>[];
  /** Very slow, very fast: look at the person first. Irregular: felt so, if the taps do not show it. */
  readonly flags: readonly Flag<CountFlagCode | TapFlagCode>[];
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
  const tapped: Count = { of, n, windowSeconds: settled((60 * n) / perMinute), clock: 'beat', first: 0 };
  const rhythmFelt = IRREGULAR.includes(result.rhythm) ? 'irregular' : circumstances.rhythmFelt;
  const known = { ...circumstances, rhythmFelt };
  const { why } = nextWindow(tapped, known, rules);
  const nextWhy = why.filter(({ code }) => !OF_WINDOWS.includes(code));
  return {
    nextWindowSeconds: nextWhy.length === 0 ? null : rules.fullWindowSeconds,
    nextWhy,
    flags: [...farOutFlags(tapped, circumstances, rules), ...feltFlags(result, rhythmFelt)],
  };
}

/** A rhythm felt irregular is told, whatever the taps show and however long they go on. */
function feltFlags({ flags }: TapResult, rhythmFelt: Circumstances['rhythmFelt']): Flag<TapFlagCode>[] {
  const isTold = flags.some(({ code }) => code === 'rhythm-irregular');
  return rhythmFelt !== 'irregular' || isTold ? [] : [{ code: 'rhythm-irregular', figures: {} }];
}
