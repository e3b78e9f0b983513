import { chartedPressure, isAmendedSince, signingOf } from '@evenfall/record';
import type { CodeableConcept } from 'fhir/r4.js';
import type { Charted, Value } from './charted.js';
import { concept } from './concepts.js';
import { SYSTEMS } from './systems.js';

/** Codes that are written. Source: interoperability handbook 7. */
type Code = 'N' | 'H' | 'HH' | 'LL';

function interpretation(code: Code): CodeableConcept {
  return concept({ system: SYSTEMS.interpretation, code });
}

/** How high the category of a pressure is, as a code: what is raised and not severe is `H`. */
const BY_LEVEL: Readonly<Record<string, Code>> = { usual: 'N', elevated: 'H', raised: 'H', severe: 'HH' };

/** A rate at which one sign alone alarms; null for any other, and where no protocol was in force. */
export function codeOfRate(entry: Value): CodeableConcept | null {
  const { computedBy, value } = entry.content;
  if (computedBy.presetVersion === null || !('perMinute' in value)) return null;
  const codes = value.flags.map(({ code }) => code);
  if (codes.includes('very-fast')) return interpretation('HH');
  return codes.includes('very-slow') ? interpretation('LL') : null;
}

/** What the local protocol said of a round's pressure, as a code and in words; null where none was in force. */
export type Judged = { readonly interpretation: CodeableConcept; readonly notes: readonly string[] };

export function judgedOf({ round, words }: Pick<Charted, 'round' | 'words'>): Judged | null {
  const signing = signingOf(round);
  if (signing === null || isAmendedSince(round)) return null;
  const { value, protocolVersion } = signing.content;
  const level = value?.category?.level ?? null;
  const code = level === null ? undefined : BY_LEVEL[level];
  if (value?.category == null || protocolVersion === null || code === undefined) return null;
  const { guideline, category, atLeast } = value.category;
  return {
    interpretation: interpretation(code),
    notes: [
      words.sentence('exchanged.category', { category: category ?? atLeast ?? code, guideline }),
      words.sentence('exchanged.underProtocol', { version: protocolVersion }),
    ],
  };
}

/** The same for a reading that is all that its round goes by: of several readings the mean is judged, not each. */
export function categoryOfReading({ entry, round, words }: Charted<'run'>): Judged | null {
  const readings = round.values.filter(({ original }) => chartedPressure(original)?.isAveraged === true);
  return readings.length === 1 && readings[0]?.original === entry ? judgedOf({ round, words }) : null;
}
