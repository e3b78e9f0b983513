import {
  type Beside,
  type Flag,
  numbersText,
  type PlaceFlagCode,
  type PressureRange,
  type Protocol,
  printShorthand,
  REPEAT_SCATTER_MMHG,
  RUN_RULE,
  type RunReasonCode,
  type RunResult,
  type Shorthand,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { Json } from '../answer.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';

/** A pressure with how it is written: what `run` and `reading` both answer. */
export type Answered = {
  readonly result: RunResult;
  /** What the place says of it. */
  readonly placeFlags: readonly Flag<PlaceFlagCode>[];
  readonly written: Shorthand;
  readonly rhythmFelt: 'regular' | 'irregular' | null;
  /** Null when no preset was chosen: then the conventions hold. */
  readonly protocol: Protocol | null;
};

/** The one shape of both commands. Source: docs/conventions.md section 6. */
export function runJson(
  { result, placeFlags, written, rhythmFelt, protocol }: Answered,
  version: string,
  words: Words,
): Json {
  const beside: Beside = written;
  return {
    text: printShorthand(written),
    systolic: result.systolic,
    diastolic: result.diastolic,
    muffled: result.muffled,
    diastolicUsed: result.diastolicUsed,
    systolicRange: result.systolicRange,
    diastolicRange: result.diastolicRange,
    deflationRateMmHgPerSecond: result.deflationRateMmHgPerSecond,
    earlyDeflationRateMmHgPerSecond: result.earlyDeflationRateMmHgPerSecond,
    dropPerBeatMmHg: result.dropPerBeatMmHg,
    marginMmHg: result.marginMmHg,
    flags: [...result.flags, ...placeFlags].map(words.flagged),
    why: result.why.map(words.flagged),
    method: result.method,
    gap: result.gap,
    readings: written.readings,
    pulse: beside.pulse,
    side: beside.side,
    site: beside.site ?? 'upper-arm',
    posture: beside.posture,
    cuff: beside.cuff,
    rhythm: rhythmFelt,
    computedBy: computedBy(version, RUN_RULE, protocol, 'deflation'),
  };
}

/** The same for people. Of a pressure that was only written down one line says what cannot be told. */
export function runLines(
  { result, placeFlags, written }: Answered,
  isWritten: boolean,
  words: Words,
): string[] {
  const flags = [...result.flags, ...placeFlags];
  const why = result.why.filter(
    ({ code }) => !flags.some((flag) => flag.code === code) && !(isWritten && OF_THE_RUN.includes(code)),
  );
  return columns([
    [numbersText(written), headOf(written, words)],
    ...systolicRows(result, words),
    ...diastolicRows(result, words),
    ...rateRows(result, words),
    ...marginRows(result, words),
    ...flags.map((flag) => [words.sentence('commandLine.note'), words.detail(flag)]),
    ...why.map((flag) => ['', words.detail(flag)]),
    ...(isWritten ? [['', words.sentence('run.writtenOnly')]] : []),
  ]);
}

/** What nobody writes beside a pressure. */
const OF_THE_RUN: readonly RunReasonCode[] = ['no-peak', 'not-timed', 'no-pulse', 'not-palpated'];

function headOf(written: Shorthand, words: Words): string {
  const { readings, method, pulse } = written;
  return [
    words.title('method', method),
    ...(readings === 1 ? [] : [words.sentence('run.meanOf', { readings })]),
    ...(pulse === null ? [] : [`${words.say.number(pulse)} ${words.sentence('app.perMinute')}`]),
  ].join(', ');
}

function systolicRows({ systolic, systolicRange: range }: RunResult, words: Words): string[][] {
  const scatter = words.sentence('run.scatter', { mmHg: REPEAT_SCATTER_MMHG });
  const said = [words.say.short(systolic), ...rangeOf(range, words)].join(', ');
  return [[words.sentence('run.systolic'), said], ...(range === null ? [] : [['', scatter]])];
}

function diastolicRows(
  { diastolic, diastolicUsed, diastolicRange, gap }: RunResult,
  words: Words,
): string[][] {
  const gapRow =
    gap === null
      ? []
      : [
          [
            words.sentence('run.gap'),
            words.sentence('run.gapBetween', { from: gap.fromMmHg, to: gap.toMmHg }),
          ],
        ];
  const heading = words.sentence('run.diastolic');
  if (diastolic === null) return [[heading, words.sentence('run.none')], ...gapRow];
  const said =
    diastolicUsed === null
      ? words.sentence('run.cannotBeUsed', { mmHg: diastolic })
      : diastolicUsed === diastolic
        ? words.say.short(diastolic)
        : words.sentence('run.usedInPlace', { used: diastolicUsed, heard: diastolic });
  return [[heading, [said, ...rangeOf(diastolicRange, words)].join(', ')], ...gapRow];
}

function rangeOf(range: PressureRange | null, words: Words): string[] {
  return range === null ? [] : [words.sentence('run.rangeAlone', { low: range[0], high: range[1] })];
}

function rateRows(result: RunResult, words: Words): string[][] {
  const {
    earlyDeflationRateMmHgPerSecond: early,
    deflationRateMmHgPerSecond: mean,
    dropPerBeatMmHg,
  } = result;
  const said = [
    ...(early === null ? [] : [words.sentence('run.early', { rate: early })]),
    ...(mean === null ? [] : [words.sentence('run.mean', { rate: mean })]),
    ...(dropPerBeatMmHg === null ? [] : [words.sentence('run.perBeat', { mmHg: dropPerBeatMmHg })]),
  ];
  return said.length === 0 ? [] : [[words.sentence('run.deflation'), said.join(', ')]];
}

function marginRows({ marginMmHg: mmHg }: RunResult, words: Words): string[][] {
  return mmHg === null ? [] : [[words.sentence('run.margin'), words.sentence('run.marginAbove', { mmHg })]];
}
