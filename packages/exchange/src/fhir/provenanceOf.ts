import {
  type AgentStanding,
  type AmendedEntry,
  type EntryFrame,
  type StoredEntry,
  standingOf,
} from '@evenfall/record';
import type { Words } from '@evenfall/words';
import type { Provenance, Reference } from 'fhir/r4.js';
import { besideId, reference, urn } from './references.js';
import { OUR_EXTENSIONS, OUR_SYSTEMS, SYSTEMS } from './systems.js';
import { asciiJson } from './texts.js';
import { fhirTime } from './times.js';

/** An entry as the record keeps it: in the frame and schema of its time, with when it was recorded. */
export type AsKept = { readonly frame: EntryFrame; readonly recordedAt: string };

/**
 * Who recorded an entry, in what role, when, by what program and protocol version, and what it replaces. The entry
 * itself goes with it, so that another Evenfall reads the same record: evidence, amendments, facts, signings.
 *
 * @param target what the entry is about: the Observations made from it, or the person
 */
export function provenanceOf(
  { frame, recordedAt }: AsKept,
  entry: StoredEntry,
  target: readonly Reference[],
  agents: readonly AgentStanding[],
  words: Words,
): Provenance {
  const by = 'computedBy' in entry.content ? entry.content.computedBy : null;
  const version =
    by?.presetVersion ?? (entry.kind === 'round' ? (entry.content.protocolVersion ?? null) : null);
  return {
    resourceType: 'Provenance',
    id: besideId(entry.id),
    extension: [{ url: OUR_EXTENSIONS.entry, valueString: asciiJson({ ...frame, recordedAt }) }],
    target: [...target],
    occurredDateTime: fhirTime(entry.measuredAt.at),
    recorded: fhirTime(recordedAt),
    ...(version === null ? {} : { policy: [`${OUR_SYSTEMS.protocol}/${version}`] }),
    activity: { text: activityText(entry, words) },
    agent: [
      {
        role: [{ text: words.sentence(`roles.${standingOf(entry, agents) ?? entry.role}`) }],
        who: reference(entry.agent),
      },
      ...(by === null
        ? []
        : [
            {
              type: { text: 'assembler' },
              who: {
                display: words.sentence('exchanged.madeBy', { program: by.program, rule: by.rule }),
              },
            },
          ]),
    ],
    ...(entry.amends === null
      ? {}
      : {
          entity: [
            {
              role: entry.kind === 'entered-in-error' ? ('removal' as const) : ('revision' as const),
              what: { identifier: { system: SYSTEMS.uri, value: urn(entry.amends.entry) } },
            },
          ],
        }),
  };
}

function activityText({ kind, amends }: StoredEntry, words: Words): string {
  if (amends === null) return words.sentence('exchanged.created');
  const key = kind === 'entered-in-error' ? 'exchanged.inError' : 'exchanged.amended';
  const said = amends.text === null ? '' : `; ${amends.text}`;
  return words.sentence(key, { reason: `${words.sentence(`amend.${amends.reason}`)}${said}` });
}

/** For each entry of a story, the ids of the Observations that were made of it. */
export function targetsOf(
  gathered: readonly AmendedEntry[],
  written: ReadonlySet<string>,
): ReadonlyMap<string, readonly string[]> {
  return new Map(
    gathered.flatMap(({ story }) => {
      const made = story.map(({ id }) => id).filter((id) => written.has(id));
      return story.map(({ id }) => [id, written.has(id) ? [id] : made] as const);
    }),
  );
}
