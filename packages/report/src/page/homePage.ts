import { type ChanceOver, dayPartOf, inTimeOrder, type SidedLimit } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { ChanceDrawn } from '../figure/chanceFigure.js';
import type { DataTable } from '../figure/figure.js';
import { type HomeDrawn, homeFigure, homeTable, limitsText } from '../figure/homeFigure.js';
import { dayText, exactText, meansText, meanText, pressureText } from '../figure/times.js';
import { chanceBlocks } from './chanceBlocks.js';
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
  ruleSetText,
} from './reportPage.js';

/** Chances of where the usual pressure lies and what they rest on; shown after the category. */
export type PageChances = {
  readonly drawn: readonly ChanceDrawn[];
  readonly rows: readonly ChanceOver[];
  readonly assumptions: readonly string[];
};

/** Everything the page of a series at home says. Sentences that others make come as they are to be read. */
export type HomePageInput = HomeDrawn & {
  readonly header: ReportHeader;
  readonly ruleSet: RuleSet | null;
  /** Readings to act on whatever the mean, in sentences. */
  readonly actFirst: readonly string[];
  readonly refused: readonly RefusedRow[];
  /** What stands beside a reading, by its `index`. */
  readonly beside: ReadonlyMap<number, readonly string[]>;
  /** What was settled while the file was read. */
  readonly settled: readonly string[];
  readonly chances: PageChances | null;
  /** What an office pressure beside it says. */
  readonly office: readonly string[];
};

/** Days that still stand beside the means; more of them go to the sheets after it. */
const MOST_DAYS_BESIDE = 8;

/** The page of a series at home: the category stands before any chance. Source: out-of-office handbook 18. */
export function homePage(input: HomePageInput, words: Words): ReportPage {
  const { result, readings, rules, header, ruleSet } = input;
  const say = words.sentence;
  const ordered = inTimeOrder(readings);
  const left = new Map(result.dropped.map((one) => [one.index, words.detail(one)]));
  const days = homeTable(input, words);
  const isShort = days.rows.length <= MOST_DAYS_BESIDE;
  const extremes = extremesOf(input, words);
  const mean = meansText(result.mean, rules.highSystolic, rules.highDiastolic, words);
  const blocks: Block[] = [
    ...(input.actFirst.length === 0
      ? []
      : [{ kind: 'lines' as const, heading: say('series.actFirst'), lines: input.actFirst, isUrgent: true }]),
    {
      kind: 'lines',
      heading: say('report.ruleSet'),
      lines: [ruleSetText('home', ruleSet, words)],
    },
    {
      kind: 'lines',
      heading: say('report.quality'),
      lines: [
        [
          say('report.qualityHome', {
            used: result.used,
            all: readings.length,
            days: result.days,
            left: result.dropped.length,
            refused: input.refused.length,
          }),
          say(result.valid ? 'report.enough' : 'report.notEnough'),
        ].join(' '),
        ...leftOutLines(
          result.dropped.map((one) => ({ index: one.index, detail: words.detail(one) })),
          input.refused,
          words,
        ),
        ...result.why.map(words.detail),
      ],
    },
    { kind: 'tables', tables: [meansTable(input, words), ...(isShort ? [days] : [])] },
    { kind: 'figures', figures: [(how) => homeFigure(input, words, how)] },
    {
      kind: 'lines',
      heading: say('report.result'),
      lines: [
        ...(mean === null ? [] : [say('report.meanSays', { mean })]),
        result.category === null
          ? say('report.noCategory')
          : say('report.category', { category: words.title('homeCategory', result.category) }),
        ...(result.category === null ? [] : [say('report.nameOnly')]),
        ...input.office,
      ],
    },
    ...chanceBlocks(input.chances, words),
    {
      kind: 'lines',
      heading: say('report.cautions'),
      lines: [
        ...result.flags.map(words.detail),
        ...input.settled,
        ...(extremes === null ? [] : [extremes]),
        ...(readings.some(({ site }) => site === 'wrist') ? [say('report.wristSeen')] : []),
        ...(input.chances?.assumptions ?? []),
      ],
    },
  ];
  const [first, last] = [ordered[0], ordered.at(-1)];
  const measured =
    first === undefined || last === undefined
      ? say('report.nothing')
      : say('report.fromTo', { from: dayText(first.localDay, words), to: dayText(last.localDay, words) });
  return framed(header, measured, words, {
    title: say('report.homePage'),
    blocks: blocks.filter((one) => one.kind !== 'lines' || one.lines.length > 0),
    lists: [
      ...(isShort ? [] : [days]),
      readingList(
        readings,
        left,
        input.beside,
        input.about,
        (one) => say(`report.${dayPartOf(one, rules)}`),
        words,
      ),
      ...refusedLists(input.refused, words),
    ],
  });
}

function meansTable({ result, rules }: HomePageInput, words: Words): DataTable {
  const say = words.sentence;
  const limits = { systolic: rules.highSystolic, diastolic: rules.highDiastolic };
  const none: typeof limits = { systolic: null, diastolic: null };
  type Of = HomePageInput['result']['mean'];
  const pulse = (value: number | null) => (value === null ? '-' : words.say.short(value, 0));
  const row = (name: string, of: Of) => [
    name,
    meanText(of.systolic, limits.systolic, words),
    meanText(of.diastolic, limits.diastolic, words),
    pulse(of.pulse),
  ];
  const exact = (
    name: string,
    of: Of,
    beside: { [M in 'systolic' | 'diastolic']: SidedLimit | null } = none,
  ) => [
    name,
    exactText(of.systolic, beside.systolic, words),
    exactText(of.diastolic, beside.diastolic, words),
    exactText(of.pulse, null, words),
  ];
  const limit = limitsText(rules.highSystolic, rules.highDiastolic, words);
  return {
    caption: say('report.meansTable'),
    columns: ['', say('report.systolic'), say('report.diastolic'), say('report.pulse')],
    rows: [
      row(say('report.all'), result.mean),
      exact(say('report.unrounded'), result.mean, limits),
      ...(limit === null ? [] : [[say('report.limitColumn'), words.say.limit(rules.highSystolic?.limit ?? 0), words.say.limit(rules.highDiastolic?.limit ?? 0), '']]), // biome-ignore format: one thought
      row(say('report.morning'), result.morning),
      row(say('report.evening'), result.evening),
      exact(say('report.minus'), result.morningMinusEvening),
      exact(say('report.sd'), result.sd),
      exact(say('report.sdOfDays'), result.dayToDay.sd),
    ],
  };
}

/** The highest and lowest systolic that were read; shown, and not used for the name. */
function extremesOf({ readings }: HomePageInput, words: Words): string | null {
  const known = readings.filter(({ systolic }) => systolic !== null);
  const by = [...known].sort((a, b) => (a.systolic as number) - (b.systolic as number));
  const [low, high] = [by[0], by.at(-1)];
  if (low === undefined || high === undefined) return null;
  return words.sentence('report.extremes', {
    high: pressureText(high.systolic, high.diastolic, words),
    low: pressureText(low.systolic, low.diastolic, words),
  });
}
