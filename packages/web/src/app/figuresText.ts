import type { Words } from '@evenfall/words';

type Ends = {
  readonly lowPerMinute: number | null;
  readonly highPerMinute: number | null;
  /** Absent for an interval of taps, whose ends are not sharp. */
  readonly lowIncluded?: boolean | null;
};

/** Narrower than this and whole numbers would hide the range. */
const NARROW_PER_MINUTE = 3;

/** The range of a rate in words; null where there is none. A count's high end is never in it. */
export function rangeText(ends: Ends, words: Words): string | null {
  const { lowPerMinute, highPerMinute, lowIncluded } = ends;
  if (lowPerMinute === null || highPerMinute === null) return null;
  if (lowIncluded === undefined || lowIncluded === null) {
    const decimals = highPerMinute - lowPerMinute < NARROW_PER_MINUTE ? 1 : 0;
    const [low, high] = [lowPerMinute, highPerMinute].map((value) => words.say.number(value, decimals));
    return words.sentence('app.to', { low: low as string, high: high as string });
  }
  const figures = { low: words.say.short(lowPerMinute, 1), high: words.say.short(highPerMinute, 1) };
  return words.sentence(lowIncluded ? 'app.rangeIncluded' : 'app.rangeOpen', figures);
}

/** Keeps a number and its unit on one line. */
export function unbroken(sentence: string): string {
  return sentence.replace(/(\d) (?=s\b|ms\b|%)/g, '$1\u00a0');
}
