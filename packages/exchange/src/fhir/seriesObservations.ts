import { PERIODS } from '@evenfall/clinical';
import {
  type AmendedEntry,
  type ChartedSeries,
  chartSeries,
  gatherAmendments,
  type SeriesReadingKept,
  type StoredEntry,
  saidAt,
  timeSaid,
} from '@evenfall/record';
import type { Words } from '@evenfall/words';
import type { Observation } from 'fhir/r4.js';
import { takenOutText } from '../text/takenOutText.js';
import { category, concept, LOINC } from './concepts.js';
import { component } from './pressureParticulars.js';
import { quantity } from './quantity.js';
import { reference, urn } from './references.js';
import { OUR_SYSTEMS, profileUrl, SYSTEMS } from './systems.js';
import { fhirTime } from './times.js';

export type Period = (typeof PERIODS)[number];

export type SeriesEntry = Extract<StoredEntry, { readonly kind: 'series' }>;

/**
 * Every reading of every series that stands, as Observations: a pressure in its profile with who took it, and the pulse
 * beside it as a heart rate of the same instant. What the means left out is among them; a measurement that failed
 * has no values and a reason. Source: interoperability handbook 3, 4, 8.
 */
export function seriesObservations(entries: readonly StoredEntry[], words: Words): Observation[] {
  const charted = new Map(chartSeries(entries, () => null).map((one) => [one.id, one]));
  return gatherAmendments(
    entries.filter(({ kind }) => kind === 'series' || kind === 'entered-in-error'),
  ).flatMap((of) =>
    seriesIn(of).flatMap((entry) => readingsOf(entry, of, charted.get(of.original.id), words)),
  );
}

/** The ids of the Observations that a series is written as, from its own id and how many readings it has. */
export function seriesObservationIds(id: string, readings: number): string[] {
  const ofReadings = Array.from({ length: readings }, (_, at) => [
    pressureId(id, at),
    pulseId(id, at),
  ]).flat();
  return [...ofReadings, ...PERIODS.map((period) => meanId(id, period))];
}

/** What a series is named by in what is written of it: its first entry, so that a reading keeps its id as the series grows. Two that contest each have their own. */
export function nameOfSeries(entry: SeriesEntry, { current, original }: AmendedEntry): string {
  return current.length > 1 ? entry.id : original.id;
}

/** How far a series is settled. A learner's is preliminary until a supervisor agrees. */
export function statusOfSeries(
  entry: SeriesEntry,
  { standing }: AmendedEntry,
  isPreliminary: boolean,
): Observation['status'] {
  if (standing === 'entered-in-error') return 'entered-in-error';
  if (isPreliminary) return 'preliminary';
  return entry.amends === null ? 'final' : 'amended';
}

/** The entries of a series that are written: those that stand, else what was said last. */
export function seriesIn({ current, story }: AmendedEntry): readonly SeriesEntry[] {
  const isSeries = (entry: StoredEntry): entry is SeriesEntry => entry.kind === 'series';
  const standing = current.filter(isSeries);
  return standing.length > 0 ? standing : story.filter(isSeries).slice(-1);
}

function readingsOf(
  entry: SeriesEntry,
  of: AmendedEntry,
  charted: ChartedSeries | undefined,
  words: Words,
): Observation[] {
  const { content, person } = entry;
  const status = statusOfSeries(entry, of, charted?.isPreliminary === true);
  const named = nameOfSeries(entry, of);
  return content.readings.flatMap((reading, at): Observation[] => {
    const shared = (id: string): Omit<Observation, 'code'> => ({
      resourceType: 'Observation',
      id,
      identifier: [
        { system: SYSTEMS.uri, value: urn(id) },
        { system: OUR_SYSTEMS.series, value: `${content.of}/${named}/${at + 1}` },
      ],
      status,
      category: [category('vital-signs')],
      subject: reference(person as string),
      effectiveDateTime: fhirTime(reading.at.at),
      issued: fhirTime(entry.recordedAt),
      performer: [reference(person as string)],
      method: { text: words.sentence(`exchanged.${content.of}Series`) },
      ...(reading.device === null ? {} : { device: { display: reading.device } }),
    });
    // What hands decided is about what stands of a series.
    const isStanding = charted?.content === content;
    const decided = isStanding ? charted.decided.find(({ index }) => index === at + 1) : undefined;
    const out = takenOutText(decided, words);
    const { systolic, diastolic, pulse, note, startedByHand } = reading;
    const time = timeTexts(reading, words);
    const site = siteText(reading, words);
    const pressure: Observation = {
      ...shared(pressureId(named, at)),
      meta: { profile: [profileUrl('bp')] },
      code: concept(LOINC.pressure),
      component: [component([LOINC.systolic], systolic), component([LOINC.diastolic], diastolic)],
      ...(site === null ? {} : { bodySite: { text: site } }),
      ...notesOf([
        ...out,
        ...time,
        ...(startedByHand === true ? [words.sentence('exchanged.startedByHand')] : []),
        ...(note === null ? [] : [note]),
      ]),
    };
    if (pulse === null) return [pressure];
    const beats: Observation = {
      ...shared(pulseId(named, at)),
      meta: { profile: [profileUrl('heartrate')] },
      code: concept(LOINC.pulse),
      valueQuantity: quantity(pulse, 'pulse'),
      ...notesOf([...out, ...time]),
    };
    return [pressure, beats];
  });
}

/** What nobody wrote down of a reading's time: a sitting is typed with one, and its later readings are kept a minute apart. */
function timeTexts(reading: SeriesReadingKept, words: Words): string[] {
  const { isAbout, place } = timeSaid(reading);
  return [
    ...(isAbout ? [words.sentence('exchanged.timeNotWritten')] : []),
    ...(place === 1
      ? []
      : [words.sentence('exchanged.minuteNotWritten', { place, at: saidAt(reading).slice(11, 16) })]),
  ];
}

function notesOf(texts: readonly string[]): Pick<Observation, 'note'> {
  return texts.length === 0 ? {} : { note: texts.map((text) => ({ text })) };
}

/** Where the cuff was, as far as it was said: the upper arm goes without saying, but for which one. */
function siteText({ site, arm }: SeriesReadingKept, words: Words): string | null {
  if (arm === null) return site === 'wrist' ? words.sentence('pressure.wristSite') : null;
  return words.title('limb', `${arm} ${site === 'wrist' ? 'wrist' : 'upper-arm'}`);
}

export const pressureId = (id: string, at: number): string => beside(id, 2 * at);
const pulseId = (id: string, at: number): string => beside(id, 2 * at + 1);

/** The id of a mean of a series: beyond those of any reading that may still be added. */
export const meanId = (id: string, period: Period): string =>
  beside(id, MEANS_FROM + PERIODS.indexOf(period));
const MEANS_FROM = 1_000_000;

/** A UUID beside another: version 8, the next variant digit of four, and so much further on in its last 48 bits. */
function beside(id: string, by: number): string {
  const last = (Number.parseInt(id.slice(LAST_AT), 16) + by) % 2 ** 48;
  const variant = VARIANTS[(VARIANTS.indexOf(id[VARIANT_AT] ?? '') + 1) % VARIANTS.length];
  const first = `${id.slice(0, VERSION_AT)}8${id.slice(VERSION_AT + 1, VARIANT_AT)}${variant}`;
  return `${first}${id.slice(VARIANT_AT + 1, LAST_AT)}${last.toString(16).padStart(12, '0')}`;
}

/** Places in a UUID's text, and what may stand at that of its variant. Source: RFC 9562, section 4. */
const VERSION_AT = 14;
const VARIANT_AT = 19;
const LAST_AT = 24;
const VARIANTS = '89ab';
