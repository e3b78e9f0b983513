import { type Circumstances, type CountOf, type RoundFacts, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import type { InForce } from '@evenfall/record';
import {
  type ClassIdentity,
  classAgeInMonths,
  type Identity,
  projectNewest,
  roundFactsOf,
  type StoredEntry,
} from '@evenfall/record';
import { chartedRate } from './chartedRate.js';
import { type DraftValue, isVoidValue, type RoundDraft } from './draft.js';

/** What the chart knows of a person that bears on a count. Null is "not known". */
export type Facts = {
  readonly ageMonths: number | null;
  readonly isFirstSet: boolean;
  readonly previousPerMinute: Readonly<Record<CountOf, number | null>>;
  /** What bears on the round as a whole. */
  readonly round: RoundFacts;
};

/** Who a person is, as their book has it. */
type Known = { readonly identity: Identity | null; readonly classIdentity: ClassIdentity | null };

/** @param onDate the local date of the round, `YYYY-MM-DD` */
export function factsOf(
  { identity, classIdentity }: Known,
  entries: readonly StoredEntry[],
  onDate: string,
): Facts {
  const { pulse, breaths } = projectNewest(entries);
  const known = roundFactsOf(identity, entries, onDate);
  const round = classIdentity === null ? known : { ...known, ageMonths: classAgeInMonths(classIdentity) };
  return {
    ageMonths: round.ageMonths,
    round,
    isFirstSet: pulse === null && breaths === null,
    previousPerMinute: { pulse: pulse?.perMinute ?? null, breaths: breaths?.perMinute ?? null },
  };
}

/** The facts of a round with what was said in it. */
export function roundFactsIn({ isPregnant }: RoundDraft, { round }: Facts): RoundFacts {
  return round.isPregnant === null ? { ...round, isPregnant } : round;
}

/** The circumstances of one value of a round: what was noticed, and what the chart and the round before it know. */
export function circumstancesOf(
  draft: RoundDraft,
  sign: CountOf,
  value: DraftValue,
  facts: Facts,
  inForce: InForce,
): Circumstances {
  const { values } = draft[sign];
  return circumstancesBefore(values.slice(0, values.indexOf(value)), sign, value.noticed, facts, inForce);
}

/** @param before the values of the sign that were taken in this round before the one in question */
export function circumstancesBefore(
  before: readonly DraftValue[],
  sign: CountOf,
  noticed: DraftValue['noticed'],
  facts: Facts,
  inForce: InForce,
): Circumstances {
  const known = {
    ...UNKNOWN_CIRCUMSTANCES,
    ...noticed,
    firstOnPerson: facts.isFirstSet,
    ageMonths: facts.ageMonths,
  };
  const last = before.filter((one) => !isVoidValue(one)).at(-1);
  const previousPerMinute = last === undefined ? facts.previousPerMinute[sign] : chartedRate(last, inForce);
  return { ...known, previousPerMinute };
}
