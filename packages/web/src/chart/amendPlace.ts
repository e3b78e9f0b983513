import { cuffRulesFor, cuffScheme, SIDES, type Side } from '@evenfall/clinical';
import type { InForce, RunPlace, StoredEntry } from '@evenfall/record';

/** Where a pressure was really taken, of what can be taken for something else: the arm and the cuff. */
export type PlaceFields = { readonly side: string; readonly cuff: string };

/** What the fields say before anybody touches them: the place as it is charted. */
export function placeFieldsOf(entry: StoredEntry): PlaceFields {
  if (entry.kind !== 'run') return { side: '', cuff: '' };
  const { side, cuff } = entry.content.evidence.place;
  return { side, cuff: cuff?.id ?? '' };
}

/**
 * The cuffs that can be named: of the scheme that the pressure was taken by, else of the one that the place measures such
 * a person with.
 *
 * @param ageMonths of the person on the day of the reading; null for not known
 */
export function cuffsFor(entry: StoredEntry, inForce: InForce, ageMonths: number | null): readonly string[] {
  return cuffScheme(schemeOf(entry, inForce, ageMonths)).cuffs.map(({ id }) => id);
}

/**
 * The place as put right; null where nothing is another. Whoever took an arm better left alone said so of that arm,
 * and it goes with it.
 */
export function readPlace(
  entry: StoredEntry & { readonly kind: 'run' },
  fields: PlaceFields,
  inForce: InForce,
  ageMonths: number | null,
): RunPlace | null {
  const { place } = entry.content.evidence;
  const side: Side = SIDES.find((one) => one === fields.side) ?? place.side;
  const isSameCuff = fields.cuff === (place.cuff?.id ?? '');
  if (side === place.side && isSameCuff) return null;
  const scheme = schemeOf(entry, inForce, ageMonths);
  const cuff = fields.cuff === '' ? null : { scheme, id: fields.cuff };
  return {
    ...place,
    side,
    cuff: isSameCuff ? place.cuff : cuff,
    override: side === place.side ? place.override : null,
  };
}

type Scheme = NonNullable<NonNullable<RunPlace['cuff']>['scheme']>;

function schemeOf(entry: StoredEntry, { roundRules }: InForce, ageMonths: number | null): Scheme {
  const named = entry.kind === 'run' ? entry.content.evidence.place.cuff?.scheme : null;
  return named ?? cuffRulesFor(roundRules.cuff, ageMonths).scheme;
}
