import { type PostureKnown, postureTexts } from './postureTexts.js';
import type { Words } from './words.js';

/**
 * What stands beside a reading of the pressure: the pulse that was typed or counted with it, and its posture.
 *
 * @param pulsePerMinute of this reading; null for none, or where it is said elsewhere
 */
export function readingTexts(
  pulsePerMinute: number | null,
  posture: PostureKnown,
  words: Words,
): readonly string[] {
  const pulse =
    pulsePerMinute === null ? [] : [words.sentence('postures.pulseAt', { perMinute: pulsePerMinute })];
  return [...pulse, ...postureTexts(posture, words)];
}
