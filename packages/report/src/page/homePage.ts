import {
  dayPartOf,
  type HomeAsked,
  type HomeParts,
  heightEffect,
  homeParts,
  type SidedLimit,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { DataTable } from '../figure/figure.js';
import { type HomeDrawn, homeFigure, homeTable } from '../figure/homeFigure.js';
import { dayText, exactText, meansText, meanText, pressureText } from '../figure/times.js';
import { chanceBlocks } from './chanceBlocks.js';
import { homeGapsText } from './homeGapsText.js';
import { sidedText } from './loadText.js';
import { type Block, type ReportPage, ruleSetText } from './reportPage.js';
import { headlineOf, type SeriesPageInput, type SeriesPageParts, seriesPage } from './seriesPage.js';

export type HomePageInput = HomeDrawn &
  SeriesPageInput & {
    /** What was asked for and came; null where nothing asks for readings. */
    readonly asked: HomeAsked | null;
  };

/** Days that still stand beside the means; more of them go to the sheets after it. */
const MOST_DAYS_BESIDE = 8;

/** The page of a series at home: the category stands before any chance. Source: out-of-office handbook 18. */
export function homePage(input: HomePageInput, words: Words): ReportPage {
  const { result, readings, rules } = input;
  const say = words.sentence;
  const days = homeTable(input, words);
  const isShort = days.rows.length <= MOST_DAYS_BESIDE;
  const varied = homeParts(readings, result.dropped, rules);
  const extremes = extremesOf(input, words);
  const mean = meansText(result.mean, rules.highSystolic, rules.highDiastolic, words);
  const blocks: Block[] = [
    { kind: 'tables', tables: [meansTable(input, varied, words), ...(isShort ? [days] : [])] },
    { kind: 'figures', figures: [(how) => homeFigure(input, words, how)] },
    ...chanceBlocks(input.chances, words),
    {
      kind: 'lines',
      heading: say('report.cautions'),
      lines: [
        ...[...result.flags, ...varied.flags].map(words.detail),
        ...input.settled,
        ...(extremes === null ? [] : [extremes]),
        ...(readings.some(({ site }) => site === 'wrist')
          ? [say('report.wristSeen', { perCm: heightEffect(1).theoryMmHg })]
          : []),
        ...(input.chances?.assumptions ?? []),
      ],
    },
  ];
  const quality = say('report.qualityHome', {
    used: result.used,
    all: readings.length,
    days: result.days,
    left: result.dropped.length,
    refused: input.refused.length,
  });
  const gaps = homeGapsText(input.asked, words);
  const parts: SeriesPageParts = {
    title: say('report.homePage'),
    result: {
      headline:
        mean === null ? null : headlineOf('away.meanOf', mean, result.mean.pulse, result.used, input, words),
      lines: [
        result.category === null
          ? say('report.noCategory')
          : [
              say('report.category', { category: words.title('homeCategory', result.category) }),
              say('report.nameOnly'),
            ].join(' '),
        ...input.target,
        ...input.office,
      ],
    },
    ruleSet: ruleSetText('home', input.ruleSet, words),
    quality: [quality, ...(gaps === null ? [] : [`${gaps}.`])],
    isValid: result.valid,
    isRefusedSaid: true,
    why: result.why,
    leftOut: result.dropped,
    blocks,
    when: (one) => dayText(one.localDay, words),
    usedAs: (one) => say(`report.${dayPartOf(one, rules)}`),
    before: isShort ? [] : [days],
    after: [],
  };
  return seriesPage(input, parts, words);
}

function meansTable({ result, rules }: HomePageInput, varied: HomeParts, words: Words): DataTable {
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
  const hasLimit = limits.systolic !== null || limits.diastolic !== null;
  const limitOf = (one: SidedLimit | null) => (one === null ? '-' : sidedText(one, words));
  return {
    caption: say('report.meansTable'),
    columns: ['', say('report.systolic'), say('report.diastolic'), say('report.pulse')],
    rows: [
      row(say('report.all'), result.mean),
      exact(say('report.unrounded'), result.mean, limits),
      ...(hasLimit ? [[say('report.limitColumn'), limitOf(limits.systolic), limitOf(limits.diastolic), '']] : []), // biome-ignore format: one thought
      row(say('report.morning'), result.morning),
      row(say('report.evening'), result.evening),
      exact(say('report.minus'), result.morningMinusEvening),
      exact(say('report.sd'), result.sd),
      exact(say('report.sdOfDays'), result.dayToDay.sd),
      exact(say('report.sdOfMornings'), varied.morning.sd),
      exact(say('report.sdOfEvenings'), varied.evening.sd),
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
