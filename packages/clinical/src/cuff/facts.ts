import type { Side } from './places.js';

/** What bars an arm, or makes the other one better. */
export const ARM_FACTS = [
  'fistula',
  'graft',
  'shunt',
  'drip',
  'amputation',
  'axillary-surgery',
  'lymphoedema',
  'weakness',
  'injury',
  'lower-arm',
] as const;
export type ArmFactKind = (typeof ARM_FACTS)[number];

/** Arms that no local rule may free. Source: bedside handbook 3.15; an arm that is not there is our addition. */
export const NEVER_FACTS = [
  'fistula',
  'graft',
  'shunt',
  'drip',
  'amputation',
] as const satisfies ArmFactKind[];

/** The first and the last day on which something holds, both included, as `YYYY-MM-DD`; null is no end in sight. */
export type Dated = { readonly from: string; readonly until: string | null };

/** Something about one arm. `lower-arm`: this one is known to read lower than the other. */
export type ArmFact = Dated & { readonly kind: ArmFactKind; readonly side: Side };

/** Something about the whole person. */
export type PersonFact = Dated & { readonly kind: 'pregnancy' | 'cannot-stand' };

/** What is known of a person when a place for the cuff is chosen. */
export type PlaceFacts = {
  readonly arms: readonly ArmFact[];
  readonly person: readonly PersonFact[];
  readonly ageMonths: number | null;
  /** Weeks of the pregnancy, if there is one and they are known. */
  readonly pregnancyWeeks: number | null;
};

/** Whether a fact holds on a day. Days as `YYYY-MM-DD`, which order as text. */
export function holdsOn({ from, until }: Dated, day: string): boolean {
  return from <= day && (until === null || day <= until);
}
