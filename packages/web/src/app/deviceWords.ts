import { wordsInParts } from '@evenfall/words';

/** The words of this device: the bedside's at once, those of later pages with the pages (`withLaterWords`). */
export const deviceWords = wordsInParts();

/** Brings pages together with the words that only later pages say. */
export async function withLaterWords<Pages>(pages: Promise<Pages>): Promise<Pages> {
  const [brought] = await Promise.all([pages, deviceWords.bringLater()]);
  return brought;
}
