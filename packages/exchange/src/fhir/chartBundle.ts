import { type Agent, gatherAmendments, type RulesOf, readEntry, type StoredEntry } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import type { Basic, Bundle, Coding, FhirResource, Observation } from 'fhir/r4.js';
import type { Exported } from '../csv/chartCsv.js';
import { noticesOf } from '../notices.js';
import { devicesOf, gaugeOf } from './devices.js';
import { observationOf, shownOf } from './observationOf.js';
import { patientOf, practitionerOf } from './peopleOf.js';
import { type AsKept, provenanceOf, targetsOf } from './provenanceOf.js';
import { idOfHash, reference, urn } from './references.js';
import { reportedObservation, reportedOf } from './reportedObservation.js';
import { roundObservations } from './roundObservations.js';
import { seriesMeans } from './seriesMeans.js';
import { seriesObservations } from './seriesObservations.js';
import { OUR_EXTENSIONS, OUR_SYSTEMS, SYSTEMS } from './systems.js';
import { asciiJson, plainTexts } from './texts.js';

/** A protocol version that values of the chart name. */
export type ProtocolKept = { readonly version: string; readonly content: unknown };

/** What a bundle needs beside a chart: every entry of the person as read and as kept, and the protocols they name. */
export type BundleOf = Exported & {
  readonly entries: readonly StoredEntry[];
  /** The same entries as they were sent; one that cannot be read is not among them. */
  readonly asKept: readonly AsKept[];
  /** Everything that was ever said of the gauges that readings name, as it was sent. */
  readonly gauges: readonly AsKept[];
  readonly protocols: readonly ProtocolKept[];
  /** The rules of each of them. */
  readonly rulesOf: RulesOf;
  /** When the bundle is made, RFC 3339. */
  readonly madeAt: string;
  readonly words: Words;
  /** Whether SNOMED CT codes may be written; the words stand there all the same. */
  readonly isSnomed: boolean;
};

/**
 * A person's whole chart as a FHIR R4 collection: the Patient, who acted, an Observation for each value in the
 * vital-signs profile of its sign, for each reading of a series and for its means, a panel for each signed round, a
 * Provenance for each entry that was ever recorded, and the protocol versions that they name. Source: interoperability handbook 1 to 11.
 */
export function chartBundle(of: BundleOf): Bundle<FhirResource> {
  const { person, identity, classIdentity, words, entries, agents } = of;
  const security = securityOf(of);
  const observations = observationsOf(of);
  const targets = targetsOf(gatherAmendments(entries), new Set(observations.map(({ id }) => id as string)));
  const read = new Map(entries.map((entry) => [entry.id, entry]));
  const provenances = of.asKept.flatMap((kept) => {
    const entry = read.get(kept.frame.id);
    if (entry === undefined) return [];
    const about = targets.get(entry.id) ?? [];
    return [provenanceOf(kept, entry, (about.length === 0 ? [person] : about).map(reference), agents, words)];
  });
  const gauges = of.gauges.flatMap(readKept);
  const said = gauges.map(({ entry }) => entry);
  const resources: FhirResource[] = [
    patientOf(person, identity, classIdentity),
    ...actingIn([...entries, ...said], agents).map(practitionerOf),
    ...devicesOf(said),
    ...of.protocols.map(protocolOf),
    ...observations,
    ...provenances,
    ...gauges.map(({ kept, entry }) =>
      provenanceOf(kept, entry, [reference(gaugeOf(entry, said))], agents, words),
    ),
  ];
  return {
    resourceType: 'Bundle',
    ...(security.length === 0 ? {} : { meta: { security: [...security], tag: tagsOf(of) } }),
    type: 'collection',
    timestamp: of.madeAt,
    entry: resources.map((resource) => ({
      fullUrl: urn(resource.id as string),
      resource: plainTexts(security.length === 0 ? resource : marked(resource, security)),
    })),
  };
}

/** An entry as kept beside how it reads; none where this program cannot read it. */
function readKept(kept: AsKept): { readonly kept: AsKept; readonly entry: StoredEntry }[] {
  const read = readEntry(kept.frame);
  return read.ok ? [{ kept, entry: { ...read.value, recordedAt: kept.recordedAt } }] : [];
}

function observationsOf({
  chart,
  entries,
  series,
  gaugesNow,
  rulesOf,
  words,
  isSnomed,
}: BundleOf): Observation[] {
  const charted = chart.rounds.toReversed().flatMap((round) => {
    const values = round.values.flatMap((of) =>
      shownOf(of).map((entry) => observationOf({ entry, of, round, words, gauges: gaugesNow, isSnomed })),
    );
    return [
      ...values,
      ...roundObservations(
        round,
        values.map(({ id }) => id as string),
        gaugesNow,
        words,
      ),
    ];
  });
  const elsewhere = chart.reported.flatMap((of) =>
    reportedOf(of).map((entry) => reportedObservation(entry, of, words)),
  );
  return [
    ...charted,
    ...elsewhere,
    ...seriesObservations(entries, words),
    ...seriesMeans(series, rulesOf, words),
  ];
}

/** Everybody whom an entry names, also one who is not known by name any more. */
function actingIn(entries: readonly StoredEntry[], agents: readonly Agent[]): Agent[] {
  const ids = [...new Set(entries.map(({ agent }) => agent))].sort();
  return ids.map((id) => agents.find((one) => one.id === id) ?? { id, name: '' });
}

function protocolOf({ version, content }: ProtocolKept): Basic {
  return {
    resourceType: 'Basic',
    id: idOfHash(version),
    extension: [{ url: OUR_EXTENSIONS.protocol, valueString: asciiJson(content) }],
    identifier: [{ system: OUR_SYSTEMS.protocol, value: version }],
    code: { text: 'Local protocol' },
  };
}

/** Test health data, for everything that is not of a real person's care. Source: interoperability handbook 10 (from memory). */
const TEST_DATA: Coding = { system: SYSTEMS.actReason, code: 'HTEST' };

function securityOf(of: Pick<Exported, 'book' | 'invented'>): readonly Coding[] {
  return noticesOf(of).length === 0 ? [] : [TEST_DATA];
}

function tagsOf(of: Pick<Exported, 'book' | 'invented'>): Coding[] {
  return noticesOf(of).map((notice) => ({ system: OUR_SYSTEMS.notice, code: notice, display: notice }));
}

function marked(resource: FhirResource, security: readonly Coding[]): FhirResource {
  return { ...resource, meta: { ...resource.meta, security: [...security] } };
}
