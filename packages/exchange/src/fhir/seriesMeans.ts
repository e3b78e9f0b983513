import { periodOf } from '@evenfall/clinical';
import {
  type ChartedSeries,
  dayNightOf,
  type InForce,
  isByGeneralRules,
  judgedReadings,
  NOTHING_CHOSEN,
  type RulesOf,
  type SeriesContent,
} from '@evenfall/record';
import type { Words } from '@evenfall/words';
import type { CodeableConcept, Observation, ObservationComponent } from 'fhir/r4.js';
import { seriesMeanText, seriesRuleText } from '../text/seriesRuleText.js';
import { category, concept, LOINC } from './concepts.js';
import { component } from './pressureParticulars.js';
import { reference, urn } from './references.js';
import {
  meanId,
  nameOfSeries,
  type Period,
  pressureId,
  type SeriesEntry,
  seriesIn,
  statusOfSeries,
} from './seriesObservations.js';
import { profileUrl, SYSTEMS } from './systems.js';
import { fhirTime } from './times.js';

/** A mean of a series: of what, its numbers (mmHg; written to one decimal), and the places of its readings from 1. */
type Mean = {
  readonly period: Period;
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly places: readonly number[];
  readonly notes: readonly string[];
};

/**
 * The means of every series that is written: one of readings at home, and of a recording those of 24 hours, of the day
 * and of the night, each with the readings that it was made from, the time from the first to the last of them, and by
 * which rule set. A mean that its rule set asks more readings for says so. Of fewer than two readings there is none.
 *
 * Source: interoperability handbook 4, 9 and 11.
 */
export function seriesMeans(series: readonly ChartedSeries[], rulesOf: RulesOf, words: Words): Observation[] {
  return series.flatMap((one) =>
    seriesIn(one.amended).flatMap((entry) => {
      const { content } = entry;
      const isStanding = one.content === content;
      const value = isStanding ? one.value : content.value;
      const decided = isStanding ? one.decided.length : 0;
      const isGeneral = isStanding && isByGeneralRules(one);
      const { presetVersion } = content.computedBy;
      const rules = isGeneral || presetVersion === null ? NOTHING_CHOSEN : rulesOf(presetVersion);
      const means =
        content.of === 'home' ? ofHome(content, value, words) : ofDay(content, value, rules, words);
      return means
        .filter(({ systolic, places }) => systolic !== null && places.length >= LEAST_READINGS)
        .map((mean) => observationOfMean(mean, entry, one, { value, decided, isGeneral }, words));
    }),
  );
}

/** Of one reading there is no mean. */
const LEAST_READINGS = 2;

type Value = SeriesContent['value'];

/** The value that is written, how many readings hands decided for it, and whether the general rules made it. */
type Made = { readonly value: Value; readonly decided: number; readonly isGeneral: boolean };

function observationOfMean(
  mean: Mean,
  entry: SeriesEntry,
  { amended, isPreliminary }: ChartedSeries,
  { value, decided, isGeneral }: Made,
  words: Words,
): Observation {
  const { content, person, recordedAt } = entry;
  const named = nameOfSeries(entry, amended);
  const id = meanId(named, mean.period);
  const status = statusOfSeries(entry, amended, isPreliminary);
  const times = mean.places.map((place) => content.readings[place - 1]?.at.at ?? '');
  times.sort((a, b) => Date.parse(a) - Date.parse(b));
  const { presetVersion } = content.computedBy;
  const said = [
    ...mean.notes,
    mean.period === 'whole'
      ? seriesMeanText(content, value, isGeneral, words)
      : seriesRuleText(content, isGeneral, words),
    ...(presetVersion === null || isGeneral
      ? []
      : [words.sentence('exchanged.underProtocol', { version: presetVersion })]),
    ...(decided === 0 ? [] : [words.sentence('exchanged.decidedByHand', { readings: decided })]),
    ...value.why.map((one) => words.detail(one)),
  ];
  return {
    resourceType: 'Observation',
    id,
    meta: { profile: [profileUrl('vitalsigns')] },
    identifier: [{ system: SYSTEMS.uri, value: urn(id) }],
    // What a hand took out or put back since changed the mean that was made when it came in.
    status: status === 'final' && decided > 0 ? 'amended' : status,
    category: [category('vital-signs')],
    code: codeOf(mean.period, content, words),
    subject: reference(person as string),
    effectivePeriod: { start: fhirTime(times[0] as string), end: fhirTime(times.at(-1) as string) },
    issued: fhirTime(recordedAt),
    performer: [reference(person as string)],
    method: { text: words.sentence(`exchanged.${content.of}Series`) },
    component: componentsOf(mean, content),
    derivedFrom: mean.places.map((place) => reference(pressureId(named, place - 1))),
    note: said.map((text) => ({ text })),
  };
}

/** The mean of 24 hours has a code of its own; one at home, awake or asleep has that of any averaging. */
function isDayLong(period: Period, { of }: SeriesContent): boolean {
  return of === 'ambulatory' && period === 'whole';
}

/** The means by day and by night share their codes with those at home: the text tells them apart. */
function codeOf(period: Period, content: SeriesContent, words: Words): CodeableConcept {
  const mean = isDayLong(period, content) ? LOINC.dayLongPressure : LOINC.averagePressure;
  const text = words.sentence(`exchanged.${content.of === 'home' ? 'home' : period}Mean`);
  return { ...concept(mean, LOINC.pressure), text };
}

function componentsOf({ period, systolic, diastolic }: Mean, content: SeriesContent): ObservationComponent[] {
  const [first, second] = isDayLong(period, content)
    ? [LOINC.dayLongSystolic, LOINC.dayLongDiastolic]
    : [LOINC.averageSystolic, LOINC.averageDiastolic];
  return [component([first, LOINC.systolic], systolic), component([second, LOINC.diastolic], diastolic)];
}

function ofHome(content: SeriesContent, value: Value, words: Words): Mean[] {
  const { mean, used, days, dropped } = value;
  const figures = { used, days: days ?? 0, left: dropped.length };
  const notes = [words.sentence('exchanged.homeMeanOf', figures)];
  return [{ period: 'whole', ...mean, places: placesUsed(content, value), notes }];
}

/** @param rules that the value was made by; null where they are not at hand */
function ofDay(content: SeriesContent, value: Value, rules: InForce | null, words: Words): Mean[] {
  const { mean, day, night, counts, dayNightBy, used, dropped } = value;
  const told = dayNightOf(content, rules ?? NOTHING_CHOSEN);
  const judged = judgedReadings(content.readings);
  const all = placesUsed(content, value);
  const placesOf = (period: 'day' | 'night') =>
    all.filter((place) => {
      const one = judged[place - 1];
      return one !== undefined && periodOf(one, told) === period;
    });
  const by = words.sentence(dayNightBy === 'diary' ? 'series.byDiary' : 'series.byClock');
  const ofPeriod = (period: 'day' | 'night', means: typeof day): Mean[] => {
    const places = placesOf(period);
    // Under rules that are not kept here nobody can say which readings these were.
    if (means === null || places.length !== counts?.[period]) return [];
    const notes = [words.sentence(`exchanged.${period}MeanOf`, { used: places.length, by })];
    return [{ period, ...means, places, notes }];
  };
  const figures = { used, left: dropped.length };
  // How a version that is not kept here weights its means, nobody can say.
  const notes = [
    rules === null
      ? words.sentence('exchanged.recordingOf', figures)
      : words.sentence('exchanged.dayLongMeanOf', {
          ...figures,
          weighting: words.title('wholeMean', rules.ambulatoryRules.wholeMean),
        }),
  ];
  return [
    { period: 'whole', ...mean, places: all, notes },
    ...ofPeriod('day', day),
    ...ofPeriod('night', night),
  ];
}

/** The places of the readings that the mean is made of: those with a pressure that nothing left out. */
function placesUsed({ readings }: SeriesContent, { dropped }: Value): number[] {
  const left = new Set(dropped.map(({ index }) => index));
  return readings.flatMap(({ systolic, diastolic }, at) =>
    left.has(at + 1) || (systolic === null && diastolic === null) ? [] : [at + 1],
  );
}
