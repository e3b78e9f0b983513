import {
  combinedLoad,
  type DerivedSpread,
  derivedSpreads,
  ofSchedule,
  periodCategories,
  periodCounts,
  periodOf,
  recordingNotes,
  type SidedLimit,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { DataTable } from '../figure/figure.js';
import { type RecordingDrawn, recordingFigure } from '../figure/recordingFigure.js';
import { clockText, dayText, exactText, meansText, meanText } from '../figure/times.js';
import { chanceLists } from './chanceBlocks.js';
import { furtherLists, risesSaid, riseText } from './furtherFigures.js';
import { loadText, sidedText } from './loadText.js';
import { type CategoriesSaid, fallText, periodCategoriesSaid, wholeText } from './recordingText.js';
import { type ReportPage, ruleSetText } from './reportPage.js';
import { headlineOf, type SeriesPageInput, type SeriesPageParts, seriesPage } from './seriesPage.js';
import { stiffnessText } from './stiffnessText.js';
import { windowsText } from './windowsText.js';

export type RecordingPageInput = RecordingDrawn & SeriesPageInput;

/** The page of a recording over 24 hours. Source: out-of-office handbook 18. */
export function recordingPage(input: RecordingPageInput, words: Words): ReportPage {
  const { result, dayNight } = input;
  const say = words.sentence;
  const { counts } = result;
  const categories = periodCategoriesSaid(periodCategories(result, input.rules), result.pattern, words);
  const quality = say('report.qualityRecording', {
    scheduled: counts.scheduled,
    isPlanSaid: counts.isPlanSaid,
    kept: counts.kept - counts.byHand,
    ...ofSchedule(input.readings, result.edited),
    byHandUsed: counts.byHand,
    percent: counts.percent,
  });
  const cautions = [
    wholeText(result, input.rules, words),
    ...(categories?.flags ?? []).map(words.detail),
    ...result.flags.map(words.detail),
    ...recordingNotes(input.readings, result.edited, dayNight, input.rules).map(words.detail),
    ...input.settled,
    say('report.loadBeside'),
    ...loadWholeText(input, words),
  ];
  const { rules } = input;
  const { mean: whole } = result.judged.whole;
  const mean = meansText(whole, rules.wholeSystolic, rules.wholeDiastolic, words);
  const parts: SeriesPageParts = {
    title: say('report.recordingPage'),
    result: {
      headline:
        mean === null
          ? null
          : headlineOf('away.wholeMeanOf', mean, result.all.mean.pulse, counts.kept, input, words),
      lines: resultLines(input, categories, words),
    },
    ruleSet: [ruleSetText('ambulatory', input.ruleSet, words), windowsText(input, words)].join('; '),
    quality: [
      quality,
      say('report.awakeAsleep', { day: counts.day, night: counts.night, gap: result.longestGapHours }),
    ],
    isValid: result.valid,
    isRefusedSaid: false,
    why: result.why,
    leftOut: result.edited,
    blocks: [
      { kind: 'figures', figures: [(how) => recordingFigure(input, words, how)] },
      { kind: 'tables', tables: [periodTable(input, words)] },
      { kind: 'lines', heading: say('report.cautions'), lines: cautions },
    ],
    when: (one) => `${dayText(one.localDay, words)} ${clockText(one.minuteOfDay, words)}`,
    usedAs: (one) => {
      const period = periodOf(one, dayNight);
      if (period !== 'neither') return words.title('period', period);
      return say(result.dayNightBy === 'diary' ? 'report.neitherByDiary' : 'report.betweenPeriods');
    },
    before: [],
    after: [
      ...chanceLists(input.chances, words),
      ...furtherLists(result, words),
      recordingFigure(input, words).table,
    ],
  };
  return seriesPage(input, parts, words);
}

/** Pattern, fall by night, rise after waking. The pattern is "consistent with", the class carries its caution. */
function resultLines(
  { result, rules, target, office }: RecordingPageInput,
  categories: CategoriesSaid | null,
  words: Words,
): string[] {
  const say = words.sentence;
  const lines: string[] = [];
  const day = meansText(result.day.mean, rules.daySystolic, rules.dayDiastolic, words);
  const night = meansText(result.night.mean, rules.nightSystolic, rules.nightDiastolic, words);
  if (day !== null || night !== null)
    lines.push(say('away.dayNight', { day: day ?? '-', night: night ?? '-' }));
  lines.push(
    result.high === null ? say('report.noCategory') : say(result.high ? 'report.highBy' : 'report.notHighBy'),
  );
  if (result.pattern !== null) {
    const names = words.title('ambulatoryPattern', result.pattern);
    lines.push(
      say('report.line', { label: say('series.pattern'), text: say('series.consistentWith', { names }) }),
    );
  }
  if (categories !== null) {
    lines.push(say('report.line', { label: say('series.category'), text: categories.text }));
  }
  const fall = fallText(result, words);
  if (fall !== null) lines.push(say('report.line', { label: say('series.fall'), text: fall }));
  const [rise] = result.surge === null ? [] : risesSaid(result.surge, words).rises;
  if (rise !== undefined && rise.amount !== null) {
    lines.push(say('report.line', { label: say('series.rise'), text: riseText(rise, words) }));
  }
  if (rules.reportsStiffness) {
    lines.push(say('report.line', { label: say('series.stiffness'), text: stiffnessText(result, words) }));
  }
  return [...lines, ...target, ...office];
}

/** The load of 24 hours, whose limits are those of day and night, as a sentence of the page. */
function loadWholeText(
  { readings, result, dayNight, rules }: RecordingPageInput,
  words: Words,
): readonly string[] {
  const text = loadText(combinedLoad(readings, result.edited, dayNight, rules), rules, words);
  return text === null ? [] : [`${words.sentence('series.load')}, ${text}.`];
}

function periodTable({ result, rules, readings, dayNight }: RecordingPageInput, words: Words): DataTable {
  const say = words.sentence;
  const spreads = derivedSpreads(readings, result.edited, dayNight);
  const wholeLoad = combinedLoad(readings, result.edited, dayNight, rules);
  const counts = periodCounts(readings, result.edited, dayNight);
  const periods = [
    {
      of: result.all,
      id: 'whole',
      mean: result.judged.whole.mean,
      limits: [rules.wholeSystolic, rules.wholeDiastolic],
    },
    { of: result.day, id: 'day', mean: result.day.mean, limits: [rules.daySystolic, rules.dayDiastolic] },
    {
      of: result.night,
      id: 'night',
      mean: result.night.mean,
      limits: [rules.nightSystolic, rules.nightDiastolic],
    },
  ] as const;
  const decimal = (value: number | null) => (value === null ? '-' : words.say.number(value, 1));
  const whole = (value: number | null) => (value === null ? '-' : words.say.short(value, 0));
  const countText = (n: number) => (n === 0 ? '-' : words.say.short(n));
  const rows = periods.flatMap(({ of, id, mean, limits }) => {
    const load = id === 'whole' ? wholeLoad : (result.load[id]?.percent ?? null);
    const pressure = (measure: 'systolic' | 'diastolic', limit: SidedLimit | null) => [
      measure === 'systolic' ? words.title('period', id) : '',
      say(`report.${measure}`),
      countText(counts[id][measure]),
      meanText(mean[measure], limit, words),
      exactText(mean[measure], limit, words),
      limit === null ? '-' : sidedText(limit, words),
      decimal(of.sd[measure]),
      whole(of.least[measure]),
      whole(of.most[measure]),
      load === null ? '-' : whole(load[measure]),
    ];
    const other = (name: string, value: number | null, { sd, least, most }: DerivedSpread) => ['', name, '', whole(value), exactText(value, null, words), '', decimal(sd), whole(least), whole(most), '']; // biome-ignore format: one thought
    return [
      pressure('systolic', limits[0]),
      pressure('diastolic', limits[1]),
      ['', say('report.pulse'), countText(counts[id].pulse), whole(of.mean.pulse), exactText(of.mean.pulse, null, words), '', decimal(of.sd.pulse), whole(of.least.pulse), whole(of.most.pulse), ''], // biome-ignore format: one thought
      other(say('report.meanArterial'), of.meanArterial, spreads[id].meanArterial),
      other(say('report.pulsePressure'), of.pulsePressure, spreads[id].pulsePressure),
    ];
  });
  return {
    caption: say('report.periodTable'),
    columns: [
      say('report.period'),
      '',
      say('report.n'),
      say('report.mean1'),
      say('report.unrounded'),
      say('report.limitColumn'),
      say('report.sd'),
      say('report.least'),
      say('report.most'),
      say('report.load'),
    ],
    rows,
  };
}
