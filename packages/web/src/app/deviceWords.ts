import { type LaterPart, wordsInParts } from '@evenfall/words';
import { type Later, later } from './later.js';

/** The words of this device: the bedside's at once, others with the pages that say them (`withWords`). */
export const deviceWords = wordsInParts();

/** Pages together with the parts of the catalogue that they say beside the bedside's. */
export function withWords<Pages>(parts: readonly LaterPart[], pages: Later<Pages>): Later<Pages> {
  return later(async () => {
    const [brought] = await Promise.all([pages.fetch(), ...parts.map(deviceWords.bring)]);
    return brought;
  });
}
