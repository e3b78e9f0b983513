import type { Agent, AmendedEntry } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { signText } from '../app/signText.js';
import { stampText } from '../app/times.js';
import { chartedText, signOfCharted } from '../parts/charted.js';
import { contentOfEntry } from './contentOfEntry.js';
import type { PrintedNote } from './printedNotes.js';
import { reasonText } from './reasonText.js';
import { whoText } from './who.js';

/** Who amended each value that stands, or marked it as entered in error, when and why, for paper: a line each. */
export function amendedTexts(
  values: readonly AmendedEntry[],
  agents: readonly Agent[],
  words: Words,
): readonly PrintedNote[] {
  return values.flatMap(({ original, current, story }) => {
    const marks = current.length === 0 ? story.filter(({ kind }) => kind === 'entered-in-error') : [];
    return [...current, ...marks].flatMap((entry) => {
      const given = contentOfEntry(entry.kind === 'entered-in-error' ? original : entry);
      if (given === null || entry.amends === null) return [];
      const said = {
        who: whoText(entry, agents, words),
        at: stampText({ at: entry.writtenAt }, words),
        reason: reasonText(entry.amends, words),
      };
      const key = entry.kind === 'entered-in-error' ? 'chart.storyError' : 'chart.amendedBy';
      return [
        {
          of: `${signText(signOfCharted(given), words)} ${chartedText(given, words)}`,
          text: words.sentence(key, said),
        },
      ];
    });
  });
}
