import { type AmendedEntry, chartSeries, gatherAmendments, type StoredEntry } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import type { Observation } from 'fhir/r4.js';
import { category, concept, LOINC } from './concepts.js';
import { component } from './pressureParticulars.js';
import { quantity } from './quantity.js';
import { reference, urn } from './references.js';
import { OUR_SYSTEMS, profileUrl, SYSTEMS } from './systems.js';
import { fhirTime } from './times.js';

type Series = Extract<StoredEntry, { readonly kind: 'series' }>;

/**
 * Every reading of every series that stands, as Observations: a pressure in its profile with who took it, and the pulse
 * beside it as a heart rate of the same instant. What the means left out is among them; a measurement that failed
 * has no values and a reason. Source: interoperability handbook 3, 4, 8.
 */
export function seriesObservations(entries: readonly StoredEntry[], words: Words): Observation[] {
  // A learner's is preliminary until a supervisor agrees.
  const preliminary = new Set(
    chartSeries(entries, () => null).flatMap((one) => (one.isPreliminary ? [one.id] : [])),
  );
  return gatherAmendments(
    entries.filter(({ kind }) => kind === 'series' || kind === 'entered-in-error'),
  ).flatMap((of) =>
    seriesIn(of).flatMap((entry) => readingsOf(entry, of, preliminary.has(of.original.id), words)),
  );
}

/** The ids of the Observations that a series is written as, from its own id and how many readings it has. */
export function seriesObservationIds(id: string, readings: number): string[] {
  return Array.from({ length: readings }, (_, at) => [pressureId(id, at), pulseId(id, at)]).flat();
}

function seriesIn({ current, story }: AmendedEntry): readonly Series[] {
  const isSeries = (entry: StoredEntry): entry is Series => entry.kind === 'series';
  const standing = current.filter(isSeries);
  return standing.length > 0 ? standing : story.filter(isSeries).slice(-1);
}

function readingsOf(
  entry: Series,
  { standing, current, original }: AmendedEntry,
  isPreliminary: boolean,
  words: Words,
): Observation[] {
  const { content, person } = entry;
  const status =
    standing === 'entered-in-error'
      ? 'entered-in-error'
      : isPreliminary
        ? 'preliminary'
        : entry.amends === null
          ? 'final'
          : 'amended';
  // What is added goes to the end: a reading keeps its id as long as one entry stands. Two that contest each have their own.
  const named = current.length > 1 ? entry.id : original.id;
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
    });
    const { systolic, diastolic, pulse, site, note } = reading;
    const pressure: Observation = {
      ...shared(pressureId(named, at)),
      meta: { profile: [profileUrl('bp')] },
      code: concept(LOINC.pressure),
      component: [component([LOINC.systolic], systolic), component([LOINC.diastolic], diastolic)],
      ...(site === 'wrist' ? { bodySite: { text: words.sentence('pressure.wristSite') } } : {}),
      ...(note === null ? {} : { note: [{ text: note }] }),
    };
    if (pulse === null) return [pressure];
    const beats: Observation = {
      ...shared(pulseId(named, at)),
      meta: { profile: [profileUrl('heartrate')] },
      code: concept(LOINC.pulse),
      valueQuantity: quantity(pulse, 'pulse'),
    };
    return [pressure, beats];
  });
}

const pressureId = (id: string, at: number): string => beside(id, 2 * at);
const pulseId = (id: string, at: number): string => beside(id, 2 * at + 1);

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
