import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import type { RunFlagCode } from './codes.js';
import { DEFLATION_COMPARISONS as SIDE } from './comparisons.js';
import { isLetDownPerBeat } from './perBeat.js';
import type { Rates } from './rates.js';
import type { DeflationRules } from './rules.js';

type Flags = Flag<RunFlagCode>[];

/**
 * Whether the cuff was let down too fast or too slowly. At a slow or irregular pulse the drop in one beat is
 * judged, and a fall slower than the taught one is then no fault. Source: bedside handbook 3.6.
 */
export function rateFlags(
  rates: Rates,
  pulsePerMinute: number | null,
  isIrregular: boolean,
  rules: DeflationRules,
): Flags {
  const isPerBeat = isLetDownPerBeat(pulsePerMinute, isIrregular, rules);
  return [
    ...perSecond(
      rates.earlyDeflationRateMmHgPerSecond,
      'early-too-fast',
      isPerBeat ? null : 'early-too-slow',
      rules,
    ),
    ...perSecond(rates.deflationRateMmHgPerSecond, 'too-fast', isPerBeat ? null : 'too-slow', rules),
    ...(isPerBeat ? perBeatFlags(rates.dropPerBeatMmHg, rules) : []),
  ];
}

function perSecond(
  rate: number | null,
  fast: RunFlagCode,
  slow: RunFlagCode | null,
  { slowestMmHgPerSecond, fastestMmHgPerSecond }: DeflationRules,
): Flags {
  if (rate === null) return [];
  const figures = { mmHgPerSecond: rate, slowestMmHgPerSecond, fastestMmHgPerSecond };
  if (passes(settled(rate), SIDE.fastestMmHgPerSecond, fastestMmHgPerSecond))
    return [{ code: fast, figures }];
  const isSlow = passes(settled(rate), SIDE.slowestMmHgPerSecond, slowestMmHgPerSecond);
  return isSlow && slow !== null ? [{ code: slow, figures }] : [];
}

function perBeatFlags(dropPerBeatMmHg: number | null, { fastestPerBeatMmHg }: DeflationRules): Flags {
  if (dropPerBeatMmHg === null) return [];
  if (!passes(settled(dropPerBeatMmHg), SIDE.fastestPerBeatMmHg, fastestPerBeatMmHg)) return [];
  return [{ code: 'too-fast-per-beat', figures: { dropPerBeatMmHg, fastestPerBeatMmHg } }];
}
