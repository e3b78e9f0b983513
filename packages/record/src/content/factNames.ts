import { ARM_FACTS } from '@evenfall/clinical';

/** What may be known of a whole person besides what is known of an arm. Source: the project's design, section 3. */
export const PERSON_FACTS = [
  'pregnancy',
  'gave-birth',
  'cannot-stand',
  'irregular-rhythm',
  'tremor',
  'pacemaker',
  'rate-slowing-drug',
  'spinal-injury',
] as const;
export type PersonFactName = (typeof PERSON_FACTS)[number];

/** Kinds of fact, in the order in which a form offers them. */
export const FACT_NAMES = [
  ...ARM_FACTS,
  'higher-arm',
  ...PERSON_FACTS,
  'gap',
  'usual-cuff',
  'oxygen-scale-2',
  'reference-sex',
] as const;
export type FactName = (typeof FACT_NAMES)[number];
