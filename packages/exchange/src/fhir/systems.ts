/** The systems that codes and identifiers of a bundle come from. Source: interoperability handbook 1, 4 to 8. */
export const SYSTEMS = {
  loinc: 'http://loinc.org',
  ucum: 'http://unitsofmeasure.org',
  snomed: 'http://snomed.info/sct',
  category: 'http://terminology.hl7.org/CodeSystem/observation-category',
  absent: 'http://terminology.hl7.org/CodeSystem/data-absent-reason',
  interpretation: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation',
  actReason: 'http://terminology.hl7.org/CodeSystem/v3-ActReason',
  /** An identifier that is a URI: the id of ours, as `urn:uuid:`. */
  uri: 'urn:ietf:rfc:3986',
} as const;

/** Names of ours: `.invalid` is nobody's domain and never will be (RFC 2606), so no reader fetches them. */
const OURS = 'https://evenfall.invalid/fhir';

export const OUR_SYSTEMS = {
  /** A sign that has no code in the open lists: pain, a level of consciousness. */
  sign: `${OURS}/sign`,
  /** The number a place knows a person by. */
  number: `${OURS}/person-number`,
  /** A protocol version, by the hash of its content. */
  protocol: `${OURS}/protocol`,
  /** CLASS, SIMULATED, INVENTED. */
  notice: `${OURS}/notice`,
  /** A reading of a series from home or over 24 hours: which of the two, the entry of the series and the place of the reading in it. */
  series: `${OURS}/series-reading`,
} as const;

/** What the record keeps and the standard has no element for, each as JSON text in ASCII. */
export const OUR_EXTENSIONS = {
  /** An entry as it was sent, with when it was recorded. */
  entry: `${OURS}/entry`,
  /** Who a person is, as the record has it. */
  identity: `${OURS}/identity`,
  /** A protocol version's content. */
  protocol: `${OURS}/protocol-content`,
} as const;

/** What the standard has no element for and a file says of a pressure beside words: how it was on the feet, how long somebody had lain. */
export const POSTURE_EXTENSIONS = {
  /** Whether they felt dizzy, faint or unwell on their feet; boolean. */
  unwellUpright: `${OURS}/unwell-upright`,
  /** How long they had stood, or lain; minutes, decimal. */
  uprightMinutes: `${OURS}/minutes-upright`,
  lyingMinutes: `${OURS}/minutes-lying`,
} as const;

const PROFILE = 'http://hl7.org/fhir/StructureDefinition';
export const BODY_POSITION = `${PROFILE}/observation-bodyPosition`;

export type ProfileName =
  | 'vitalsigns'
  | 'vitalspanel'
  | 'bp'
  | 'heartrate'
  | 'resprate'
  | 'oxygensat'
  | 'bodytemp'
  | 'bodyweight'
  | 'bodyheight'
  | 'bmi'
  | 'headcircum';

export function profileUrl(name: ProfileName): string {
  return `${PROFILE}/${name}`;
}
