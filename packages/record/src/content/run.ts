import {
  CUFF_FIGURES,
  CUFF_SCHEME_IDS,
  CUFF_SITES,
  CUFF_SIZES,
  cuffScheme,
  DEFLATION_FIGURES,
  METHODS,
  MOMENTS,
  POSTURES,
  SIDES,
} from '@evenfall/clinical';
import { z } from 'zod';
import { id } from '../entry/id.js';
import { computedBy } from './computedBy.js';
import { flag, note } from './shared.js';

const top = DEFLATION_FIGURES.gaugeTopMmHg.value;
const mmHg = z.number().min(0).max(top);
const number = z.number().nullable();
const atSeconds = z.number().min(0).nullable();
const range = z.tuple([z.number(), z.number()]).nullable();

/** The longest list of moments: first sound, last sound, first sound again, muffled, last sound, with room for more. */
const MOST_MOMENTS = 20;

const run = z
  .object({
    method: z.enum(METHODS),
    gaugeStepMmHg: z.number().positive().max(DEFLATION_FIGURES.coarsestStepMmHg.value),
    pulsePerMinute: z.number().min(1).max(DEFLATION_FIGURES.ceilingPerMinute.value).nullable(),
    palpated: z.object({ lostMmHg: mmHg.nullable(), backMmHg: mmHg.nullable() }).strict(),
    peak: z.object({ mmHg, atSeconds }).strict().nullable(),
    reinflated: z.boolean(),
    moments: z
      .array(z.object({ what: z.enum(MOMENTS), mmHg, atSeconds }).strict())
      .min(1)
      .max(MOST_MOMENTS),
  })
  .strict();

/** A cuff by its name in a scheme, or by the letter that stands on it where no scheme was used. */
const cuff = z
  .object({ scheme: z.enum(CUFF_SCHEME_IDS).nullable(), id: z.string().min(1).max(40) })
  .strict()
  .refine(({ scheme, id }) => cuffsOf(scheme).includes(id), { path: ['id'], message: 'cuff-of-scheme' });

function cuffsOf(scheme: (typeof CUFF_SCHEME_IDS)[number] | null): readonly string[] {
  return scheme === null ? CUFF_SIZES : cuffScheme(scheme).cuffs.map(({ id }) => id);
}

/** Where the cuff was and how the person was placed; `override` is who took an arm better left alone, and why. */
const place = z
  .object({
    site: z.enum(CUFF_SITES),
    side: z.enum(SIDES),
    posture: z.enum(POSTURES),
    cuff: cuff.nullable(),
    armCm: z.number().min(CUFF_FIGURES.thinnestArmCm.value).max(CUFF_FIGURES.thickestArmCm.value).nullable(),
    override: z
      .object({ by: z.string().trim().min(1).max(200), reason: z.string().trim().min(1).max(500) })
      .strict()
      .nullable(),
  })
  .strict();
export type RunPlace = z.infer<typeof place>;

/** What else is known of the run. Null is "not known", never "no". */
const circumstances = z
  .object({
    rhythmFelt: z.enum(['regular', 'irregular']).nullable(),
    previous: z
      .object({ was: z.enum(['estimate', 'reading']), secondsSinceRelease: z.number().min(0) })
      .strict()
      .nullable(),
    /** How long the person had stood, where the posture is `stand`. */
    uprightMinutes: z.number().min(0).max(60).nullable(),
  })
  .strict();
export type RunCircumstancesKept = z.infer<typeof circumstances>;

/** A pressure set by hand over the computed one. It needs a reason and stays visible as an override. */
const override = z
  .object({
    systolic: z.number().positive().max(top),
    diastolic: mmHg.nullable(),
    reason: z.string().trim().min(1).max(500),
  })
  .strict()
  .refine(({ systolic, diastolic }) => diastolic === null || diastolic < systolic, {
    path: ['diastolic'],
    message: 'diastolic-below',
  })
  .nullable();
export type PressureOverride = z.infer<typeof override>;

const value = z
  .object({
    systolic: z.number(),
    diastolic: number,
    muffled: number,
    diastolicUsed: number,
    systolicRange: range,
    diastolicRange: range,
    deflationRateMmHgPerSecond: number,
    earlyDeflationRateMmHgPerSecond: number,
    dropPerBeatMmHg: number,
    marginMmHg: number,
    flags: z.array(flag),
    why: z.array(flag),
    method: z.enum(METHODS),
    gap: z.object({ fromMmHg: z.number(), toMmHg: z.number() }).strict().nullable(),
    isAveraged: z.boolean(),
    biasMmHg: z.object({ systolic: z.number(), diastolic: z.number() }).strict().nullable(),
  })
  .strict();

/** Schema 1: before the place kept its gauges. */
export const firstRunContent = z
  .object({ evidence: z.object({ run, place, circumstances }).strict(), value, override, computedBy, note })
  .strict();

/**
 * One inflation and deflation of the cuff, charted. `evidence` is what was done and where, and with which gauge of the
 * place (null for not said); `value` is what `clinical/deflation` and `clinical/cuff` made of it under the rule that
 * `computedBy` names. `isAveraged` is false for a site other than the upper arm; `biasMmHg` what a wrong cuff is
 * expected to add, which nobody subtracts.
 */
export const runContent = firstRunContent
  .extend({ evidence: z.object({ run, place, circumstances, gauge: id.nullable() }).strict() })
  .strict();
export type RunContent = z.infer<typeof runContent>;

/** A run of schema 1 in the newest shape: nobody said which gauge it was. */
export function upgradeRun(content: unknown, from: number): unknown {
  if (from > 1) return content;
  const older = content as z.infer<typeof firstRunContent>;
  return { ...older, evidence: { ...older.evidence, gauge: null } };
}
