import type { Posture } from '@evenfall/clinical';
import type { StoredEntry } from '../entry/entry.js';
import { chartedPerMinute } from './chartedPerMinute.js';
import { chartedPressure } from './chartedPressure.js';
import { type ChartRound, projectChart } from './projectChart.js';
import { signOf } from './signOf.js';

/** What must be known of the newest value of a sign besides its number. */
type LatestMark = {
  readonly entry: string;
  readonly byHand: boolean;
  readonly measuredAt: string;
  readonly contested: boolean;
  /** A learner's value that nobody qualified has countersigned. */
  readonly preliminary: boolean;
};

/** The newest standing rate of a sign: what a list of people shows. */
export type LatestValue = LatestMark & {
  readonly perMinute: number;
  /** Where amendments disagree, what else stands, oldest first. */
  readonly others: readonly number[];
};

/** The newest standing pressure at the upper arm, mmHg; `diastolic` null by palpation. */
export type LatestReading = LatestMark &
  Numbers & {
    /** How the person was placed for it. */
    readonly posture: Posture;
    /** Where amendments disagree, what else stands, oldest first. */
    readonly others: readonly Numbers[];
  };

type Numbers = {
  readonly systolic: number;
  readonly muffled: number | null;
  readonly diastolic: number | null;
};

/** The newest standing number of each sign that a new round goes by. */
export type NewestNumbers = {
  readonly pulse: LatestValue | null;
  readonly breaths: LatestValue | null;
  readonly pressure: LatestReading | null;
  /** The round of that pressure. */
  readonly ofPressure: ChartRound | null;
};

/** {@link newestNumbers} of a person's entries. */
export function projectNewest(entries: readonly StoredEntry[]): NewestNumbers {
  return newestNumbers(projectChart(entries).rounds);
}

/**
 * The newest number of each sign that is not entered in error, nor in a round that is. What has no number (a void
 * count, a single tap) never hides one that has.
 */
export function newestNumbers(rounds: readonly ChartRound[]): NewestNumbers {
  let pulse: LatestValue | null = null;
  let breaths: LatestValue | null = null;
  let pressure: LatestReading | null = null;
  let ofPressure: ChartRound | null = null;
  const moved = new Set<string>();
  // The order of the work says what is newest, whatever a clock said; a value that was given another time goes by it.
  const isNewer = (entry: StoredEntry, than: LatestMark | null) =>
    than === null ||
    !(moved.has(entry.id) || moved.has(than.entry)) ||
    Date.parse(entry.measuredAt.at) >= Date.parse(than.measuredAt);
  for (const round of rounds.toReversed()) {
    for (const { original, current, standing } of round.values) {
      const entry = current.at(-1);
      if (entry === undefined) continue;
      if (entry.measuredAt.at !== original.measuredAt.at) moved.add(entry.id);
      const mark = {
        entry: entry.id,
        measuredAt: entry.measuredAt.at,
        contested: standing === 'contested',
        preliminary: round.isPreliminary,
      };
      const before = current.slice(0, -1);
      const found = chartedPressure(entry);
      const numbers = numbersOf(entry);
      if (found !== null && numbers !== null && entry.kind === 'run') {
        const { byHand, isAveraged } = found;
        const others = before.flatMap((other) => numbersOf(other) ?? []);
        if (isAveraged && isNewer(entry, pressure)) {
          const { posture } = entry.content.evidence.place;
          pressure = { ...mark, byHand, ...numbers, posture, others };
          ofPressure = round;
        }
        continue;
      }
      const perMinute = chartedPerMinute(entry);
      if (perMinute === null || (entry.kind !== 'count' && entry.kind !== 'taps')) continue;
      const others = before.flatMap((other) => chartedPerMinute(other) ?? []);
      const value = { ...mark, perMinute, byHand: entry.content.override !== null, others };
      if (signOf(entry) === 'pulse' && isNewer(entry, pulse)) pulse = value;
      if (signOf(entry) === 'breaths' && isNewer(entry, breaths)) breaths = value;
    }
  }
  return { pulse, breaths, pressure, ofPressure };
}

/** The numbers of a pressure as it is charted; null for any other entry. */
function numbersOf(entry: StoredEntry): Numbers | null {
  const charted = chartedPressure(entry);
  if (charted === null || entry.kind !== 'run') return null;
  const { systolic, diastolic, byHand } = charted;
  return { systolic, muffled: byHand ? null : entry.content.value.muffled, diastolic };
}
