import { type Flag, isCategoryHeldBack, type RoundNotes } from '@evenfall/clinical';
import {
  type ChartRound,
  flagsStanding,
  notesStanding,
  type OpenActNow,
  openReasons,
  type RulesOf,
  resultsStanding,
  type StoredEntry,
} from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { signText } from '../app/signText.js';
import { chartedText, isVoidCharted, signOfCharted } from '../parts/charted.js';
import { resultLines } from '../round/ResultBlock.js';
import { contentOfEntry } from './contentOfEntry.js';

/** What an open alert found and what to do about it, in the words in which it was raised. */
export function openText(
  { condition, figures }: Pick<OpenActNow, 'condition' | 'figures'>,
  words: Words,
): string {
  return `${words.title('condition', condition)}: ${words.sentence('chart.actNowOpen')}. ${words.detail({ code: condition, figures })}`;
}

/** The same in few words: which they are, and that nobody closed them. */
export function openTitles(open: readonly Pick<OpenActNow, 'condition'>[], words: Words): string {
  const titles = open.map(({ condition }) => words.title('condition', condition)).join(', ');
  return `${titles}: ${words.sentence('chart.actNowOpen')}.`;
}

/** A line in words under the numbers of a round: what it is of, and what is said of it. */
export type PrintedNote = { readonly of: string; readonly text: string };

/** By what a round is read: the rules of each version, and when the person was born (`YYYY-MM-DD`, null where nobody knows). */
export type PrintedBy = { readonly rulesOf: RulesOf; readonly birthDate: string | null };

/** What a round comes to that is more than a number in a column of paper: a name, and what is to be known of it. */
export function printedResults(
  round: ChartRound,
  { rulesOf, birthDate }: PrintedBy,
  words: Words,
): readonly PrintedNote[] {
  if (round.isInError) return [];
  const notes = notesStanding(round, rulesOf, birthDate);
  const wanted = (['category', 'earlyWarning', 'arms', 'standing'] as const).map((name) =>
    words.sentence(`result.${name}`),
  );
  // Who made the score is said once, at the foot of the page.
  const college = ` ${words.sentence('result.college')}`;
  return resultsStanding(round, rulesOf).flatMap((value) =>
    resultLines(value, words, notes)
      .filter(({ name }) => wanted.includes(name))
      .map(({ name, text, flags }) => {
        // A category and a score stand in their own words: what they call for is said by the alert that they raise.
        if (name === words.sentence('result.category') && isCategoryHeldBack(value))
          return { of: name, text: words.sentence('handover.caution') };
        const said = text === '' ? words.together(flags).map((one) => one.text) : [];
        return { of: name, text: [text.replace(college, ''), ...said].filter((one) => one !== '').join(' ') };
      }),
  );
}

/**
 * What is to be known of the values of a round that stand, for paper: each sentence once, after every value that it is of.
 */
export function printedNotes(
  round: ChartRound,
  { rulesOf, birthDate }: PrintedBy,
  words: Words,
): readonly PrintedNote[] {
  if (round.isInError) return [];
  const notes = notesStanding(round, rulesOf, birthDate);
  const valuesOf = new Map<
    string,
    { readonly sign: string; readonly text: string; readonly values: string[] }
  >();
  for (const entry of round.values.flatMap(({ current }) => current)) {
    const given = contentOfEntry(entry);
    if (given === null || isVoidCharted(given)) continue;
    const sign = signText(signOfCharted(given), words);
    for (const text of textsOf(entry, round, notes, words)) {
      const key = `${sign} ${text}`;
      const said = valuesOf.get(key) ?? { sign, text, values: [] };
      said.values.push(chartedText(given, words));
      valuesOf.set(key, said);
    }
  }
  return [...valuesOf.values()].map(({ sign, text, values }) => ({
    of: `${sign} ${values.join(', ')}`,
    text,
  }));
}

function textsOf(entry: StoredEntry, round: ChartRound, notes: RoundNotes, words: Words): readonly string[] {
  // The other signs carry their number and their alert: paper has room for what a pressure stands on, and what was open.
  const flags: readonly Flag[] =
    entry.kind === 'run'
      ? flagsStanding(entry, round, notes)
      : [...openReasons(entry, round), ...(notes.ofReading[entry.id] ?? [])];
  return words.together(flags).map(({ text }) => text);
}
