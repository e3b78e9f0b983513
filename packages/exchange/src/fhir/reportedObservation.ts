import type { AmendedEntry, ReportedValue, StoredEntry } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import type { Observation } from 'fhir/r4.js';
import type { Particulars } from './charted.js';
import { category, concept, LOINC } from './concepts.js';
import { postureExtensions, postureNotes } from './posture.js';
import { component } from './pressureParticulars.js';
import { quantity } from './quantity.js';
import { reference, urn } from './references.js';
import { BODY_POSITION, type ProfileName, profileUrl, SYSTEMS } from './systems.js';
import { fhirTime } from './times.js';

type Reported = StoredEntry & { readonly kind: 'reported' };

/** What of a value from elsewhere is written: each that stands, of one in error what was last said. */
export function reportedOf({ current, story }: AmendedEntry): readonly Reported[] {
  const isReported = (entry: StoredEntry): entry is Reported => entry.kind === 'reported';
  const standing = current.filter(isReported);
  return standing.length > 0 ? standing : story.filter(isReported).slice(-1);
}

/** A value from elsewhere as an Observation: by whoever said it, with what they said of it and nothing more. */
export function reportedObservation(entry: Reported, { standing }: AmendedEntry, words: Words): Observation {
  const { value, by, method, site, posture, interpretation, status, until, note, asSent } = entry.content;
  // Where it came with the words of a bundle, its note has them already.
  const posed = postureNotes(entry.content, words).filter((text) => note?.includes(text) !== true);
  const notes = [asSent ?? '', ...posed, note ?? ''].filter((said) => said.trim() !== '');
  const extension = [
    ...(posture === null ? [] : [{ url: BODY_POSITION, valueCodeableConcept: { text: posture } }]),
    ...postureExtensions(entry.content),
  ];
  const start = fhirTime(entry.measuredAt.at);
  return {
    resourceType: 'Observation',
    id: entry.id,
    ...codedOf(value),
    identifier: [{ system: SYSTEMS.uri, value: urn(entry.id) }],
    status: standing === 'entered-in-error' ? 'entered-in-error' : entry.amends === null ? status : 'amended',
    category: [category('vital-signs')],
    subject: reference(entry.person as string),
    ...(until === null ? { effectiveDateTime: start } : { effectivePeriod: { start, end: fhirTime(until) } }),
    issued: fhirTime(entry.recordedAt),
    ...(by === null ? {} : { performer: [{ display: by }] }),
    ...(method === null ? {} : { method: { text: method } }),
    ...(site === null ? {} : { bodySite: { text: site } }),
    ...(extension.length === 0 ? {} : { extension }),
    ...(interpretation === null ? {} : { interpretation: [{ text: interpretation }] }),
    ...(notes.length === 0 ? {} : { note: notes.map((said) => ({ text: said })) }),
  };
}

function codedOf(
  value: ReportedValue,
): Pick<Particulars, 'code'> & Partial<Pick<Particulars, 'meta' | 'component' | 'valueQuantity'>> {
  const profile = (name: ProfileName) => ({ meta: { profile: [profileUrl(name)] } });
  switch (value.of) {
    case 'pressure':
      return {
        ...profile('bp'),
        code: concept(LOINC.pressure),
        component: [
          component([LOINC.systolic], value.systolic),
          component([LOINC.diastolic], value.diastolic),
        ],
      };
    case 'pulse':
      return {
        ...profile('heartrate'),
        code: concept(LOINC.pulse),
        valueQuantity: quantity(value.perMinute, 'pulse'),
      };
    case 'breaths':
      return {
        ...profile('resprate'),
        code: concept(LOINC.breaths),
        valueQuantity: quantity(value.perMinute, 'breaths'),
      };
    case 'temperature':
      return {
        ...profile('bodytemp'),
        code: concept(LOINC.temperature),
        valueQuantity: quantity(value.celsius, 'temperature'),
      };
    case 'oxygen-saturation':
      return {
        ...profile('oxygensat'),
        code: concept(LOINC.saturation),
        valueQuantity: quantity(value.percent, 'saturation'),
      };
    case 'weight':
      return {
        ...profile('bodyweight'),
        code: concept(LOINC.weight),
        valueQuantity: quantity(value.kg, 'weight'),
      };
    case 'height':
      return {
        ...profile('bodyheight'),
        code: concept(LOINC.height),
        valueQuantity: quantity(value.cm, 'height'),
      };
  }
}
