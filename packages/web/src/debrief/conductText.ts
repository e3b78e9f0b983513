import type { Conduct } from '@evenfall/practice';
import type { Words } from '@evenfall/words';

/** What was left out or overdone, in words and with its numbers. */
export function conductText({ code, figures }: Conduct, words: Words): string {
  switch (code) {
    case 'not-told':
    case 'muffled-not-written':
    case 'nothing-measured':
    case 'nothing-in-ears':
    case 'nothing-felt':
    case 'nothing-to-hear':
    case 'felt-not-first':
    case 'pulse-rhythm-not-said':
    case 'breaths-rhythm-not-said':
    case 'not-marked':
    case 'first-not-marked':
    case 'last-not-marked':
      return words.sentence(`debrief.conduct-${code}`);
    default:
      return words.sentence(`debrief.conduct-${code}`, figures);
  }
}
