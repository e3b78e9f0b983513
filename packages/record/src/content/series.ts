import { DAY_PARTS, EMERGENCY_FEATURES, OUT_OF_OFFICE_FIGURES, SIDES } from '@evenfall/clinical';
import { z } from 'zod';
import { id } from '../entry/id.js';
import { stamp } from '../entry/stamp.js';
import { computedBy } from './computedBy.js';
import { roundFacts } from './roundFactsShape.js';
import { MOST_SERIES_READINGS, SERIES_DECISIONS, SERIES_KINDS, SERIES_WAYS } from './seriesNames.js';
import { seriesValue } from './seriesValue.js';
import { note } from './shared.js';

const { intakeMostMmHg, intakeMostPulse } = OUT_OF_OFFICE_FIGURES;
const mmHg = z.number().min(0).max(intakeMostMmHg.value).nullable();
const line = z.number().int().min(1).nullable();
const words = z.string().min(1).max(200).nullable();

/** One reading: a blank number is null. `line` is where it stood in what was typed or read, from 1. */
export const seriesReading = z
  .object({
    at: stamp,
    systolic: mmHg,
    diastolic: mmHg,
    pulse: z.number().min(0).max(intakeMostPulse.value).nullable(),
    asleep: z.boolean().nullable(),
    part: z.enum(DAY_PARTS).nullable(),
    site: z.enum(['upper-arm', 'wrist']),
    arm: z.enum(SIDES).nullable(),
    note,
    device: words,
    line,
    how: z.enum(SERIES_WAYS),
  })
  .strict();
export type SeriesReadingKept = z.infer<typeof seriesReading>;

/** A row that is no reading, in the words in which it stood, with what was wrong; its numbers where they could be read. */
const refusedRow = z
  .object({
    line,
    got: z.string().max(1000).nullable(),
    code: z.string().min(1).max(60),
    systolic: z.number().nullable(),
    diastolic: z.number().nullable(),
  })
  .strict();
export type RefusedSeriesRow = z.infer<typeof refusedRow>;

const minute = z.number().int().min(0).max(1439);

const evidence = {
  of: z.enum(SERIES_KINDS),
  /** The diary that came back with it; null for none. */
  diary: id.nullable(),
  readings: z.array(seriesReading).min(1).max(MOST_SERIES_READINGS),
  refused: z.array(refusedRow).max(MOST_SERIES_READINGS),
  /** When the person slept, by their own diary: minutes from local midnight, may pass midnight. */
  asleep: z
    .object({ from: minute, to: minute })
    .strict()
    .refine(({ from, to }) => from !== to, { path: ['to'], message: 'another-minute' })
    .nullable(),
  /** How many readings the recorder was set to take. */
  scheduled: z.number().int().min(1).max(MOST_SERIES_READINGS).nullable(),
  /** Whether the person took medicine for the pressure then. */
  treated: z.boolean().nullable(),
  /** What the person said of danger signs when it came in: none for asked and none, null for nobody asked. */
  features: z.array(z.enum(EMERGENCY_FEATURES)).nullable(),
  /** The facts of the day on which it came in. */
  facts: roundFacts,
  note,
};

/**
 * Readings that somebody took away from the clinic, as they came, with what the protocol in force at entry made of
 * them. Nothing that came is missing: a row is among `readings` or among `refused`.
 */
export const seriesContent = z.object({ ...evidence, value: seriesValue, computedBy }).strict();
export type SeriesContent = z.infer<typeof seriesContent>;
export type SeriesEvidence = Omit<SeriesContent, 'value' | 'computedBy'>;

/** Readings of a series decided by hand, by their place in it from 1. The newest decision of each reading stands. */
export const seriesDecidedContent = z
  .object({
    series: id,
    decision: z.enum(SERIES_DECISIONS),
    indexes: z
      .array(z.number().int().min(1).max(MOST_SERIES_READINGS))
      .min(1)
      .refine((given) => new Set(given).size === given.length, { message: 'each-reading-once' }),
    reason: z.string().trim().min(1).max(500),
  })
  .strict();
export type SeriesDecidedContent = z.infer<typeof seriesDecidedContent>;
