import type { ConsciousnessLevel, Posture, Side } from '@evenfall/clinical';
import type { StoredEntry } from '../entry/entry.js';
import { failedGauge } from '../equipment/failedGauge.js';
import type { Standing } from './amendmentTree.js';
import { chartedPerMinute } from './chartedPerMinute.js';
import { chartedPressure } from './chartedPressure.js';
import { notReliedOn } from './notReliedOn.js';
import { pressureWritten } from './pressureWritten.js';
import type { Chart } from './projectChart.js';
import { postureOfAverage, type RoundAverage, roundAverage } from './roundAverage.js';
import { type UnclearCorrection, unclearCorrections } from './unclearCorrections.js';
import type { RulesOf } from './valueStanding.js';

/**
 * A value as a trend draws it. Pressures in mmHg: `diastolic` is null where none can be used (by palpation, sounds to
 * zero without a muffled value), `isAveraged` false for a site other than the upper arm. Rates a minute, temperatures
 * in degrees Celsius, saturation in percent (`onOxygen` null where nobody said), pain 0 to 10.
 */
export type TrendValue =
  | {
      readonly of: 'pressure';
      readonly systolic: number;
      readonly diastolic: number | null;
      /** As the trade writes it: `122/P`, `118/62/0`. */
      readonly written: string;
      readonly isAveraged: boolean;
      readonly side: Side | null;
      readonly posture: Posture | null;
    }
  | { readonly of: 'pulse' | 'breaths'; readonly perMinute: number }
  | { readonly of: 'temperature'; readonly celsius: number }
  | { readonly of: 'oxygen-saturation'; readonly percent: number; readonly onOxygen: boolean | null }
  | { readonly of: 'pain'; readonly score: number }
  | { readonly of: 'consciousness'; readonly level: ConsciousnessLevel };

/** One value at its time, with what its reader must know of it. `at` is local with its offset, RFC 3339. */
export type TrendPoint = {
  readonly entry: string;
  readonly at: string;
  readonly value: TrendValue;
  /** Amendments disagree, and this is one of the claims. */
  readonly isContested: boolean;
  readonly isByHand: boolean;
  /** It was amended, and what stands is drawn. */
  readonly isAmended: boolean;
  /** The gauge that it was read from, where that failed a check, so that it is in doubt; else null. */
  readonly failedGauge: string | null;
  /** Of a value from elsewhere, that nobody knows whether it was corrected, or what it corrects; null or absent: it is neither. */
  readonly unclear?: UnclearCorrection['is'] | null;
  /** How many things its reader must know, as the chart says them beside it. */
  readonly flags: number;
};

type Gauges = Parameters<typeof failedGauge>[1];

/** A round of a trend: its values oldest first, and what its pressures come to. */
export type TrendRound = {
  readonly round: string;
  /** When its first value was measured. */
  readonly at: string;
  readonly isPreliminary: boolean;
  /** A supervisor looked at it and did not rely on it. */
  readonly isNotReliedOn: boolean;
  readonly points: readonly TrendPoint[];
  /** The average that the round goes by, mmHg and not rounded; null where it is one reading or none. */
  readonly average: TrendAverage | null;
  /** Of values that another system or a table said, which are in no round: in their words. Null for what was taken here. */
  readonly elsewhere: TrendElsewhere | null;
};

/** The average of a round, and how the person was placed for its readings; `posture` is null where they were not all alike. */
export type TrendAverage = RoundAverage & { readonly posture: Posture | null };

/** Who said values from elsewhere, and how they say they were taken; `until` ends the time of a mean, RFC 3339. */
export type TrendElsewhere = {
  readonly by: string | null;
  readonly how: readonly string[];
  readonly until: string | null;
};

/**
 * What a trend draws of a chart, oldest first. What is entered in error, and what has no number, is not drawn; where
 * amendments disagree, every claim is.
 *
 * @param rulesOf the rules by which a round that was amended after signing is judged again
 * @param gauges of the place as they stand now; none where they are not known
 */
export function projectTrend(chart: Chart, rulesOf: RulesOf, gauges: Gauges = []): readonly TrendRound[] {
  return chart.rounds
    .filter(({ isInError }) => !isInError)
    .flatMap((round): TrendRound[] => {
      const points = round.values.flatMap(({ current, standing }) =>
        current.flatMap((entry) => pointOf(entry, standing, gauges) ?? []),
      );
      const sorted = points.toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at));
      const [first] = sorted;
      if (first === undefined) return [];
      const { id, isPreliminary } = round;
      const average = roundAverage(round, rulesOf);
      return [
        {
          round: id,
          at: first.at,
          isPreliminary,
          isNotReliedOn: notReliedOn(round) !== null,
          points: sorted,
          average: average === null ? null : { ...average, posture: postureOfAverage(round, average) },
          elsewhere: null,
        },
      ];
    })
    .toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at));
}

/**
 * What other systems and tables say, as a trend draws it apart, oldest first: values of one time that one source says in
 * one way stand together, under the id of their first entry. What was taken back is not drawn.
 */
export function trendFromElsewhere({ reported }: Chart): readonly TrendRound[] {
  const unclear = unclearCorrections(reported.flatMap(({ story }) => story));
  const together = new Map<string, TrendRound & { readonly points: TrendPoint[] }>();
  for (const { current, standing } of reported) {
    if (standing === 'entered-in-error') continue;
    for (const entry of current) {
      const value = saidOf(entry);
      if (value === null || entry.kind !== 'reported') continue;
      const { by, method, site, posture, until } = entry.content;
      const how = [site, posture, method].filter((one) => one !== null);
      const { at } = entry.measuredAt;
      const key = JSON.stringify([at, by, how, until]);
      const point = {
        entry: entry.id,
        at,
        value,
        isContested: standing === 'contested',
        isByHand: false,
        isAmended: false,
        failedGauge: null,
        unclear: unclear.get(entry.id)?.is ?? null,
        flags: 0,
      };
      const group = together.get(key);
      if (group !== undefined) group.points.push(point);
      else {
        const elsewhere = { by, how, until };
        together.set(key, {
          round: entry.id,
          at,
          isPreliminary: false,
          isNotReliedOn: false,
          points: [point],
          average: null,
          elsewhere,
        });
      }
    }
  }
  return [...together.values()].toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at));
}

/** A value from elsewhere as it is drawn; null for a weight or a height. Where it was taken is in the source's own words. */
function saidOf(entry: StoredEntry): TrendValue | null {
  if (entry.kind !== 'reported') return null;
  const { value } = entry.content;
  switch (value.of) {
    case 'pressure': {
      const { systolic, diastolic } = value;
      const written = `${systolic}/${diastolic ?? '–'}`;
      return { of: 'pressure', systolic, diastolic, written, isAveraged: true, side: null, posture: null };
    }
    case 'oxygen-saturation':
      return { ...value, onOxygen: null };
    case 'weight':
    case 'height':
      return null;
    default:
      return value;
  }
}

/** Every sign that stands somewhere in a trend, in the order in which it is drawn. */
export function signsOfTrend(rounds: readonly TrendRound[]): readonly TrendValue['of'][] {
  const found = new Set(rounds.flatMap(({ points }) => points.map(({ value }) => value.of)));
  return TREND_SIGNS.filter((sign) => found.has(sign));
}

/** What a trend draws, in its order. */
export const TREND_SIGNS = [
  'pressure',
  'pulse',
  'breaths',
  'oxygen-saturation',
  'temperature',
  'pain',
  'consciousness',
] as const satisfies readonly TrendValue['of'][];

function pointOf(entry: StoredEntry, standing: Standing, gauges: Gauges): TrendPoint | null {
  const value = drawnOf(entry);
  if (value === null) return null;
  const content = entry.content as { override?: unknown; value?: { flags?: readonly unknown[] } | null };
  return {
    entry: entry.id,
    at: entry.measuredAt.at,
    value,
    isContested: standing === 'contested',
    isAmended: standing === 'amended',
    failedGauge: entry.kind === 'run' ? (failedGauge(entry, gauges)?.name ?? null) : null,
    isByHand: (content.override ?? null) !== null,
    flags: content.value?.flags?.length ?? 0,
  };
}

function drawnOf(entry: StoredEntry): TrendValue | null {
  const pressure = chartedPressure(entry);
  if (pressure !== null && entry.kind === 'run') {
    const { systolic, diastolicUsed: diastolic, isAveraged } = pressure;
    const { side, posture } = entry.content.evidence.place;
    const written = pressureWritten(entry.content);
    return { of: 'pressure', systolic, diastolic, written, isAveraged, side, posture };
  }
  const perMinute = chartedPerMinute(entry);
  if (perMinute !== null) {
    if (entry.kind === 'count') return { of: entry.content.evidence.count.of, perMinute };
    if (entry.kind === 'taps') return { of: entry.content.evidence.taps.of, perMinute };
  }
  if (entry.kind !== 'sign') return null;
  const { sign } = entry.content.evidence;
  switch (sign.of) {
    case 'temperature':
      return { of: 'temperature', celsius: sign.celsius };
    case 'oxygen-saturation':
      return { of: 'oxygen-saturation', percent: sign.percent, onOxygen: sign.onOxygen };
    case 'pain':
      return sign.score === null ? null : { of: 'pain', score: sign.score };
    case 'consciousness':
      return { of: 'consciousness', level: sign.level };
    default:
      return null;
  }
}
