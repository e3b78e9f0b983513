import type { ChartRound, signingOf } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import type { Observation } from 'fhir/r4.js';
import { absent, concept, LOINC } from './concepts.js';
import { besideId } from './references.js';
import { profileUrl } from './systems.js';
import { fhirTime } from './times.js';

type Signing = NonNullable<ReturnType<typeof signingOf>>;
type NotDone = Extract<Signing['content']['signs'][number], { readonly notDone: unknown }>;

/** Signs that have a profile, with it and their code; the others stand in a note of the panel. */
const CODED = {
  pulse: ['heartrate', [LOINC.pulse]],
  breaths: ['resprate', [LOINC.breaths]],
  pressure: ['bp', [LOINC.pressure]],
  temperature: ['bodytemp', [LOINC.temperature]],
  'oxygen-saturation': ['oxygensat', [LOINC.saturation, LOINC.saturationByOximetry]],
  weight: ['bodyweight', [LOINC.weight]],
  height: ['bodyheight', [LOINC.height]],
} as const;

/**
 * A sign of a round that was not taken, as a measurement without a value that says why: declined, or not performed with
 * the reason in a note. Source: interoperability handbook 7.
 *
 * @param common what every Observation of the round says of it, made for an id
 */
export function notDoneObservations(
  round: ChartRound,
  signing: Signing,
  words: Words,
  common: (id: string) => Omit<Observation, 'resourceType' | 'code'>,
): Observation[] {
  if (round.isInError) return [];
  return signing.content.signs.flatMap((one, at) => {
    if (!('notDone' in one) || !(one.sign in CODED)) return [];
    const [profile, codes] = CODED[one.sign as keyof typeof CODED];
    const id = notDoneId(signing.id, at);
    const dataAbsentReason = absent(one.notDone.reason === 'declined' ? 'asked-declined' : 'not-performed');
    return {
      resourceType: 'Observation' as const,
      id,
      meta: { profile: [profileUrl(profile)] },
      ...common(id),
      code: concept(...codes),
      effectiveDateTime: fhirTime(signing.measuredAt.at),
      ...(one.sign === 'pressure'
        ? {
            component: [
              { code: concept(LOINC.systolic), dataAbsentReason },
              { code: concept(LOINC.diastolic), dataAbsentReason },
            ],
          }
        : { dataAbsentReason }),
      note: [{ text: reasonOf(one, words) }],
    };
  });
}

function reasonOf({ notDone: { reason, text } }: NotDone, words: Words): string {
  const said = words.sentence(`review.${reason}`);
  if (text === null) return said;
  return reason === 'other' ? text : `${said}; ${text}`;
}

/**
 * The id of what a round says of a sign that was not done: that beside the signing, the digits after its version told
 * apart by the sign's place among the signs of the round.
 */
export function notDoneId(id: string, at: number): string {
  const beside = besideId(id);
  const digits = Number.parseInt(beside.slice(PLACE_AT, PLACE_END), 16) ^ (at + 1);
  return `${beside.slice(0, PLACE_AT)}${digits.toString(16).padStart(3, '0')}${beside.slice(PLACE_END)}`;
}

/** The three hexadecimal digits after the version in a UUID's text. */
const PLACE_AT = 15;
const PLACE_END = 18;
