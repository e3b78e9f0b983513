import { type Flag, inTimeOrder, type SeriesReading } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { DataTable } from '../figure/figure.js';
import type { TimesSaid } from '../figure/times.js';
import type { PageChances } from './chanceBlocks.js';
import { readingList } from './readingList.js';
import {
  type Block,
  framed,
  leftOutLines,
  type RefusedRow,
  type ReportHeader,
  type ReportPage,
  type RuleSet,
  refusedLists,
} from './reportPage.js';

/** What the page of a series says of either kind. Sentences that others make come as they are to be read. */
export type SeriesPageInput = {
  readonly readings: readonly SeriesReading[];
  readonly header: ReportHeader;
  readonly ruleSet: RuleSet | null;
  /** Readings to act on whatever the mean, in sentences. */
  readonly actFirst: readonly string[];
  readonly refused: readonly RefusedRow[];
  /** What stands beside a reading, by its `index`. */
  readonly beside: ReadonlyMap<number, readonly string[]>;
  /** Readings whose time is only about right, by their `index`. */
  readonly about?: TimesSaid;
  /** What was settled while the file was read. */
  readonly settled: readonly string[];
  /** What the guideline aims at under treatment; nothing where it names nothing. */
  readonly target: readonly string[];
  /** What an office pressure beside it says. */
  readonly office: readonly string[];
  readonly chances: PageChances | null;
};

/** What the page of one kind says of its own. */
export type SeriesPageParts = {
  readonly title: string;
  readonly ruleSet: string;
  /** How many there are and can be used, in sentences. */
  readonly quality: readonly string[];
  readonly isValid: boolean;
  /** Whether `quality` says how many rows were refused: then that is not said again. */
  readonly isRefusedSaid: boolean;
  readonly why: readonly Flag[];
  readonly leftOut: readonly (Flag & { readonly index: number })[];
  readonly blocks: readonly Block[];
  /** When the first and the last reading were. */
  readonly when: (reading: SeriesReading) => string;
  readonly usedAs: (reading: SeriesReading) => string;
  /** Lists before and after that of all readings. */
  readonly before: readonly DataTable[];
  readonly after: readonly DataTable[];
};

/** The frame of the page: danger first, then the rule set and what the readings are worth, the list of all of them at the end. */
export function seriesPage(input: SeriesPageInput, parts: SeriesPageParts, words: Words): ReportPage {
  const say = words.sentence;
  const { readings, actFirst, refused, beside, about, header } = input;
  const leftOut = parts.leftOut.map((one) => ({ index: one.index, detail: words.detail(one) }));
  const blocks: Block[] = [
    { kind: 'lines', heading: say('series.actFirst'), lines: actFirst, isUrgent: true },
    { kind: 'lines', heading: say('report.ruleSet'), lines: [parts.ruleSet] },
    {
      kind: 'lines',
      heading: say('report.quality'),
      lines: [
        [...parts.quality, say(parts.isValid ? 'report.enough' : 'report.notEnough')].join(' '),
        ...leftOutLines(leftOut, parts.isRefusedSaid ? [] : refused, words),
        ...parts.why.map(words.detail),
      ],
    },
    ...parts.blocks,
  ];
  const ordered = inTimeOrder(readings);
  const [first, last] = [ordered[0], ordered.at(-1)];
  const measured =
    first === undefined || last === undefined
      ? say('report.nothing')
      : say('report.fromTo', { from: parts.when(first), to: parts.when(last) });
  const left = new Map(leftOut.map(({ index, detail }) => [index, detail]));
  return framed(header, measured, words, {
    title: parts.title,
    blocks: blocks.filter((one) => one.kind !== 'lines' || one.lines.length > 0),
    lists: [
      ...parts.before,
      readingList(readings, left, beside, about, parts.usedAs, words),
      ...parts.after,
      ...refusedLists(refused, words),
    ],
  });
}
