import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import { chiSquareQuantile } from '../statistics/chiSquare.js';
import { median } from '../statistics/median.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { placesWithoutBounces } from './bounce.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';
import { localRatios, robustSpread } from './localInterval.js';
import type { Taps } from './taps.js';

/**
 * One repair. `missed`: taps are missing in the interval after the tap `index`, `added` of them. `doubled`: the
 * tap `index` was a second one of the same beat and is left out, `added` is 0. `index` is the place as read, from 1.
 */
export type Repair = { readonly index: number; readonly what: 'missed' | 'doubled'; readonly added: number };

export type RepairFlag =
  | 'touch-bounces'
  | 'irregular-not-repaired'
  | 'steady-not-sure'
  | 'too-many-missed'
  | 'missed-in-turn';

/** Taps after repair: the times kept, and how many beats lie from each to the next (1 where none was missed). */
export type RepairedTaps = {
  readonly seconds: readonly number[];
  readonly beatsToNext: readonly number[];
  readonly repairs: readonly Repair[];
  readonly flags: readonly Flag<RepairFlag>[];
};

const MISSED_WITHIN = TAP_FIGURES.missedWithin.value;
const MOST_IN_GAP = TAP_FIGURES.mostIntervalsInGap.value;
const DOUBLED_UNDER = TAP_FIGURES.doubledUnder.value;
const GAPS_IN_TURN = TAP_FIGURES.gapsInTurn.value;
const STEADY_SPREAD = TAP_FIGURES.steadySpread.value;
const FEWEST_FOR_REGULAR = TAP_FIGURES.intervalsForRegular.value;
const MOST_JITTER_MS = TAP_FIGURES.mostJitterMs.value;
const CHAOTIC_SD = TAP_FIGURES.chaoticSd.value;
const CHAOTIC_SURENESS = TAP_FIGURES.chaoticSureness.value;
/** Doubles so close together that they spoil each other's local interval are found from the burst's ends inward. */
const MOST_PASSES = 8;

/**
 * Finds missed and doubled taps.
 *
 * On a touch screen a tap sooner than 150 ms after the last kept one is a bounce and is taken out first, in any
 * rhythm (flag `touch-bounces`). The rest is done only in a steady rhythm: where 1.4826 x the median absolute
 * deviation of interval / local interval is over 0.10, after what a tapper's own scatter may be of it is taken off,
 * nothing more is repaired (flag `irregular-not-repaired`; so it is too where it is over 0.10 as it stands and no slip
 * is found). That spread is robust: it stays small while fewer than half of the intervals hold a slip, so slips do not
 * hide themselves, and it is large in a rhythm without a beat to go by. A few intervals of a wholly irregular rhythm can
 * look steady by chance, so whatever a repair leaves whole must also be surely under the irregularity of such a
 * rhythm (flag `steady-not-sure`): repairs are never made in a chaotic one. Nor are they where taps would be missing in too many
 * intervals (flag `too-many-missed`), one of two alternating intervals for example; nor where they would be missing
 * at every so many intervals (flag `missed-in-turn`): a tapper's slips keep no measure, a dropped beat does.
 *
 * An interval within 15 % of 2, 3 or 4 local intervals has missed taps (the nearest multiple is taken); the end
 * of an interval under a third of the local one is a doubled tap.
 * Source: docs/conventions.md section 5.
 */
export function repairTaps(taps: Taps): RepairedTaps {
  const { seconds } = taps;
  const { bounced, bounces, flags } = withoutBounces(taps);
  const ratios = ratiosToLocal(seconds, bounced);
  const spread = robustSpread(ratios);
  if (spread === null) return asTapped(seconds, bounced, flags);
  const unrepaired = (code: RepairFlag, figures: Flag['figures']) =>
    asTapped(seconds, bounced, [...flags, { code, figures }]);
  const tooUneven = () => unrepaired('irregular-not-repaired', { spread, limit: STEADY_SPREAD });
  if (passes(personSpread(spread, seconds, bounced), SIDE.steadySpread, STEADY_SPREAD)) return tooUneven();
  const singled = withoutDoubles(seconds, bounced, ratios);
  const beatsToNext = singled.kept.slice(1).map((_, i) => beatsIn(singled.ratios[i] ?? 1));
  const repairs = repairsOf(seconds.length, singled.kept, beatsToNext);
  const gaps = beatsToNext.filter((beats) => beats > 1).length;
  const mostGaps = mostMissedOf(beatsToNext.length);
  if (passes(gaps, SIDE.mostMissed, mostGaps)) {
    return unrepaired('too-many-missed', { gaps, mostGaps, intervals: beatsToNext.length });
  }
  const everyIntervals = turnOf(beatsToNext);
  if (everyIntervals !== null) return unrepaired('missed-in-turn', { gaps, everyIntervals });
  if (repairs.length === bounces && passes(spread, SIDE.steadySpread, STEADY_SPREAD)) return tooUneven();
  const whole = singled.ratios.filter((_, i) => beatsToNext[i] === 1);
  const limit = settled(limitOfSd(whole.length));
  const variation = settled(sampleSd(whole) ?? 0);
  if (repairs.length > bounces && (whole.length < 2 || passes(variation, SIDE.chaoticSd, limit))) {
    return unrepaired('steady-not-sure', { variation, limit, intervals: whole.length });
  }
  return { seconds: singled.kept.map((at) => seconds[at] as number), beatsToNext, repairs, flags };
}

/** Taps as read, with no repair but that of the touch screen's bounces: no beat comes so soon after another. */
export function unrepairedTaps(taps: Taps): RepairedTaps {
  const { bounced, flags } = withoutBounces(taps);
  return asTapped(taps.seconds, bounced, flags);
}

function withoutBounces({ seconds, source }: Taps) {
  const bounced = source === 'touch' ? placesWithoutBounces(seconds) : seconds.map((_, at) => at);
  const bounces = seconds.length - bounced.length;
  const limitMs = TAP_FIGURES.touchBounceMs.value;
  const flags: Flag<RepairFlag>[] =
    bounces === 0 ? [] : [{ code: 'touch-bounces', figures: { removed: bounces, limitMs } }];
  return { bounced, bounces, flags };
}

/** The taps at the kept places, nothing missed between them. */
function asTapped(
  seconds: readonly number[],
  kept: readonly number[],
  flags: RepairedTaps['flags'],
): RepairedTaps {
  const beatsToNext = kept.slice(1).map(() => 1);
  const repairs = repairsOf(seconds.length, kept, beatsToNext);
  return { seconds: kept.map((at) => seconds[at] as number), beatsToNext, repairs, flags };
}

/**
 * What is left of a spread of interval / local interval without what a tapper's jitter may make of it: root 2 x jitter, as
 * a share of the median interval. The jitter is not known; the most that is usual is taken, and nothing
 * where the intervals are too few to call any rhythm regular.
 */
function personSpread(spread: number, seconds: readonly number[], kept: readonly number[]): number {
  const intervals = intervalsOf(seconds, kept);
  if (passes(intervals.length, SIDE.intervalsForRegular, FEWEST_FOR_REGULAR)) return spread;
  const intervalMs = (median(intervals) as number) * 1000;
  const tapper = (Math.SQRT2 * MOST_JITTER_MS) / intervalMs;
  return settled(Math.sqrt(Math.max(0, spread ** 2 - tapper ** 2)));
}

/**
 * The greatest SD that so many intervals of a wholly irregular rhythm show by a rare chance only: the fewer there
 * are, the more alike they must be. 0 for fewer than two.
 */
function limitOfSd(intervals: number): number {
  const df = intervals - 1;
  return df < 1 ? 0 : CHAOTIC_SD * Math.sqrt(chiSquareQuantile(1 - CHAOTIC_SURENESS, df) / df);
}

/** In how many of so many intervals a tapper may have missed taps; in more of them the person's beats are out. */
function mostMissedOf(intervals: number): number {
  const few = Math.max(TAP_FIGURES.fewMissed.value, TAP_FIGURES.mostMissed.value * intervals);
  return Math.floor(Math.min(TAP_FIGURES.mostMissedShort.value * intervals, few));
}

/**
 * At every how many intervals taps are missing, where that is the same all through, give or take one; null for fewer
 * than three gaps or for gaps that keep no measure.
 */
function turnOf(beatsToNext: readonly number[]): number | null {
  const gaps = beatsToNext.flatMap((beats, at) => (beats > 1 ? [at] : []));
  if (!passes(gaps.length, SIDE.gapsInTurn, GAPS_IN_TURN)) return null;
  const apart = gaps.slice(1).map((gap, i) => gap - (gaps[i] as number));
  const [least, most] = [Math.min(...apart), Math.max(...apart)];
  return most - least <= 1 ? apart.reduce((sum, one) => sum + one, 0) / apart.length : null;
}

/** {@link localRatios} of the intervals between the taps at the kept places. */
function ratiosToLocal(seconds: readonly number[], kept: readonly number[]): number[] {
  return localRatios(intervalsOf(seconds, kept));
}

function intervalsOf(seconds: readonly number[], kept: readonly number[]): number[] {
  const intervals: number[] = [];
  for (let i = 1; i < kept.length; i++) {
    intervals.push((seconds[kept[i] as number] as number) - (seconds[kept[i - 1] as number] as number));
  }
  return intervals;
}

type Singled = { readonly kept: readonly number[]; readonly ratios: readonly number[] };

/** The taps without those that end an interval far under the local one, and the ratios of what is left. */
function withoutDoubles(
  seconds: readonly number[],
  from: readonly number[],
  first: readonly number[],
): Singled {
  let kept = from;
  let ratios = first;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const before = ratios;
    const next = kept.filter(
      (_, place) => place === 0 || !passes(before[place - 1] ?? 1, SIDE.doubledUnder, settled(DOUBLED_UNDER)),
    );
    if (next.length === kept.length) break;
    kept = next;
    ratios = ratiosToLocal(seconds, kept);
  }
  return { kept, ratios };
}

/** How many beats lie in an interval of so many local ones: 1, or the nearest of 2 to 4 where it fits. */
function beatsIn(ratio: number): number {
  let beats = 1;
  let nearest = MISSED_WITHIN;
  for (let k = 2; k <= MOST_IN_GAP; k++) {
    const off = settled(Math.abs(ratio / k - 1));
    if (passes(off, SIDE.missedWithin, nearest)) {
      beats = k;
      nearest = off;
    }
  }
  return beats;
}

function repairsOf(read: number, kept: readonly number[], beatsToNext: readonly number[]): Repair[] {
  const repairs: Repair[] = [];
  let place = 0;
  for (let at = 0; at < read; at++) {
    if (kept[place] !== at) {
      repairs.push({ index: at + 1, what: 'doubled', added: 0 });
      continue;
    }
    const beats = beatsToNext[place] ?? 1;
    if (beats > 1) repairs.push({ index: at + 1, what: 'missed', added: beats - 1 });
    place++;
  }
  return repairs;
}
