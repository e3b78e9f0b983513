import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import { EQUIPMENT_COMPARISONS as C } from './comparisons.js';
import type { ComparisonPoint, GaugeLog } from './gaugeLog.js';
import { DEFAULT_EQUIPMENT_RULES, type EquipmentRules } from './rules.js';

/** `good` or `failed`; `incomplete` where too little was read to say either; `none` of what is no check. */
export type GaugeVerdict = 'good' | 'failed' | 'incomplete' | 'none';

/** What is wrong with a gauge. */
export type GaugeFlag = 'gauge-rest-out' | 'gauge-reads-high' | 'gauge-reads-low' | 'gauge-leaks';
/** Why a check cannot call a gauge good. */
export type GaugeWhy = 'gauge-few-points' | 'gauge-narrow-points' | 'gauge-leak-short';

/** What a check of a gauge comes to. */
export type GaugeResult = {
  readonly verdict: GaugeVerdict;
  /** What the gauge shows minus what the pressure is, where it is furthest out, mmHg; null where nothing was compared. */
  readonly errorMmHg: number | null;
  /** The pressure at which it is furthest out; the lower of two alike. */
  readonly errorAtMmHg: number | null;
  /** Mean over the points of a comparison, mmHg. */
  readonly meanErrorMmHg: number | null;
  readonly leakMmHgPerMinute: number | null;
  readonly flags: readonly Flag<GaugeFlag>[];
  readonly why: readonly Flag<GaugeWhy>[];
};

/** The rule by which a check is judged; a changed one gets another name. */
export const GAUGE_RULE = 'gauge-1';

const NOTHING: GaugeResult = {
  verdict: 'none',
  errorMmHg: null,
  errorAtMmHg: null,
  meanErrorMmHg: null,
  leakMmHgPerMinute: null,
  flags: [],
  why: [],
};

/**
 * Judges a check of a gauge by the rules of the place. One point too far out fails it however few there are; it is good only where enough of the
 * scale was looked at. Limits are included: a gauge that is out by exactly the most it may be is good.
 */
export function gaugeResult(log: GaugeLog, rules: EquipmentRules = DEFAULT_EQUIPMENT_RULES): GaugeResult {
  switch (log.of) {
    case 'zero':
      return zeroResult(log.restMmHg, rules);
    case 'comparison':
      return comparisonResult(log.points, rules);
    case 'leak':
      return leakResult(log, rules);
    default:
      return NOTHING;
  }
}

function zeroResult(restMmHg: number, { mostRestMmHg }: EquipmentRules): GaugeResult {
  const isOut = passes(Math.abs(restMmHg), C.mostRestMmHg, mostRestMmHg);
  return {
    ...NOTHING,
    verdict: isOut ? 'failed' : 'good',
    errorMmHg: restMmHg,
    errorAtMmHg: 0,
    flags: isOut
      ? [{ code: 'gauge-rest-out', figures: { errorMmHg: restMmHg, limitMmHg: mostRestMmHg } }]
      : [],
  };
}

function comparisonResult(points: readonly ComparisonPoint[], rules: EquipmentRules): GaugeResult {
  const { mostErrorMmHg, fewestPoints: fewest, fromMmHg, toMmHg } = rules;
  const errors = points.map(({ referenceMmHg, gaugeMmHg }) => ({
    atMmHg: referenceMmHg,
    mmHg: settled(gaugeMmHg - referenceMmHg),
  }));
  const [first] = errors;
  if (first === undefined) return { ...NOTHING, verdict: 'incomplete', why: [fewPoints(0, fewest)] };
  const worst = errors.reduce((most, one) => {
    const further = Math.abs(one.mmHg) - Math.abs(most.mmHg);
    return further > 0 || (further === 0 && one.atMmHg < most.atMmHg) ? one : most;
  }, first);
  const flags: Flag<GaugeFlag>[] = errors
    .filter(({ mmHg }) => passes(Math.abs(mmHg), C.mostErrorMmHg, mostErrorMmHg))
    .map(({ mmHg, atMmHg }) => ({
      code: mmHg > 0 ? 'gauge-reads-high' : 'gauge-reads-low',
      figures: { byMmHg: Math.abs(mmHg), atMmHg, limitMmHg: mostErrorMmHg },
    }));
  const why: Flag<GaugeWhy>[] = [];
  const at = new Set(points.map(({ referenceMmHg }) => referenceMmHg));
  if (passes(at.size, C.fewestPoints, fewest)) why.push(fewPoints(at.size, fewest));
  const [low, high] = [Math.min(...at), Math.max(...at)];
  if (passes(low, C.fromMmHg, fromMmHg) || passes(high, C.toMmHg, toMmHg))
    why.push({
      code: 'gauge-narrow-points',
      figures: { lowMmHg: low, highMmHg: high, fromMmHg, toMmHg },
    });
  const sum = errors.reduce((total, { mmHg }) => total + mmHg, 0);
  return {
    ...NOTHING,
    verdict: flags.length > 0 ? 'failed' : why.length > 0 ? 'incomplete' : 'good',
    errorMmHg: worst.mmHg,
    errorAtMmHg: worst.atMmHg,
    meanErrorMmHg: sum / errors.length,
    flags,
    why,
  };
}

function fewPoints(points: number, fewest: number): Flag<GaugeWhy> {
  return { code: 'gauge-few-points', figures: { points, fewest } };
}

function leakResult(
  { fromMmHg, toMmHg, seconds }: Extract<GaugeLog, { of: 'leak' }>,
  { mostLeakMmHgPerMinute: limit, shortestLeakSeconds: shortest }: EquipmentRules,
): GaugeResult {
  const leakMmHgPerMinute = ((fromMmHg - toMmHg) * 60) / seconds;
  const isLeaking = passes(settled(leakMmHgPerMinute), C.mostLeakMmHgPerMinute, limit);
  const isShort = passes(seconds, C.shortestLeakSeconds, shortest);
  return {
    ...NOTHING,
    verdict: isShort ? 'incomplete' : isLeaking ? 'failed' : 'good',
    leakMmHgPerMinute,
    flags: isLeaking
      ? [{ code: 'gauge-leaks', figures: { leakMmHgPerMinute, limitMmHgPerMinute: limit } }]
      : [],
    why: isShort ? [{ code: 'gauge-leak-short', figures: { seconds, shortest } }] : [],
  };
}
