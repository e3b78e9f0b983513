import {
  AMBULATORY_RULE,
  type AmbulatoryResult,
  type AmbulatoryRules,
  ambulatoryResult,
  ambulatoryRules,
  type ChanceOver,
  type Cosinor,
  chancesOver,
  chancesWithVisits,
  combinedLoad,
  type DayNight,
  type DerivedSpreads,
  dayAsked,
  derivedSpreads,
  dipBeside,
  isChild,
  type Lone,
  loneOf,
  MEASURES,
  type Measure,
  marksBeside,
  type OfficeBeside,
  officeBeside,
  type Protocol,
  periodCategories,
  periodCounts,
  recordingNotes,
  refusal,
  type TargetBeside,
  targetBeside,
  type UsualKnown,
  type VisitsMean,
} from '@evenfall/clinical';
import type { ReadSeries } from '@evenfall/exchange';
import type { Words } from '@evenfall/words';
import type { Json } from '../../answer.js';
import type { Context } from '../../command.js';
import type { Maker } from '../../input/fileLines.js';
import { computedBy } from '../../output/computedBy.js';
import { askedJson } from './askedJson.js';
import { assumptionsIn, officeJson } from './homeAnswer.js';
import {
  type ActFirst,
  actFirstJson,
  actFirstOf,
  leftOut,
  type NotUsed,
  readFlags,
  refusedRows,
  seriesOfText,
} from './seriesOfText.js';
import { type OfficeTaken, officeBesideReadings, visitsOf } from './typedOffice.js';
import { protocolOf, type TypedRecording, type TypedSeries } from './typedSeries.js';

/** A recording over 24 hours, answered. */
export type RecordingAnswered = {
  readonly typed: TypedSeries;
  readonly recording: TypedRecording;
  readonly read: ReadSeries;
  readonly result: AmbulatoryResult;
  readonly rules: string;
  readonly protocol: Protocol;
  readonly ambulatoryRules: AmbulatoryRules;
  readonly first: readonly ActFirst[];
  readonly office: OfficeBeside | null;
  /** The office that is taken, and how many pressures with a day are too far from the readings. */
  readonly visited: OfficeTaken | null;
  readonly tooFar: number;
  readonly target: TargetBeside | null;
  readonly isAllUsed: boolean;
  readonly dayNight: DayNight;
  readonly spreads: DerivedSpreads;
  /** Readings that stand far from their neighbours; null where none does. */
  readonly lone: Lone | null;
  readonly known: UsualKnown;
  /** The limit that the chances are about, mmHg; none where nothing is asked of them. */
  readonly thresholds: readonly ChanceOver['threshold'][];
  readonly visits: VisitsMean | null;
  readonly probability: readonly ChanceOver[];
};

/** What the command makes of a file of a recording. */
export function recordingMaker(
  typed: TypedSeries,
  recording: TypedRecording,
  { words, version }: Pick<Context, 'words' | 'version'>,
): Maker<RecordingAnswered> {
  return {
    of: (bytes) => {
      const read = seriesOfText(bytes, typed.choices);
      if (!read.ok) return read;
      // Who sleeps by day has no night by the clock: where a diary tells it, no fixed hours may.
      if (recording.dayNight?.by === 'clock' && read.value.readings.some(({ asleep }) => asleep !== null)) {
        return { ok: false, refusals: [refusal('--day', 'contradicts', 'night-by-diary', null)] };
      }
      return { ok: true, value: recordingAnswered(read.value, typed, recording) };
    },
    json: (answered) => recordingJson(answered, version, words),
  };
}

/** What a recording comes to under the rule set that was asked for. */
export function recordingAnswered(
  read: ReadSeries,
  typed: TypedSeries,
  recording: TypedRecording,
): RecordingAnswered {
  const protocol = protocolOf('ambulatory', typed.rules);
  const rules = {
    ...ambulatoryRules(protocol),
    ...(recording.asksStiffness ? { reportsStiffness: true } : {}),
  };
  const { ageYears, isPregnant } = typed;
  const dayNight = recording.dayNight ?? dayNightOf(read, rules);
  const known = {
    ageYears,
    isPregnant,
    scheduled: recording.scheduled,
    isAllUsed: recording.isAllUsed,
    dayNight,
    rejected: new Set<number>(),
    restored: new Set<number>(),
  };
  const result = ambulatoryResult(read.readings, known, rules);
  const { taken: visited, tooFar } = officeBesideReadings(typed.office, read.readings);
  const isOfChild = isChild(ageYears);
  const limits = {
    whole: { highSystolic: rules.wholeSystolic, highDiastolic: rules.wholeDiastolic },
    day: { highSystolic: rules.daySystolic, highDiastolic: rules.dayDiastolic },
    night: { highSystolic: rules.nightSystolic, highDiastolic: rules.nightDiastolic },
  };
  return {
    typed,
    recording,
    read,
    result,
    rules: typed.rules,
    protocol,
    ambulatoryRules: rules,
    first: actFirstOf(read, isPregnant, isOfChild),
    target: targetBeside(typed.rules, result.day.mean, { ...typed, isValid: result.valid }),
    visited,
    tooFar,
    office:
      visited === null
        ? null
        : officeBeside(
            visited,
            result.day.mean,
            rules.judged.map((period) => ({ ...result.judged[period].mean, ...limits[period] })),
            { ...typed, isJudged: result.valid && !isOfChild && !isPregnant },
          ),
    isAllUsed: recording.isAllUsed,
    dayNight,
    lone: loneOf(
      read.readings,
      new Set(result.edited.map(({ index }) => index)),
      (rejected) => ambulatoryResult(read.readings, { ...known, rejected }, rules).judged.whole.mean,
    ),
    spreads: derivedSpreads(read.readings, result.edited, dayNight),
    ...chancesOf(result, rules, typed, visitsOf(visited)),
  };
}

type Chances = Pick<RecordingAnswered, 'known' | 'thresholds' | 'visits' | 'probability'>;

/** The mean by day about its limit, alone and with the office; of a child, in pregnancy or of too few readings none. */
function chancesOf(
  result: AmbulatoryResult,
  rules: AmbulatoryRules,
  typed: TypedSeries,
  visits: VisitsMean | null,
): Chances {
  const none = { systolic: null, diastolic: null };
  const isAsked = result.valid && !isChild(typed.ageYears) && !typed.isPregnant;
  const asked = isAsked ? dayAsked(result, rules) : null;
  const { ageYears, sex } = typed;
  const known = { ageYears, sex, office: none, home: none, ambulatory: asked?.ambulatory ?? none };
  const thresholds = asked?.thresholds ?? [];
  const withVisits = visits === null ? [] : chancesWithVisits(thresholds, known, visits);
  return { known, thresholds, visits, probability: [...chancesOver(thresholds, known), ...withVisits] };
}

/** By the person's own marks where the file has any, else by the clock of the rule set. */
function dayNightOf({ readings }: ReadSeries, rules: AmbulatoryRules): DayNight {
  if (readings.some(({ asleep }) => asleep !== null)) return { by: 'asleep-marks' };
  return {
    by: 'clock',
    day: { from: rules.dayFrom, to: rules.dayTo },
    night: { from: rules.nightFrom, to: rules.nightTo },
  };
}

/** That typed times of sleep are used and the marks of the file are not, and how many of these say otherwise. */
export function marksFlags({ read, dayNight }: RecordingAnswered, words: Words) {
  const figures = marksBeside(read.readings, dayNight);
  if (figures === null) return [];
  return [{ code: 'marks-not-used', detail: words.sentence('series.marksNotUsed', figures), figures }];
}

/** What is to be known of how it was taken. */
export function notesOf({ read, result, dayNight, ambulatoryRules: rules }: RecordingAnswered) {
  return recordingNotes(read.readings, result.edited, dayNight, rules);
}

/** Every row of the file that is not used, in order of line. */
export function editedOf({ read, result }: RecordingAnswered, words: Words): NotUsed[] {
  return [...refusedRows(read, words), ...result.edited.map((one) => leftOut(one, read, words))].sort(
    (a, b) => a.row - b.row,
  );
}

/** The answer for programs: the keys of the command first, what else is known after them. */
export function recordingJson(answered: RecordingAnswered, version: string, words: Words): Json {
  const { result, read, rules, protocol, office } = answered;
  const categories = periodCategories(result, answered.ambulatoryRules);
  const { scheduled, kept, day, night, percent } = result.counts;
  return {
    rules,
    valid: result.valid,
    why: result.why.map(words.flagged),
    counts: { scheduled, kept, day, night, percent },
    dayNightBy: result.dayNightBy,
    edited: editedOf(answered, words).map(({ row, reason, ...one }) => ({ row, rule: reason, ...one })),
    day: result.day.mean,
    night: result.night.mean,
    whole: result.whole,
    sd: result.all.sd,
    cvPercent: result.cvPercent,
    arv: result.arv,
    arvTimeWeighted: result.arvTimeWeighted,
    weightedSd: result.weightedSd,
    dip: { ...result.dip, ...dipBeside(result.day.mean, result.night.mean, result.dip.class !== null) },
    surge: result.surge,
    load: result.load,
    cosinor: { ...curves(result, 'one'), two: curves(result, 'two') },
    pattern: result.pattern,
    sdDay: result.day.sd,
    sdNight: result.night.sd,
    high: result.high,
    categories: categories.names,
    judged: result.judged,
    compared: 'unrounded',
    asked: askedJson(answered.typed, answered.recording),
    hours: result.hours,
    least: { day: result.day.least, night: result.night.least, whole: result.all.least },
    most: { day: result.day.most, night: result.night.most, whole: result.all.most },
    arvWithoutGaps: result.arvWithoutGaps,
    arvDay: result.arvDay,
    arvNight: result.arvNight,
    pulsePressure: byPeriod(result, 'pulsePressure'),
    meanArterial: byPeriod(result, 'meanArterial'),
    doubleProduct: byPeriod(result, 'doubleProduct'),
    derivedSpread: answered.spreads,
    countsByMeasure: periodCounts(read.readings, result.edited, answered.dayNight),
    combinedLoadPercent: combinedLoad(
      read.readings,
      result.edited,
      answered.dayNight,
      answered.ambulatoryRules,
    ),
    stiffness: result.stiffness,
    longestGapHours: result.longestGapHours,
    spread: result.spread,
    all: answered.isAllUsed,
    asksStiffness: answered.ambulatoryRules.reportsStiffness,
    startedByHand: read.readings
      .filter((one) => one.startedByHand === true)
      .map(({ index }) => read.lines[index - 1] as number),
    actFirst: actFirstJson(answered.first, words),
    flags: [
      ...[...categories.flags, ...result.flags, ...notesOf(answered)].map(words.flagged),
      ...marksFlags(answered, words),
      ...readFlags(read, words),
    ],
    office: officeJson(answered),
    phenotype: office?.phenotype ?? null,
    whiteCoat: office?.whiteCoat ?? null,
    target: answered.target,
    probability: answered.probability,
    assumptions: assumptionsIn(answered).map(words.flagged),
    columns: read.mapping.columns,
    zone: read.zone,
    dates: read.dates,
    computedBy: computedBy(version, AMBULATORY_RULE, protocol, 'ambulatory'),
  };
}

function byPeriod(
  { day, night, all }: AmbulatoryResult,
  key: 'pulsePressure' | 'meanArterial' | 'doubleProduct',
) {
  return { day: day[key], night: night[key], whole: all[key] };
}

/** A fitted curve with the harmonic of 24 hours in front; null where none was fitted. */
function curves({ cosinor }: AmbulatoryResult, which: 'one' | 'two') {
  const of = (measure: Measure) => {
    const found = cosinor[measure][which];
    return found === null ? null : curveJson(found);
  };
  return Object.fromEntries(MEASURES.map((measure) => [measure, of(measure)]));
}

function curveJson({ mesor, mesorSe, harmonics, r2, f, p, sse, df, highest, lowest }: Cosinor) {
  const [first] = harmonics;
  if (first === undefined) throw new Error('a fitted curve without a harmonic');
  const { amplitude, peakHour, acrophaseDegrees } = first;
  return {
    mesor,
    amplitude,
    peakHour,
    acrophaseDegrees,
    r2,
    f,
    p,
    mesorSe,
    harmonics,
    sse,
    df,
    highest,
    lowest,
  };
}
