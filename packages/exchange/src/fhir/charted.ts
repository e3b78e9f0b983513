import type { AmendedEntry, ChartRound, StoredEntry } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import type { Observation } from 'fhir/r4.js';
import type { ValueOf } from '../text/valueText.js';

/** A value to be written as an Observation, with where it stands in its chart. */
export type Charted<Kind extends StoredEntry['kind'] = ValueKind> = {
  readonly entry: StoredEntry & { readonly kind: Kind };
  readonly of: AmendedEntry;
  readonly round: ChartRound;
  readonly words: Words;
  /** The gauges of the place as they stand. */
  readonly gauges: ValueOf['gauges'];
  /** Whether SNOMED CT codes may be written: a country may need a licence for them. */
  readonly isSnomed: boolean;
};

export type ValueKind = 'count' | 'taps' | 'run' | 'sign';
export type Value = StoredEntry & { readonly kind: ValueKind };

export function isValue(entry: StoredEntry): entry is Value {
  return ['count', 'taps', 'run', 'sign'].includes(entry.kind);
}

/** What is particular to a sign; the rest of an Observation is the same for all. */
export type Particulars = Pick<Observation, 'code'> &
  Partial<
    Pick<
      Observation,
      | 'meta'
      | 'category'
      | 'valueQuantity'
      | 'valueCodeableConcept'
      | 'dataAbsentReason'
      | 'component'
      | 'method'
      | 'bodySite'
      | 'device'
      | 'extension'
      | 'interpretation'
    >
  > & { readonly notes: readonly string[] };

/** The status of a value in its round. Source: interoperability handbook 7. */
export function statusOf(entry: StoredEntry, of: AmendedEntry, round: ChartRound): Observation['status'] {
  if (of.standing === 'entered-in-error') return 'entered-in-error';
  const isSigned = round.signed !== null && !round.unsigned.includes(of.original.id);
  if (!isSigned || round.isPreliminary) return 'preliminary';
  return entry === of.original ? 'final' : 'amended';
}
