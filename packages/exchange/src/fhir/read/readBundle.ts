import { type Parsed, type Refusal, refusal } from '@evenfall/clinical';
import type { Agent, Identity } from '@evenfall/record';
import type { Reported } from '../../reading/reported.js';
import { notDoneId } from '../notDoneObservations.js';
import { besideId } from '../references.js';
import { seriesObservationIds } from '../seriesObservations.js';
import { OUR_SYSTEMS, SYSTEMS } from '../systems.js';
import { asObject, codesIn, isObject, type Json, listIn, objectIn, textIn } from './json.js';
import { PANEL_CODE } from './knownCodes.js';
import { readObservation } from './readObservation.js';
import { isOwn, type OwnEntry, ownAgent, ownEntry, ownIdentity, ownProtocol } from './readOwn.js';

/** What a bundle holds for this record. */
export type ReadBundle = {
  /** Entries of another Evenfall, or of this one, in the order of the bundle. */
  readonly own: readonly OwnEntry[];
  readonly agents: readonly Agent[];
  readonly protocols: readonly { readonly at: string; readonly content: unknown }[];
  /** Who the person of the own entries is, where the bundle says it. */
  readonly identity: Identity | null;
  /** Values of other systems. */
  readonly reported: readonly Reported[];
  /** It holds earlier versions of what it says, too (FHIR R4, Bundle.type). */
  readonly isHistory: boolean;
  /** The birth date that the bundle gives for whom its values are of; null where it gives none. */
  readonly birthDate: string | null;
  /** What stands on it: CLASS, SIMULATED, INVENTED. */
  readonly notices: readonly string[];
  /** Marked as test data, whether by us or by others. */
  readonly isTestData: boolean;
  readonly refused: readonly Refusal[];
  /** Resources that hold no value, by type: nothing of them is kept. */
  readonly passedOver: Readonly<Record<string, number>>;
};

type Placed = { readonly resource: Json; readonly at: string; readonly fullUrl: string | null };

/**
 * Reads a FHIR R4 bundle of any kind and of any system. Entries that an Evenfall put in are taken as they were;
 * Observations of others become values from elsewhere. What cannot be read is refused by its JSON Pointer, and the rest
 * is read all the same.
 *
 * Errors: what is no bundle at all.
 */
export function readBundle(input: unknown): Parsed<ReadBundle> {
  const bundle = asObject(input);
  if (bundle.resourceType !== 'Bundle') {
    return { ok: false, refusals: [refusal('/resourceType', 'missing', 'fhir-bundle', bundle.resourceType)] };
  }
  const refused: Refusal[] = [];
  const placed = placedIn(bundle, refused);
  const own = ownIn(placed, refused);
  const covered = coveredBy(own);
  const others = placed.filter(
    ({ resource }) => resource.resourceType === 'Observation' && !isCovered(resource, covered),
  );
  const patients = of(placed, 'Patient');
  const valued = others.filter(({ resource }) => !isPanel(resource) && !isAbsent(resource));
  const { subject, read: ofOne } = ofOneSubject(valued, patients, refused);
  const reported: Reported[] = [];
  for (const { resource, at } of ofOne) {
    const read = readObservation(resource, at, (reference) => nameIn(placed, reference));
    if (read.ok) reported.push(read.value);
    else refused.push(...read.refusals);
  }
  return {
    ok: true,
    value: {
      own,
      agents: of(placed, 'Practitioner').flatMap(({ resource }) => ownAgent(resource) ?? []),
      protocols: of(placed, 'Basic').flatMap(({ resource, at }) => {
        const content = ownProtocol(resource);
        return content === undefined ? [] : [{ at, content }];
      }),
      identity: patients.map(({ resource }) => ownIdentity(resource)).find((one) => one !== null) ?? null,
      reported,
      isHistory: bundle.type === 'history',
      birthDate: textIn(subject ?? patients[0]?.resource ?? {}, 'birthDate'),
      notices: noticesIn(bundle),
      isTestData: [bundle, ...placed.map(({ resource }) => resource)].some(isTestData),
      refused,
      passedOver: passedOver(placed, covered),
    },
  };
}

const of = (placed: readonly Placed[], type: string) =>
  placed.filter(({ resource }) => resource.resourceType === type);

function placedIn(bundle: Json, refused: Refusal[]): Placed[] {
  return listIn(bundle, 'entry').flatMap((entry, index) => {
    const resource = asObject(entry).resource;
    const at = `/entry/${index}/resource`;
    if (isObject(resource) && typeof resource.resourceType === 'string')
      return [{ resource, at, fullUrl: textIn(asObject(entry), 'fullUrl') }];
    refused.push(refusal(at, 'missing', 'fhir-resource', null));
    return [];
  });
}

function ownIn(placed: readonly Placed[], refused: Refusal[]): OwnEntry[] {
  return of(placed, 'Provenance').flatMap(({ resource, at }) => {
    const read = ownEntry(resource, at);
    if (read === null) return [];
    if ('frame' in read) return [read];
    refused.push(read);
    return [];
  });
}

/** The ids of Observations that were made from own entries: they say again what the entries say. */
function coveredBy(own: readonly OwnEntry[]): ReadonlySet<string> {
  const amended = new Map(
    own.map(({ frame }) => [textIn(frame, 'id'), textIn(objectIn(frame, 'amends') ?? {}, 'entry')]),
  );
  // A series is written under the id of the entry that first said it, or its own where it is contested.
  const firstOf = (id: string, steps = 0): string => {
    const before = amended.get(id) ?? null;
    return before === null || steps > amended.size ? id : firstOf(before, steps + 1);
  };
  return new Set(
    own.flatMap(({ frame }) => {
      const round = textIn(frame, 'round');
      const id = textIn(frame, 'id');
      const content = objectIn(frame, 'content') ?? {};
      const beside = id === null ? [] : [id, ...listIn(content, 'signs').map((_, at) => notDoneId(id, at))];
      const isSeries = textIn(frame, 'kind') === 'series';
      const readings =
        id === null || !isSeries
          ? []
          : [id, firstOf(id)].flatMap((one) => seriesObservationIds(one, listIn(content, 'readings').length));
      return [...beside, ...readings, ...(round === null ? [] : [besideId(round)])];
    }),
  );
}

function isCovered(resource: Json, covered: ReadonlySet<string>): boolean {
  const names = listIn(resource, 'identifier')
    .map(asObject)
    .map((one) => textIn(one, 'value')?.replace(/^urn:uuid:/, ''));
  return [textIn(resource, 'id'), ...names].some((name) => name != null && covered.has(name));
}

function isPanel(resource: Json): boolean {
  return codesIn(resource.code, SYSTEMS.loinc).includes(PANEL_CODE);
}

/** Those values of a bundle that are of somebody, with who that is where the bundle has them. */
type OfOne = { readonly subject: Json | null; readonly read: readonly Placed[] };

/**
 * Values of several people in one file are nobody's chart: all of them are refused. One that says nobody is refused
 * alone, since it may be anybody's.
 */
function ofOneSubject(valued: readonly Placed[], patients: readonly Placed[], refused: Refusal[]): OfOne {
  const all = valued.map((one) => ({ one, who: subjectOf(one.resource, patients) }));
  for (const { one, who } of all)
    if (who === null) refused.push(refusal(`${one.at}/subject`, 'missing', 'one-subject', null));
  const named = all.flatMap(({ one, who }) => (who === null ? [] : [{ one, who }]));
  if (new Set(named.map(({ who }) => who.name)).size <= 1)
    return { subject: named[0]?.who.patient ?? null, read: named.map(({ one }) => one) };
  for (const { one, who } of named)
    refused.push(refusal(`${one.at}/subject`, 'contradicts', 'one-subject', who.said));
  return { subject: null, read: [] };
}

type Subject = { readonly name: string; readonly said: string; readonly patient: Json | null };

/**
 * Who a value is of, by one name whichever way it is said: a Patient of the bundle by address or by type and id, one
 * that the value contains, somebody by an address, an identifier or in words. Null for nobody.
 */
function subjectOf(resource: Json, patients: readonly Placed[]): Subject | null {
  const subject = objectIn(resource, 'subject') ?? {};
  const reference = textIn(subject, 'reference');
  const within = listIn(resource, 'contained').map(asObject);
  const contained = within.find(({ id }) => reference !== null && reference === `#${String(id)}`);
  if (contained !== undefined)
    return { name: JSON.stringify(contained), said: reference ?? '', patient: contained };
  const at = patients.findIndex(({ resource: patient, fullUrl }) => {
    const local = `Patient/${String(patient.id)}`;
    return reference !== null && (reference === fullUrl || reference === local);
  });
  if (at >= 0) return { name: `entry ${at}`, said: reference ?? '', patient: patients[at]?.resource ?? null };
  const said = reference ?? identifierText(subject) ?? textIn(subject, 'display');
  return said === null ? null : { name: said, said, patient: null };
}

function identifierText(subject: Json): string | null {
  const identifier = objectIn(subject, 'identifier') ?? {};
  const value = textIn(identifier, 'value');
  return value === null ? null : `${textIn(identifier, 'system') ?? ''}|${value}`;
}

/** What a bundle calls whoever a reference leads to, by full address or by type and id. */
function nameIn(placed: readonly Placed[], reference: string): string | null {
  const found = placed.find(
    ({ resource, fullUrl }) =>
      fullUrl === reference || `${String(resource.resourceType)}/${String(resource.id)}` === reference,
  );
  if (found === undefined) return null;
  const { resource } = found;
  const name = asObject(Array.isArray(resource.name) ? resource.name[0] : undefined);
  const parts = [...listIn(name, 'given'), name.family].filter((part) => typeof part === 'string');
  return textIn(resource, 'name') ?? textIn(name, 'text') ?? (parts.length === 0 ? null : parts.join(' '));
}

function noticesIn(bundle: Json): string[] {
  const tags = listIn(objectIn(bundle, 'meta') ?? {}, 'tag').map(asObject);
  return tags
    .filter(({ system }) => system === OUR_SYSTEMS.notice)
    .flatMap((tag) => textIn(tag, 'code') ?? []);
}

function isTestData(resource: Json): boolean {
  const labels = listIn(objectIn(resource, 'meta') ?? {}, 'security').map(asObject);
  return labels.some(({ code }) => code === 'HTEST');
}

/** Whether a measurement says that there is no value, itself or in every component, and why. */
function isAbsent(resource: Json): boolean {
  const components = listIn(resource, 'component').map(asObject);
  const parts = components.length === 0 ? [resource] : components;
  return parts.every(
    (part) =>
      part.dataAbsentReason !== undefined && !Object.keys(part).some((key) => key.startsWith('value')),
  );
}

function passedOver(placed: readonly Placed[], covered: ReadonlySet<string>): Record<string, number> {
  const counted: Record<string, number> = {};
  for (const { resource } of placed) {
    const type = String(resource.resourceType);
    if (
      type === 'Observation' &&
      (isCovered(resource, covered) || !(isPanel(resource) || isAbsent(resource)))
    )
      continue;
    if (type === 'Provenance' && isOwn(resource)) continue;
    if (type === 'Basic' && isOwn(resource)) continue;
    if (type === 'Device' && isCovered(resource, covered)) continue;
    if (type === 'Patient' || type === 'Practitioner') continue;
    counted[type] = (counted[type] ?? 0) + 1;
  }
  return counted;
}
