import { type SidedLimit, shownPressure } from '@evenfall/clinical';
import { type SeriesReadingKept, saidAt, timeSaid } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { dayOfYearText, timeText } from '../app/times.js';

type Pair = { readonly systolic: number | null; readonly diastolic: number | null };
export type PairLimits = {
  readonly systolic: SidedLimit | null;
  readonly diastolic: SidedLimit | null;
};
export const NO_LIMITS: PairLimits = { systolic: null, diastolic: null };

/** A mean in mmHg beside its limit: whole, with decimals only where the whole number would stand on the other side. */
export function meanText(mmHg: number | null, limit: SidedLimit | null, words: Words): string {
  if (mmHg === null) return '–';
  return localized(shownPressure(mmHg, limit === null ? [] : [limit]), words);
}

export function pairText({ systolic, diastolic }: Pair, limits: PairLimits, words: Words): string {
  return `${meanText(systolic, limits.systolic, words)}/${meanText(diastolic, limits.diastolic, words)}`;
}

/**
 * A mean before and after a change: both whole, or both to one decimal where the whole numbers would be the same and hide
 * that it moved.
 */
export function movedText(before: Pair, after: Pair, words: Words): { before: string; after: string } {
  const whole = (pair: Pair) => pairText(pair, NO_LIMITS, words);
  if (whole(before) !== whole(after)) return { before: whole(before), after: whole(after) };
  const exact = (mmHg: number | null) => (mmHg === null ? '–' : words.say.number(mmHg, 1));
  const of = ({ systolic, diastolic }: Pair) => `${exact(systolic)}/${exact(diastolic)}`;
  return { before: of(before), after: of(after) };
}

function decimalsIn(text: string): number {
  return text.split('.')[1]?.length ?? 0;
}

/** Decimals as the language writes them. */
function localized(text: string, { say }: Words): string {
  return say.number(Number(text), decimalsIn(text));
}

/** A pressure as it was read, without a limit beside it. */
export function pressureText({ systolic, diastolic }: Pair, words: Words): string {
  const one = (mmHg: number | null) => (mmHg === null ? '–' : words.say.short(mmHg, 1));
  return `${one(systolic)}/${one(diastolic)}`;
}

/**
 * When a reading was taken, of a series whose year is said above it; about then where nobody said the time of it. A later
 * one of a sitting has the time of the sitting, which is all that was said.
 *
 * @param isPlaced whether it says which reading of its sitting it is, where it is not the first
 */
export function readingTime(reading: Pick<SeriesReadingKept, 'at'>, words: Words, isPlaced = true): string {
  const at = saidAt(reading);
  const { isAbout, place } = timeSaid(reading);
  const text = `${dayOfYearText(at.slice(0, 10), words)}, ${timeText(at.slice(11, 16), words)}`;
  const said = isAbout ? words.sentence('away.timeAbout', { text }) : text;
  return place === 1 || !isPlaced ? said : words.sentence('away.laterReading', { text: said, place });
}
