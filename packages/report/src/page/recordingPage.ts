import { inTimeOrder, periodOf, type SidedLimit } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { DataTable } from '../figure/figure.js';
import { type RecordingDrawn, recordingFigure } from '../figure/recordingFigure.js';
import { clockText, dayText, exactText, meanText } from '../figure/times.js';
import { chanceLists } from './chanceBlocks.js';
import type { PageChances } from './homePage.js';
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

/** Everything the page of a recording says. Sentences that others make come as they are to be read. */
export type RecordingPageInput = RecordingDrawn & {
  readonly header: ReportHeader;
  readonly ruleSet: RuleSet | null;
  readonly actFirst: readonly string[];
  readonly refused: readonly RefusedRow[];
  /** What stands beside a reading, by its `index`. */
  readonly beside: ReadonlyMap<number, readonly string[]>;
  /** Readings whose time is only about right, by their `index`. */
  readonly about?: ReadonlySet<number>;
  readonly settled: readonly string[];
  readonly office: readonly string[];
  readonly chances: PageChances | null;
};

/** The page of a recording over 24 hours. Source: out-of-office handbook 18. */
export function recordingPage(input: RecordingPageInput, words: Words): ReportPage {
  const { result, readings, header, ruleSet, dayNight } = input;
  const say = words.sentence;
  const ordered = inTimeOrder(readings);
  const left = new Map(result.edited.map((one) => [one.index, words.detail(one)]));
  const failed = result.edited.filter(({ code }) => code === 'failed').length;
  const { counts } = result;
  const blocks: Block[] = [
    ...(input.actFirst.length === 0
      ? []
      : [{ kind: 'lines' as const, heading: say('series.actFirst'), lines: input.actFirst, isUrgent: true }]),
    {
      kind: 'lines',
      heading: say('report.ruleSet'),
      lines: [[ruleSetText('ambulatory', ruleSet, words), windowsText(input, words)].join('; ')],
    },
    {
      kind: 'lines',
      heading: say('report.quality'),
      lines: [
        [
          say('report.qualityRecording', {
            scheduled: counts.scheduled,
            kept: counts.kept,
            edited: result.edited.length - failed,
            failed,
            percent: counts.percent,
          }),
          say('report.awakeAsleep', { day: counts.day, night: counts.night, gap: result.longestGapHours }),
          say(result.valid ? 'report.enough' : 'report.notEnough'),
        ].join(' '),
        ...leftOutLines(
          result.edited.map((one) => ({ index: one.index, detail: words.detail(one) })),
          input.refused,
          words,
        ),
        ...result.why.map(words.detail),
      ],
    },
    { kind: 'figures', figures: [(how) => recordingFigure(input, words, how)] },
    { kind: 'tables', tables: [periodTable(input, words)] },
    { kind: 'lines', heading: say('report.result'), lines: resultLines(input, words) },
    {
      kind: 'lines',
      heading: say('report.cautions'),
      lines: [
        wholeText(input, words),
        ...result.flags.map(words.detail),
        ...input.settled,
        say('report.loadBeside'),
      ],
    },
  ];
  const [first, last] = [ordered[0], ordered.at(-1)];
  const when = (one: (typeof ordered)[number]) =>
    `${dayText(one.localDay, words)} ${clockText(one.minuteOfDay, words)}`;
  const measured =
    first === undefined || last === undefined
      ? say('report.nothing')
      : say('report.fromTo', { from: when(first), to: when(last) });
  const usedAs = (one: (typeof ordered)[number]) => {
    const period = periodOf(one, dayNight);
    if (period !== 'neither') return words.title('period', period);
    return say(result.dayNightBy === 'diary' ? 'report.neitherByDiary' : 'report.betweenPeriods');
  };
  return framed(header, measured, words, {
    title: say('report.recordingPage'),
    blocks: blocks.filter((one) => one.kind !== 'lines' || one.lines.length > 0),
    lists: [
      readingList(readings, left, input.beside, input.about, usedAs, words),
      ...chanceLists(input.chances, words),
      recordingFigure(input, words).table,
      ...refusedLists(input.refused, words),
    ],
  });
}

function windowsText({ result, dayNight }: RecordingPageInput, words: Words): string {
  const by = words.sentence(result.dayNightBy === 'diary' ? 'series.byDiary' : 'series.byClock');
  const range = ({ from, to }: { from: number; to: number }) =>
    `${clockText(from, words)}-${clockText(to, words)}`;
  if (dayNight.by === 'asleep-marks') return by;
  const night = range(dayNight.by === 'clock' ? dayNight.night : dayNight.asleep);
  const day = dayNight.by === 'clock' ? range(dayNight.day) : null;
  const nap = dayNight.by === 'asleep-range' && dayNight.nap != null ? range(dayNight.nap) : null;
  return words.sentence('report.windows', { by, day, night, nap });
}

/** Pattern, fall by night, rise after waking. The pattern is "consistent with", the class carries its caution. */
function resultLines({ result, office }: RecordingPageInput, words: Words): string[] {
  const say = words.sentence;
  const { systolicPercent: systolic, diastolicPercent: diastolic, class: dipClass } = result.dip;
  const lines: string[] = [];
  lines.push(
    result.high === null ? say('report.noCategory') : say(result.high ? 'report.highBy' : 'report.notHighBy'),
  );
  if (result.pattern !== null) {
    const names = words.title('ambulatoryPattern', result.pattern);
    lines.push(
      say('report.line', { label: say('series.pattern'), text: say('series.consistentWith', { names }) }),
    );
  }
  if (systolic !== null && diastolic !== null) {
    const fall = say('series.fallOf', { systolic, diastolic });
    const text =
      dipClass === null
        ? fall
        : say('series.fallWithClass', { fall, class: words.title('dipClass', dipClass) });
    lines.push(say('report.line', { label: say('series.fall'), text }));
  }
  const mmHg = result.surge?.sleepTrough ?? null;
  if (mmHg !== null) {
    const text = say('series.riseOf', { mmHg, definition: say('series.sleepTrough') });
    lines.push(say('report.line', { label: say('series.rise'), text }));
  }
  return [...lines, ...office];
}

function periodTable({ result, rules }: RecordingPageInput, words: Words): DataTable {
  const say = words.sentence;
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
  const rows = periods.flatMap(({ of, id, mean, limits }) => {
    const load = id === 'whole' ? null : (result.load[id]?.percent ?? null);
    const pressure = (measure: 'systolic' | 'diastolic', limit: SidedLimit | null) => [
      measure === 'systolic' ? words.title('period', id) : '',
      say(`report.${measure}`),
      whole(of.n === 0 ? null : of.n),
      meanText(mean[measure], limit, words),
      exactText(mean[measure], limit, words),
      limit === null ? '-' : words.say.limit(limit.limit),
      decimal(of.sd[measure]),
      whole(of.least[measure]),
      whole(of.most[measure]),
      load === null ? '-' : whole(load[measure]),
    ];
    const other = (name: string, value: number | null) => ['', name, '', whole(value), exactText(value, null, words), '', '', '', '', '']; // biome-ignore format: one thought
    return [
      pressure('systolic', limits[0]),
      pressure('diastolic', limits[1]),
      ['', say('report.pulse'), '', whole(of.mean.pulse), exactText(of.mean.pulse, null, words), '', decimal(of.sd.pulse), whole(of.least.pulse), whole(of.most.pulse), ''], // biome-ignore format: one thought
      other(say('report.meanArterial'), of.meanArterial),
      other(say('report.pulsePressure'), of.pulsePressure),
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

/** Which mean stands for 24 hours, and the plain one beside it: the two can lie on different sides of a limit. */
function wholeText({ result, rules }: RecordingPageInput, words: Words): string {
  const { systolic, diastolic } = result.whole.arithmetic;
  const plain = `${exactText(systolic, rules.wholeSystolic, words)}/${exactText(diastolic, rules.wholeDiastolic, words)}`;
  return words.sentence('report.wholeBy', { by: words.title('wholeMean', rules.wholeMean), plain });
}
