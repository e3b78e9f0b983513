import { type PostureKnown, postureTexts, type Words } from '@evenfall/words';
import type { Extension } from 'fhir/r4.js';
import { POSTURE_EXTENSIONS } from './systems.js';

/** What is known of somebody's posture at a pressure, each as an extension of ours: every digit, for a program. */
export function postureExtensions({
  unwellUpright,
  uprightMinutes,
  lyingMinutes,
}: PostureKnown): Extension[] {
  const minutes = (url: string, known: number | null) =>
    known === null ? [] : [{ url, valueDecimal: known }];
  return [
    ...(unwellUpright === null
      ? []
      : [{ url: POSTURE_EXTENSIONS.unwellUpright, valueBoolean: unwellUpright }]),
    ...minutes(POSTURE_EXTENSIONS.uprightMinutes, uprightMinutes),
    ...minutes(POSTURE_EXTENSIONS.lyingMinutes, lyingMinutes),
  ];
}

/** The same in words, as one note for whoever reads it elsewhere; none where nothing is known. */
export function postureNotes(known: PostureKnown, words: Words): string[] {
  const texts = postureTexts(known, words);
  return texts.length === 0 ? [] : [texts.join(', ')];
}
