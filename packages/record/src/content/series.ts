import { DAY_PARTS, EMERGENCY_FEATURES, OUT_OF_OFFICE_FIGURES, SIDES } from '@evenfall/clinical';
import { z } from 'zod';
import { id } from '../entry/id.js';
import { stamp } from '../entry/stamp.js';
import { computedBy } from './computedBy.js';
import { roundFacts } from './roundFactsShape.js';
import {
  MOST_SERIES_READINGS,
  SERIES_CLOCKS,
  SERIES_DECISIONS,
  SERIES_KINDS,
  SERIES_WAYS,
} from './seriesNames.js';
import { seriesValue } from './seriesValue.js';
import { note } from './shared.js';

const { intakeMostMmHg, intakeMostPulse } = OUT_OF_OFFICE_FIGURES;
const mmHg = z.number().min(0).max(intakeMostMmHg.value).nullable();
const line = z.number().int().min(1).nullable();
const words = z.string().min(1).max(200).nullable();

const reading = {
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
};

const markedReading = {
  ...reading,
  /** Whether the device marked the pulse as irregular; null where it says nothing of it. */
  irregular: z.boolean().nullable(),
  /** How the local time was settled where the clock changed: it was skipped and moved, or stood twice and is the first. */
  clock: z.enum(SERIES_CLOCKS).nullable(),
  /** The row as it came, where somebody put it right before signing. */
  mended: z.string().max(1000).nullable(),
};

/** One reading: a blank number is null. `line` is where it stood in what was typed or read, from 1. */
export const seriesReading = z
  .object({
    ...markedReading,
    /** Of a recorder: whether the person started it by hand, outside the schedule; null where nothing says so. */
    startedByHand: z.boolean().nullable(),
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

const range = z
  .object({ from: minute, to: minute })
  .strict()
  .refine(({ from, to }) => from !== to, { path: ['to'], message: 'another-minute' });

const evidence = {
  of: z.enum(SERIES_KINDS),
  /** The diary that came back with it; null for none. */
  diary: id.nullable(),
  refused: z.array(refusedRow).max(MOST_SERIES_READINGS),
  /** When the person slept, by their own diary: minutes from local midnight, may pass midnight. */
  asleep: range.nullable(),
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

const readingsOf = <Reading extends z.ZodType>(one: Reading) => z.array(one).min(1).max(MOST_SERIES_READINGS);

/** Schema 1: nobody's but a clinician's, and nothing of flags, naps and rows put right. */
export const firstSeriesContent = z
  .object({ ...evidence, readings: readingsOf(z.object(reading).strict()), value: seriesValue, computedBy })
  .strict();

const laterEvidence = {
  ...evidence,
  status: z.enum(['preliminary', 'final']),
  /** A sleep by day, minutes from local midnight: neither awake nor asleep. */
  nap: range.nullable(),
};

/** Schema 2: nothing of what was started by hand. */
export const secondSeriesContent = z
  .object({
    ...laterEvidence,
    readings: readingsOf(z.object(markedReading).strict()),
    value: seriesValue,
    computedBy,
  })
  .strict();

/**
 * Readings that somebody took away from the clinic, as they came, with what the protocol in force at entry made of
 * them. Nothing that came is missing: a row is among `readings` or among `refused`. `status` is `preliminary` for a
 * learner's series until a supervisor countersigns.
 */
export const seriesContent = z
  .object({
    ...laterEvidence,
    readings: readingsOf(seriesReading),
    value: seriesValue,
    computedBy,
  })
  .strict();
export type SeriesContent = z.infer<typeof seriesContent>;
export type SeriesEvidence = Omit<SeriesContent, 'value' | 'computedBy'>;

/** A series of an older schema in the newest shape. */
export function upgradeSeries(content: unknown, from: number): unknown {
  if (from > 2) return content;
  const older = (from > 1 ? content : secondOf(content as z.infer<typeof firstSeriesContent>)) as z.infer<
    typeof secondSeriesContent
  >;
  return { ...older, readings: older.readings.map((one) => ({ ...one, startedByHand: null })) };
}

function secondOf(older: z.infer<typeof firstSeriesContent>): z.infer<typeof secondSeriesContent> {
  const readings = older.readings.map((one) => ({ ...one, irregular: null, clock: null, mended: null }));
  return { ...older, status: 'final', readings, nap: null };
}

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
