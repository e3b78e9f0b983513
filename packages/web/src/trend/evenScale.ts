import type { TrendRound } from '@evenfall/record';
import type { DrawnBand } from './bands.js';
import { wallClock } from './view.js';

/** How far a reading stands from the one before it in its round, as a share of what lies between two rounds. */
const WITHIN_ROUND = 0.45;

/**
 * Times and where each stands, both rising. A place counts rounds from 0 up to `width`; half a round is left free at
 * either end.
 */
export type EvenScale = {
  readonly times: readonly number[];
  readonly places: readonly number[];
  readonly width: number;
};

/**
 * The places of what is drawn where each round has one of its own, as on a paper chart, so that the readings of one round
 * can be told apart beside a gap of days. Null where fewer than two times are drawn: one is no course of anything.
 *
 * @param isDrawn whether a value has a mark; what has none takes no place
 *
 * @example evenScale([at('10:00'), at('16:00', '16:02')], all)?.places // [0.5, 1.5, 1.95]
 */
export function evenScale(
  rounds: readonly TrendRound[],
  isDrawn: (point: TrendRound['points'][number]) => boolean,
): EvenScale | null {
  const roundOf = new Map<number, string>();
  for (const { round, points } of rounds)
    for (const point of points)
      if (isDrawn(point) && !roundOf.has(wallClock(point.at))) roundOf.set(wallClock(point.at), round);
  const all = [...roundOf].toSorted(([one], [other]) => one - other);
  if (all.length < 2) return null;
  let place = 0.5;
  const places = all.map(([, round], at) => {
    const before = all[at - 1];
    if (before !== undefined) place += before[1] === round ? WITHIN_ROUND : 1;
    return place;
  });
  return { times: all.map(([time]) => time), places, width: place + 0.5 };
}

/** Whether one of the bands has a mark for a value. */
export function drawnIn(bands: readonly Pick<DrawnBand, 'holds'>[]) {
  return ({ value }: TrendRound['points'][number]) => bands.some(({ holds }) => holds.includes(value.of));
}

/** A time that is written under the drawing: at the first mark of a round. */
export type RoundTick = { readonly at: number; readonly isNewDay: boolean };

/**
 * Where a time is written, oldest first: at each round, or at every second, third ... where more would not fit.
 *
 * @param most how many fit
 */
export function roundTicks(rounds: readonly TrendRound[], scale: EvenScale, most: number): RoundTick[] {
  const firsts = rounds
    .flatMap(({ points }) => {
      const drawn = points.map(({ at }) => wallClock(at)).filter((time) => scale.times.includes(time));
      return drawn.length === 0 ? [] : [Math.min(...drawn)];
    })
    .toSorted((one, other) => one - other);
  const every = Math.max(Math.ceil(firsts.length / Math.max(most, 1)), 1);
  const shown = [...new Set(firsts)].filter((_, at) => at % every === 0);
  return shown.map((at, index) => ({ at, isNewDay: dayOf(at) !== dayOf(shown[index - 1]) }));
}

function dayOf(time: number | undefined): string {
  return time === undefined ? '' : new Date(time).toISOString().slice(0, 10);
}
