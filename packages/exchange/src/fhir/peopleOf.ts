import type { Agent, ClassIdentity, Identity } from '@evenfall/record';
import type { Patient, Practitioner } from 'fhir/r4.js';
import { urn } from './references.js';
import { OUR_EXTENSIONS, OUR_SYSTEMS, SYSTEMS } from './systems.js';
import { asciiJson, fhirString } from './texts.js';

/**
 * The person as a Patient: by the id of the record alone, or with who they are. In the class book that is a pseudonym.
 */
export function patientOf(
  person: string,
  identity: Identity | null,
  classIdentity: ClassIdentity | null,
): Patient {
  const name = fhirString(identity?.name ?? classIdentity?.pseudonym ?? '');
  const number = fhirString(identity?.number ?? '');
  return {
    resourceType: 'Patient',
    id: person,
    ...(identity === null
      ? {}
      : { extension: [{ url: OUR_EXTENSIONS.identity, valueString: asciiJson(identity) }] }),
    identifier: [
      { system: SYSTEMS.uri, value: urn(person) },
      ...(number === null ? [] : [{ system: OUR_SYSTEMS.number, value: number }]),
    ],
    ...(name === null ? {} : { name: [{ text: name }] }),
    ...(identity?.birthDate == null ? {} : { birthDate: identity.birthDate }),
  };
}

/** Who acts here, as a Practitioner. */
export function practitionerOf({ id, name }: Agent): Practitioner {
  const text = fhirString(name);
  return {
    resourceType: 'Practitioner',
    id,
    identifier: [{ system: SYSTEMS.uri, value: urn(id) }],
    ...(text === null ? {} : { name: [{ text }] }),
  };
}
