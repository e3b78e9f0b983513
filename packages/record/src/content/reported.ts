import {
  COUNT_FIGURES,
  DEFLATION_FIGURES,
  ROUND_FIGURES,
  SCORE_FIGURES,
  SIGN_FIGURES,
} from '@evenfall/clinical';
import { z } from 'zod';
import { instant } from '../entry/stamp.js';

const mmHg = z.number().min(0).max(DEFLATION_FIGURES.gaugeTopMmHg.value);
const perMinute = z.number().min(0).max(COUNT_FIGURES.ceilingPerMinute.value);
const between = (low: keyof typeof SIGN_FIGURES, high: keyof typeof SIGN_FIGURES) =>
  z.number().min(SIGN_FIGURES[low].value).max(SIGN_FIGURES[high].value);
const words = z.string().trim().min(1).max(200).nullable();

/** What was said, in the units of this record, within the limits of what is read by hand. `diastolic` is null where none was obtained. */
export const reportedValue = z.discriminatedUnion('of', [
  z
    .object({ of: z.literal('pressure'), systolic: mmHg, diastolic: mmHg.nullable() })
    .strict()
    .refine(({ systolic, diastolic }) => diastolic === null || diastolic < systolic, {
      path: ['diastolic'],
      message: 'diastolic-below',
    }),
  z.object({ of: z.literal('pulse'), perMinute }).strict(),
  z.object({ of: z.literal('breaths'), perMinute }).strict(),
  z.object({ of: z.literal('temperature'), celsius: between('coldestCelsius', 'hottestCelsius') }).strict(),
  z.object({ of: z.literal('oxygen-saturation'), percent: z.number().min(0).max(100) }).strict(),
  z.object({ of: z.literal('weight'), kg: between('lightestKg', 'heaviestKg') }).strict(),
  z.object({ of: z.literal('height'), cm: between('shortestCm', 'tallestCm') }).strict(),
]);
export type ReportedValue = z.infer<typeof reportedValue>;

/** What the source says of how far its value is settled. Source: HL7 FHIR R4, observation-status. */
export const REPORTED_STATUSES = ['final', 'preliminary', 'amended', 'corrected', 'unknown'] as const;

const said = {
  value: reportedValue,
  /** The numbers and the unit as they came, where they were converted. */
  asSent: words,
  by: words,
  method: words,
  site: words,
  posture: words,
  interpretation: words,
  status: z.enum(REPORTED_STATUSES),
  /** The end of the time that it is a mean of; null for one reading. */
  until: instant.nullable(),
  note: z.string().max(1000).nullable(),
  /** Where it stood: the form of the file, and what the source calls the value. */
  source: z.object({ format: z.enum(['fhir', 'csv']), id: z.string().min(1).max(400).nullable() }).strict(),
};

/** Schema 1: nothing of when the source said it, how long somebody had stood or lain, or how they felt on their feet. */
export const firstReportedContent = z.object(said).strict();

/**
 * A value that came from elsewhere: what another system or a table says, by whom and how, in its own words. Nobody
 * here counted or heard it, so it has no evidence, no rule and no range, and nothing is computed from it.
 */
export const reportedContent = z
  .object({
    ...said,
    /**
     * When its source recorded or issued this saying of it, of a reading in a table when anything of its series was said
     * last; null where the file does not tell. Of two, the later wins, whichever comes first.
     */
    saidAt: instant.nullable(),
    /** How long the person had stood, or lain, at a pressure; null where the source does not say. */
    uprightMinutes: z.number().min(0).max(SCORE_FIGURES.longestStandingMinutes.value).nullable(),
    lyingMinutes: z.number().min(0).max(ROUND_FIGURES.longestLyingMinutes.value).nullable(),
    /** Whether they felt dizzy, faint or unwell on their feet. */
    unwellUpright: z.boolean().nullable(),
  })
  .strict();

export type ReportedContent = z.infer<typeof reportedContent>;

/** A value of schema 1 in the newest shape. */
export function upgradeReported(content: unknown, from: number): unknown {
  return from > 1
    ? content
    : {
        ...(content as z.infer<typeof firstReportedContent>),
        saidAt: null,
        uprightMinutes: null,
        lyingMinutes: null,
        unwellUpright: null,
      };
}
