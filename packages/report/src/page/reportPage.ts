import { isReviewed, type Words } from '@evenfall/words';
import type { DataTable, Drawing, Figure } from '../figure/figure.js';

/** What stands at the head of a page about a person; null is not known here and left blank to be filled in by hand. */
export type ReportHeader = {
  readonly name: string | null;
  readonly born: string | null;
  /** The number that the person goes by. */
  readonly number?: string | null;
  /** What the person goes by in the record; not shown where the name can be. */
  readonly identifier?: string | null;
  readonly device: string | null;
  readonly arm: string | null;
  readonly medicines: string | null;
  /** The zone by whose clock the times stand. */
  readonly zone: string | null;
  /** When the page was made, as it is to be shown, and by which program. */
  readonly madeAt: string;
  readonly program: string;
  /** Nobody stands behind the numbers: every page says so. */
  readonly isInvented: boolean;
};

/** Digits of the version of a protocol that a person compares. */
export const VERSION_SHOWN = 12;

/** The rule set that an answer names, with the whole version of its protocol. */
export type RuleSet = { readonly id: string; readonly version: string };

/** Its name as a page says it; that none was chosen where there is none. */
export function ruleSetText(section: 'home' | 'ambulatory', ruleSet: RuleSet | null, words: Words): string {
  if (ruleSet === null) return words.sentence('away.noRules');
  const { id } = ruleSet;
  const version = ruleSet.version.slice(0, VERSION_SHOWN);
  return words.sentence('series.ruleSet', { title: words.title(section, id), id, version });
}

/** A row of a file that could not be read; its line is null where nobody knows it. */
export type RefusedRow = { readonly line: number | null; readonly why: string };

/** A figure that can be drawn in the room there is; as it usually is where nothing is said. */
export type FigureAt = (how?: Partial<Drawing>) => Figure;

/** A number that is found at once, and what it is. */
export type Headline = { readonly text: string; readonly of: string };

/** A part of the first sheet, in order of reading. */
export type Block =
  | {
      readonly kind: 'lines';
      readonly heading: string;
      readonly lines: readonly string[];
      readonly isUrgent?: boolean;
      /** What all of it comes to, set large over the lines, with what it is of beside it. */
      readonly headline?: Headline | null;
    }
  | { readonly kind: 'tables'; readonly tables: readonly DataTable[] }
  | { readonly kind: 'figures'; readonly figures: readonly FigureAt[] };

/** One sheet about a series with the list of all readings after it: everything said, nothing laid out. */
export type ReportPage = {
  readonly title: string;
  readonly locale: string;
  readonly invented: string | null;
  /** That no clinician has reviewed the language it is in; null where one has. */
  readonly unreviewed: string | null;
  /** A value that is null is a blank line to write on. */
  readonly header: readonly { readonly label: string; readonly value: string | null }[];
  /** What names the person where the letters of the name cannot be drawn; null where nothing does. */
  readonly otherwise: string | null;
  readonly blocks: readonly Block[];
  readonly lists: readonly DataTable[];
  readonly made: string;
  readonly aid: string;
  readonly pageOf: (page: number, of: number) => string;
};

/** The head and foot of every page, around what it says. */
export function framed(
  header: ReportHeader,
  measured: string,
  words: Words,
  rest: Pick<ReportPage, 'title' | 'blocks' | 'lists'> & { readonly isOfTwo?: boolean },
): ReportPage {
  const { isOfTwo = false, ...said } = rest;
  const field = (key: 'name' | 'born' | 'device' | 'arm' | 'medicines') => ({
    label: words.sentence(`report.${key}`),
    value: header[key],
  });
  return {
    ...said,
    locale: words.say.locale,
    unreviewed: isReviewed(words) ? null : words.sentence('app.notReviewed'),
    invented: header.isInvented ? words.sentence('report.invented') : null,
    header: [
      field('name'),
      ...whoFields(header, words),
      {
        label: words.sentence('report.measuredOn'),
        value:
          header.zone === null
            ? measured
            : words.sentence('report.zoneOf', { dates: measured, zone: header.zone }),
      },
      // Of two series each has its own: they stand in the table.
      ...(isOfTwo ? [] : [field('arm'), field('device'), field('medicines')]),
    ],
    otherwise: header.born ?? header.identifier ?? null,
    made: words.sentence('report.madeAt', { at: header.madeAt, program: header.program }),
    aid: words.sentence('cautions.aid'),
    pageOf: (page, of) => words.sentence('report.page', { page, of }),
  };
}

/** When somebody was born and their number: what is known, or else a line to write the day of birth on. */
function whoFields({ born, number = null }: ReportHeader, words: Words): ReportPage['header'] {
  const fields = [
    { label: words.sentence('report.born'), value: born },
    { label: words.sentence('report.personNumber'), value: number },
  ];
  const known = fields.filter(({ value }) => value !== null);
  return known.length === 0 ? fields.slice(0, 1) : known;
}

/** Numbers with runs joined: `1-4, 9`. */
export function runsText(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of [...numbers].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && number <= last[1] + 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}-${to}`)).join(', ');
}

/** What was left out, each reason once with the readings it holds for. */
export function leftOutLines(
  found: readonly { readonly index: number; readonly detail: string }[],
  refused: readonly RefusedRow[],
  words: Words,
): string[] {
  const details = [...new Set(found.map(({ detail }) => detail))];
  return [
    ...details.map((detail) => {
      const numbers = found.filter((one) => one.detail === detail).map(({ index }) => index);
      return words.sentence('report.leftOutOf', { numbers: runsText(numbers), detail });
    }),
    ...(refused.length === 0 ? [] : [words.sentence('report.refusedRows', { rows: refused.length })]),
  ];
}

/** Rows that could not be read, as a list of their own; none where there are none. */
export function refusedLists(refused: readonly RefusedRow[], words: Words): DataTable[] {
  if (refused.length === 0) return [];
  return [
    {
      caption: words.sentence('report.refusedList'),
      columns: [words.sentence('report.row'), words.sentence('report.why')],
      rows: refused.map(({ line, why }) => [line === null ? '-' : String(line), why]),
    },
  ];
}
