import { type Flag, inTimeOrder, type SeriesReading } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { DataTable } from '../figure/figure.js';
import type { TimesSaid } from '../figure/times.js';
import type { PageChances } from './chanceBlocks.js';
import { readingList } from './readingList.js';
import {
  type Block,
  framed,
  type Headline,
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
  /** Whom somebody told of it and what was said back; `isAll` where nothing of it is open. Absent where nobody told anybody. */
  readonly closed?: { readonly lines: readonly string[]; readonly isAll: boolean };
  /** What is said of the whole series before anything else. */
  readonly before?: readonly string[];
  /** Who brought the readings in and who signed for them, in sentences. */
  readonly signed?: readonly string[];
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
  /** What the readings come to, and what that is called. */
  readonly result: { readonly headline: Headline | null; readonly lines: readonly string[] };
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

/** The frame of the page: danger first, then the result, the rule set and what the readings are worth, the list of all of them at the end. */
export function seriesPage(input: SeriesPageInput, parts: SeriesPageParts, words: Words): ReportPage {
  const say = words.sentence;
  const { readings, refused, beside, about, header, signed = [] } = input;
  const leftOut = parts.leftOut.map((one) => ({ index: one.index, detail: words.detail(one) }));
  const blocks: Block[] = [
    ...firstBlocks(input, words),
    { kind: 'lines', heading: say('report.result'), ...parts.result },
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
    { kind: 'lines', heading: say('report.signed'), lines: signed },
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
    blocks: blocks.filter((one) => one.kind !== 'lines' || one.lines.length > 0 || one.headline != null),
    lists: [
      ...parts.before,
      readingList(readings, left, beside, about, parts.usedAs, words),
      ...parts.after,
      ...refusedLists(refused, words),
    ],
  });
}

/** What is to be acted on, urgent while anything of it is open; then, or else in its place, whom somebody told. */
function firstBlocks({ before = [], actFirst, closed }: SeriesPageInput, words: Words): Block[] {
  const open = words.sentence('series.actFirst');
  const told = closed?.lines ?? [];
  if (closed?.isAll === true)
    return [
      { kind: 'lines', heading: open, lines: before, isUrgent: true },
      { kind: 'lines', heading: words.sentence('away.actFirstClosed'), lines: [...told, ...actFirst] },
    ];
  return [
    { kind: 'lines', heading: open, lines: [...before, ...actFirst], isUrgent: true },
    { kind: 'lines', heading: words.sentence('chart.closedLine'), lines: told },
  ];
}

/** A mean as it stands large: what it is of, and the pulse beside it (per minute; null for none). */
export function headlineOf(
  of: 'away.meanOf' | 'away.wholeMeanOf',
  text: string,
  pulse: number | null,
  used: number,
  { readings, refused }: Pick<SeriesPageInput, 'readings' | 'refused'>,
  words: Words,
): Headline {
  const said = words.sentence(of, { used, readings: readings.length + refused.length });
  return {
    text,
    of: pulse === null ? said : [said, words.sentence('away.pulseIs', { pulse })].join(', '),
  };
}
