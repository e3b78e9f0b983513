import { type PostureKnown, postureTexts } from './postureTexts.js';
import type { Words } from './words.js';

/** A pulse that was amended since the reading was signed with it: what stands (null for entered in error), and what it was. */
type PulseSince = { readonly perMinute: number | null; readonly was: number | null };

/**
 * What stands beside a reading of the pressure: the pulse that was typed or counted with it, and its posture.
 *
 * @param pulse of this reading, per minute; null for none, or where it is said elsewhere
 */
export function readingTexts(
  pulse: number | PulseSince | null,
  posture: PostureKnown,
  words: Words,
): readonly string[] {
  const since = typeof pulse === 'number' || pulse === null ? { perMinute: pulse, was: null } : pulse;
  return [...pulseTexts(since, words), ...postureTexts(posture, words)];
}

function pulseTexts({ perMinute, was }: PulseSince, words: Words): readonly string[] {
  if (was === null) return perMinute === null ? [] : [words.sentence('postures.pulseAt', { perMinute })];
  return [
    perMinute === null
      ? words.sentence('postures.pulseInError', { was })
      : words.sentence('postures.pulseAmended', { perMinute, was }),
  ];
}
