import type { UNITS } from '@evenfall/clinical';

/**
 * How somebody wants dates, times and units written: a preference of a device, apart from the language. What is kept never changes by it.
 * Units are written as UCUM writes them.
 */
export type Manner = {
  /** The order of a date; null for as the language has it. The month is in letters or the date is ISO 8601, so that no day is taken for a month. */
  readonly dates: DateOrder | null;
  /** Hours from 0 to 23, or 1 to 12 twice. */
  readonly hours: 24 | 12;
  readonly temperature: (typeof UNITS)['temperature'][number];
  readonly length: (typeof UNITS)['length'][number];
  readonly mass: (typeof UNITS)['mass'][number];
};

export const DATE_ORDERS = ['day-month-year', 'month-day-year', 'year-month-day'] as const;
export type DateOrder = (typeof DATE_ORDERS)[number];

/** The units in which values are kept, and the clock of the charts. */
export const USUAL_MANNER: Manner = {
  dates: null,
  hours: 24,
  temperature: 'Cel',
  length: 'cm',
  mass: 'kg',
};
