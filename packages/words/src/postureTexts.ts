import type { Words } from './words.js';

/** How long somebody had stood or lain at a reading, and how they felt on their feet; null where nobody said. */
export type PostureKnown = {
  readonly uprightMinutes: number | null;
  readonly unwellUpright: boolean | null;
  readonly lyingMinutes: number | null;
};

/** What is known of somebody's posture at a reading, each in a few words; none for nothing known. */
export function postureTexts(
  { uprightMinutes, unwellUpright, lyingMinutes }: PostureKnown,
  words: Words,
): readonly string[] {
  return [
    uprightMinutes === null ? null : words.sentence('pressure.uprightAt', { minutes: uprightMinutes }),
    unwellUpright === null
      ? null
      : words.sentence(unwellUpright ? 'postures.feltUnwell' : 'postures.feltWell'),
    lyingMinutes === null ? null : words.sentence('postures.lyingAt', { minutes: lyingMinutes }),
  ].filter((text) => text !== null);
}
