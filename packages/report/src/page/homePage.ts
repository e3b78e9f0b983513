import { dayPartOf, inTimeOrder, type SidedLimit } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { type ChanceDrawn, chanceFigure } from '../figure/chanceFigure.js';
import type { DataTable } from '../figure/figure.js';
import { type HomeDrawn, homeFigure, homeTable, limitsText } from '../figure/homeFigure.js';
import { dayText, exactText, meansText, meanText, pressureText } from '../figure/times.js';
import { readingList } from './readingList.js';
import {
  type Block,
  type FigureAt,
  framed,
  leftOutLines,
  type RefusedRow,
  type ReportHeader,
  type ReportPage,
  type RuleSet,
  refusedLists,
} from './reportPage.js';

/** How probable it is that the usual pressure is at or over a threshold (mmHg); 0 to 1, null where not known. */
export type ChanceRow = {
  readonly threshold: { readonly systolic: number; readonly diastolic: number };
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly prior: 'flat' | 'age-sex';
};

/** Everything the page of a series at home says. Sentences that others make come as they are to be read. */
export type HomePageInput = HomeDrawn & {
  readonly header: ReportHeader;
  readonly ruleSet: RuleSet;
  /** Readings to act on whatever the mean, in sentences. */
  readonly actFirst: readonly string[];
  readonly refused: readonly RefusedRow[];
  /** Notes by `index` of the reading. */
  readonly notes: ReadonlyMap<number, string>;
  /** What was settled while the file was read. */
  readonly settled: readonly string[];
  /** Chances and what they rest on; shown after the category. */
  readonly chances: {
    readonly drawn: readonly ChanceDrawn[];
    readonly rows: readonly ChanceRow[];
    readonly assumptions: readonly string[];
  } | null;
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
      lines: [say('series.ruleSet', { title: words.title('home', ruleSet.id), ...ruleSet })],
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
    ...(input.chances === null || input.chances.rows.length === 0
      ? []
      : [{ kind: 'tables' as const, tables: [chanceTable(input.chances.rows, words)] }]),
    ...(input.chances === null || input.chances.drawn.length === 0
      ? []
      : [
          {
            kind: 'figures' as const,
            figures: input.chances.drawn.map(
              (one): FigureAt =>
                (how) =>
                  chanceFigure(one, words, { id: `chance-${one.component}`, ...how }),
            ),
          },
        ]),
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
      readingList(readings, left, input.notes, (one) => say(`report.${dayPartOf(one, rules)}`), words),
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

/** A row for each threshold: from the readings alone, and with what is known of an age and sex where that was asked. */
function chanceTable(rows: readonly ChanceRow[], words: Words): DataTable {
  const say = words.sentence;
  const priors = (['flat', 'age-sex'] as const).filter((prior) => rows.some((one) => one.prior === prior));
  const names = { flat: say('series.flatPrior'), 'age-sex': say('series.agePrior') };
  const keyOf = ({ threshold }: ChanceRow) => pressureText(threshold.systolic, threshold.diastolic, words);
  const measures = ['systolic', 'diastolic'] as const;
  return {
    caption: say('report.chanceTable'),
    columns: [
      say('report.atOrAbove'),
      ...priors.flatMap((prior) =>
        measures.map((measure) =>
          say('report.chanceColumn', { component: say(`report.${measure}`), from: names[prior] }),
        ),
      ),
    ],
    rows: [...new Set(rows.map(keyOf))].map((key) => [
      key,
      ...priors.flatMap((prior) => {
        const found = rows.find((one) => keyOf(one) === key && one.prior === prior);
        return measures.map((measure) => say('report.chanceShort', { chance: found?.[measure] ?? null }));
      }),
    ]),
  };
}
