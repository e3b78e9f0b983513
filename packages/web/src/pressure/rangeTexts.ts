import type { RunContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/**
 * The range of each number that stands, in words; none of a number that has none. Where the muffling is used in place of the
 * last sound, the range of the last sound is of another number than the one that is read, and is not said.
 */
export function rangeTexts(
  { systolicRange, diastolicRange, diastolic, diastolicUsed }: RunContent['value'],
  words: Words,
): string[] {
  const ranges = { systolic: systolicRange, diastolic: diastolic === diastolicUsed ? diastolicRange : null };
  return (['systolic', 'diastolic'] as const).flatMap((part) => {
    const range = ranges[part];
    if (range === null) return [];
    const [low, high] = range;
    return [words.sentence('pressure.rangeOf', { text: words.sentence(`pressure.${part}`), low, high })];
  });
}
