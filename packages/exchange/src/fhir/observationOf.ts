import type { AmendedEntry, ChartRound } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import type { Observation } from 'fhir/r4.js';
import { type Charted, isValue, type Particulars, statusOf, type Value } from './charted.js';
import { pressureParticulars } from './pressureParticulars.js';
import { rateParticulars } from './rateParticulars.js';
import { reference, urn } from './references.js';
import { signParticulars } from './signParticulars.js';
import { SYSTEMS } from './systems.js';
import { fhirTime } from './times.js';

/** What of a charted value is written: what stands, each claim where amendments disagree, of one in error what was last said. */
export function shownOf({ current, story }: AmendedEntry): readonly Value[] {
  const standing = current.filter(isValue);
  return standing.length > 0 ? standing : story.filter(isValue).slice(-1);
}

/** A charted value as an Observation of the person, in the vital-signs profile of its sign. */
export function observationOf(charted: Charted): Observation {
  const { entry, of, round, words } = charted;
  const { notes, extension, ...particulars } = particularsOf(charted);
  const status = statusOf(entry, of, round);
  const said = [...notes, ...standingNotes(of, round, words), ...(entry.content.note ?? '').split('\n')];
  const note = said.filter((text) => text.trim() !== '').map((text) => ({ text }));
  return {
    resourceType: 'Observation',
    id: entry.id,
    ...particulars,
    identifier: [{ system: SYSTEMS.uri, value: urn(entry.id) }],
    status,
    subject: reference(entry.person as string),
    effectiveDateTime: fhirTime(entry.measuredAt.at),
    issued: fhirTime(entry.recordedAt),
    performer: [reference(entry.agent)],
    ...(extension === undefined ? {} : { extension }),
    ...(note.length === 0 ? {} : { note }),
  };
}

function particularsOf(charted: Charted): Particulars {
  const { entry } = charted;
  switch (entry.kind) {
    case 'count':
    case 'taps':
      return rateParticulars({ ...charted, entry });
    case 'run':
      return pressureParticulars({ ...charted, entry });
    case 'sign':
      return signParticulars({ ...charted, entry });
  }
}

function standingNotes({ standing, original }: AmendedEntry, round: ChartRound, words: Words): string[] {
  return [
    ...(standing === 'contested' ? [words.sentence('exchanged.contested')] : []),
    ...(round.signed !== null && round.unsigned.includes(original.id)
      ? [words.sentence('exchanged.unsigned')]
      : []),
  ];
}
