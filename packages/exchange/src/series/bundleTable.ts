import { type Refusal, refusal } from '@evenfall/clinical';
import { asObject, codesIn, type Json, listIn, objectIn, textIn } from '../fhir/read/json.js';
import { DIASTOLIC_CODES, MEAN_CODES, SIGN_BY_LOINC, SYSTOLIC_CODES } from '../fhir/read/knownCodes.js';
import { readBundle } from '../fhir/read/readBundle.js';
import { OUR_SYSTEMS, SYSTEMS } from '../fhir/systems.js';
import type { Reported } from '../reading/reported.js';
import type { SeriesChoices } from './seriesRead.js';
import { withoutByHand } from './seriesWords.js';

/**
 * The pressures of a FHIR bundle as a table that `readSeries` takes: a heading, then one line for each Observation in
 * the order of the bundle. An Observation that cannot be used has its place in the bundle for a time, so that its line
 * is refused and its numbers are seen all the same; `problems` says by line what is wrong with it.
 */
export type BundleTable = {
  readonly text: string;
  readonly problems: ReadonlyMap<number, readonly Refusal[]>;
};

/**
 * Reads a text as a FHIR R4 bundle of one person's pressures; null where it is no bundle. A heart rate of the same
 * instant is the pulse of a pressure; any other Observation is a line that is refused. Of a bundle of an Evenfall with
 * series in it, those of the kind that is asked for are taken, and neither the others nor the pressures of its rounds:
 * readings at home are never in one mean with those of a recorder or of the clinic.
 *
 * Errors: none. Source: interoperability handbook 3, 4.
 */
export function bundleTable(text: string, kind: SeriesChoices['kind']): BundleTable | null {
  const bundle = bundleIn(text);
  if (bundle === null) return null;
  const entries = listIn(bundle, 'entry');
  const resources = entries.map((entry) => asObject(asObject(entry).resource));
  const isSeries = resources.some((one) => seriesOf(one).length > 0);
  const isTaken = (resource: Json) =>
    resource.resourceType === 'Patient' ||
    (resource.resourceType === 'Observation' && (!isSeries || seriesOf(resource).includes(kind)));
  // What is not taken keeps its place: what is refused is named by it.
  const entry = entries.map((one, at) =>
    isTaken(resources[at] as Json) ? one : { resource: { resourceType: 'Basic' } },
  );
  const read = readBundle({ ...bundle, entry });
  if (!read.ok) return null;
  const { reported, refused } = read.value;
  const used = new Map(reported.map((one) => [placeOf(one.at), one] as const));
  const pulses = new Map(
    reported.flatMap(({ content: { value }, measuredAt, isInError }) =>
      value.of === 'pulse' && !isInError ? [[Date.parse(measuredAt.at), value.perMinute] as const] : [],
    ),
  );
  const beats = new Set(
    reported.flatMap(({ content: { value }, measuredAt, isInError }) =>
      value.of === 'pressure' && !isInError ? [Date.parse(measuredAt.at)] : [],
    ),
  );
  const lines = ['time,systolic,diastolic,pulse,site,arm,device,note,started'];
  const problems = new Map<number, readonly Refusal[]>();
  resources.forEach((resource, place) => {
    if (resource.resourceType !== 'Observation' || !isTaken(resource)) return;
    const one = used.get(place);
    if (one !== undefined && isPulseOf(one, beats)) return;
    if (one !== undefined && !one.isInError && one.content.value.of === 'pressure' && !isMean(resource)) {
      const { value, site, note } = one.content;
      const pulse = pulses.get(Date.parse(one.measuredAt.at)) ?? '';
      const device = textIn(objectIn(resource, 'device') ?? {}, 'display');
      // What this program wrote beside the note of its own reading is no part of that note.
      const isOwn = kind === 'ambulatory' && seriesOf(resource).length > 0;
      const own = isOwn && note !== null ? withoutByHand(note) : null;
      const words = [site, armOf(resource, site), device, own ?? note, own === null ? '' : 'manual'].map(
        cell,
      );
      lines.push([one.measuredAt.at, value.systolic, value.diastolic ?? '', pulse, ...words].join());
      return;
    }
    // A recorder that failed says when and why: a row without numbers, counted among those that it tried.
    const failed = kind === 'ambulatory' ? failedAt(resource) : null;
    if (failed !== null) {
      lines.push([failed, '', '', ...BLANK].join());
      return;
    }
    const at = `/entry/${place}/resource`;
    const own = refused.filter(({ field }) => field === at || field.startsWith(`${at}/`));
    lines.push([at, numberIn(resource, SYSTOLIC_CODES), numberIn(resource, DIASTOLIC_CODES), ...BLANK].join()); // biome-ignore format: one row
    problems.set(
      lines.length,
      own.length > 0
        ? own
        : [refusal(at, 'contradicts', isMean(resource) ? 'one-reading' : 'pressure-that-stands', null)],
    );
  });
  return { text: `${lines.join('\n')}\n`, problems };
}

function bundleIn(text: string): Json | null {
  if (!/^[\ufeff\s]*\{/.test(text)) return null;
  try {
    const read = asObject(JSON.parse(text.replace(/^\ufeff/, '')));
    return read.resourceType === 'Bundle' ? read : null;
  } catch {
    return null;
  }
}

/** When a pressure was tried and not measured: it stands, has no value anywhere and says why; null for any other resource. */
function failedAt(resource: Json): string | null {
  const of = codesIn(resource.code, SYSTEMS.loinc).map((code) => SIGN_BY_LOINC[code]);
  const at = textIn(resource, 'effectiveDateTime');
  const isStanding = !['entered-in-error', 'cancelled'].includes(textIn(resource, 'status') ?? '');
  const parts = listIn(resource, 'component').map(asObject);
  const isAbsent = (part: Json) =>
    part.dataAbsentReason !== undefined && !Object.keys(part).some((key) => key.startsWith('value'));
  const isNone = parts.length === 0 ? isAbsent(resource) : parts.every(isAbsent);
  const isPlain = resource.modifierExtension === undefined;
  return of.includes('pressure') && isStanding && isNone && isPlain && at !== null && INSTANT.test(at)
    ? at
    : null;
}

/** An instant of FHIR R4: a day alone has no place in a recording. */
const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2})$/;

/** Of which kind of series a resource is a reading; none of what no Evenfall wrote as one. */
function seriesOf(resource: Json): string[] {
  return listIn(resource, 'identifier')
    .map(asObject)
    .filter(({ system }) => system === OUR_SYSTEMS.series)
    .flatMap((one) => textIn(one, 'value')?.split('/')[0] ?? []);
}

function isPulseOf({ content, measuredAt, isInError }: Reported, beats: ReadonlySet<number>): boolean {
  return content.value.of === 'pulse' && !isInError && beats.has(Date.parse(measuredAt.at));
}

/** A mean of others is no reading: in the mean of a series it would stand for them twice. */
function isMean(resource: Json): boolean {
  return codesIn(resource.code, SYSTEMS.loinc).some((code) => MEAN_CODES.includes(code));
}

/** Blank cells for all that stands after the two numbers of a pressure. */
const BLANK = ['', '', '', '', '', ''];

/** What a resource says of the arm where the words of its site do not: the code of one, which is not read on as a word. */
function armOf({ bodySite }: Json, site: string | null): string | null {
  if (codesIn(bodySite, SYSTEMS.snomed).includes(RIGHT_UPPER_ARM)) return 'right';
  return site !== null && !/\p{L}/u.test(site) ? site : null;
}

/** SNOMED CT, as the example of a blood pressure in FHIR R4 has it; interoperability handbook 5. */
const RIGHT_UPPER_ARM = '368209003';

const placeOf = (at: string): number => Number(/^\/entry\/(\d+)\//.exec(at)?.[1]);

function cell(text: string | null): string {
  return text === null ? '' : `"${text.replaceAll('"', '""').replace(/\s+/g, ' ')}"`;
}

/** The number of a component as it stands, mmHg; blank where there is none. */
function numberIn(resource: Json, codes: readonly string[]): number | '' {
  const part = listIn(resource, 'component')
    .map(asObject)
    .find(({ code }) => codesIn(code, SYSTEMS.loinc).some((one) => codes.includes(one)));
  const { value, code } = objectIn(part ?? {}, 'valueQuantity') ?? {};
  return typeof value === 'number' && code === 'mm[Hg]' ? value : '';
}
