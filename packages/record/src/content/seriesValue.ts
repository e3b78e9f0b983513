import { DIP_CLASSES } from '@evenfall/clinical';
import { z } from 'zod';
import { alert } from './roundValue.js';
import { flag } from './shared.js';

const number = z.number().nullable();
const code = z.string().min(1).max(60);
const means = z.object({ systolic: number, diastolic: number, pulse: number }).strict();

/**
 * What a series came to under a protocol, in short: the `HomeResult` or `AmbulatoryResult` of `clinical`. What is only
 * of the other kind is null. Nothing is rounded but `shown`. `index` counts readings of the series from 1.
 */
export const seriesValue = z
  .object({
    valid: z.boolean(),
    why: z.array(flag),
    /** Readings in the mean. */
    used: z.number().int().min(0),
    /** Days with a reading in the mean; null of a recording. */
    days: z.number().int().min(0).nullable(),
    mean: means,
    morning: means.nullable(),
    evening: means.nullable(),
    day: means.nullable(),
    night: means.nullable(),
    /** Readings of the recording: planned, by day, by night, and percent of the planned that were kept. */
    counts: z
      .object({ scheduled: z.number(), day: z.number(), night: z.number(), percent: number })
      .strict()
      .nullable(),
    dayNightBy: z.enum(['diary', 'clock']).nullable(),
    /** The fall by night, percent of the day. */
    dip: z
      .object({ systolicPercent: number, diastolicPercent: number, class: z.enum(DIP_CLASSES).nullable() })
      .strict()
      .nullable(),
    high: z.boolean().nullable(),
    /** The rule set's name for a mean at home, or the pattern of a recording. */
    category: code.nullable(),
    shown: z.object({ systolic: z.string().nullable(), diastolic: z.string().nullable() }).strict(),
    dropped: z.array(flag.extend({ index: z.number().int().min(1) }).strict()),
    flags: z.array(flag),
    actNow: z.array(alert),
  })
  .strict();
export type SeriesValueKept = z.infer<typeof seriesValue>;
