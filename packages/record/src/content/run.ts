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
  ROUND_FIGURES,
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

/** Before schema 4 nobody said how the person felt on their feet. */
const firstCircumstances = z
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

/** Before schema 5 nobody said how long the person had lain. */
const fourthCircumstances = firstCircumstances
  .extend({
    /** Whether the person felt dizzy, faint or unwell on their feet. */
    unwellUpright: z.boolean().nullable(),
  })
  .strict();

/** Before schema 6 nobody said whether a reading was asked for at once after the one before it. */
const fifthCircumstances = fourthCircumstances
  .extend({
    /** How long the person had lain, where they lie. */
    lyingMinutes: z.number().min(0).max(ROUND_FIGURES.longestLyingMinutes.value).nullable(),
  })
  .strict();

/** What else is known of the run. Null is "not known", never "no". */
const circumstances = fifthCircumstances
  .extend({
    previous: z
      .object({
        was: z.enum(['estimate', 'reading']),
        secondsSinceRelease: z.number().min(0),
        /** Whether this one was asked for without a wait after it: the last reading very low, or the person unwell. */
        isNextAtOnce: z.boolean().nullable(),
      })
      .strict()
      .nullable(),
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
  .object({
    evidence: z.object({ run, place, circumstances: firstCircumstances }).strict(),
    value,
    override,
    computedBy,
    note,
  })
  .strict();

/** Schema 2: before a second person could mark the moments on another device. */
export const secondRunContent = firstRunContent
  .extend({
    evidence: z.object({ run, place, circumstances: firstCircumstances, gauge: id.nullable() }).strict(),
  })
  .strict();

/** Who touched at a moment: whoever measured, or a second person on another device; null for a moment without a time. */
const MARKERS = ['observer', 'second-person'] as const;
const marker = z.enum(MARKERS).nullable();
export type MarkedByWhom = (typeof MARKERS)[number];

/**
 * A run of which a second person marked moments on another device: who marked each of them, in the order of the run, and
 * how far the clocks of the two devices may be apart, ms either way.
 */
const markedBy = z
  .object({ peak: marker, moments: z.array(marker).max(MOST_MOMENTS), clocksWithinMs: z.number().min(0) })
  .strict()
  .nullable();
export type RunMarkedBy = NonNullable<z.infer<typeof markedBy>>;

const MARKER_OF_EACH_TIME = { path: ['markedBy'], message: 'marker-of-each-time' };

function isMarkedByOne({
  run: { peak, moments },
  markedBy: by,
}: {
  readonly run: z.infer<typeof run>;
  readonly markedBy: RunMarkedBy | null;
}): boolean {
  return by === null || isOfTimes(by, peak, moments);
}

const thirdEvidence = z
  .object({ run, place, circumstances: firstCircumstances, gauge: id.nullable(), markedBy })
  .strict()
  .refine(isMarkedByOne, MARKER_OF_EACH_TIME);

const fourthEvidence = z
  .object({ run, place, circumstances: fourthCircumstances, gauge: id.nullable(), markedBy })
  .strict()
  .refine(isMarkedByOne, MARKER_OF_EACH_TIME);

const fifthEvidence = z
  .object({ run, place, circumstances: fifthCircumstances, gauge: id.nullable(), markedBy })
  .strict()
  .refine(isMarkedByOne, MARKER_OF_EACH_TIME);

const evidence = z
  .object({ run, place, circumstances, gauge: id.nullable(), markedBy })
  .strict()
  .refine(isMarkedByOne, MARKER_OF_EACH_TIME);

type Timed = { readonly atSeconds: number | null };

/** Each moment with a time was marked by somebody, and none without. */
function isOfTimes(by: RunMarkedBy, peak: Timed | null, moments: readonly Timed[]): boolean {
  const isTimed = (one: Timed | null | undefined) => one != null && one.atSeconds !== null;
  return (
    by.moments.length === moments.length &&
    (by.peak !== null) === isTimed(peak) &&
    moments.every((moment, at) => (by.moments[at] !== null) === isTimed(moment))
  );
}

/** Schema 3: before it was asked how the person felt on their feet. */
export const thirdRunContent = firstRunContent.extend({ evidence: thirdEvidence }).strict();

/** Schema 4: before it was asked how long the person had lain. */
export const fourthRunContent = firstRunContent.extend({ evidence: fourthEvidence }).strict();

/** Schema 5: before it was said whether a reading was asked for at once. */
export const fifthRunContent = firstRunContent.extend({ evidence: fifthEvidence }).strict();

/**
 * One inflation and deflation of the cuff, charted. `evidence` is what was done and where, with which gauge of the place
 * (null for not said), and who marked the moments where a second person did (else null); `value` is what `clinical/deflation` and `clinical/cuff` made of it under the rule that
 * `computedBy` names. `isAveraged` is false for a site other than the upper arm; `biasMmHg` what a wrong cuff is
 * expected to add, which nobody subtracts.
 */
export const runContent = firstRunContent.extend({ evidence }).strict();
export type RunContent = z.infer<typeof runContent>;

/**
 * An older run in the newest shape: in schema 1 nobody said which gauge it was, before 3 nobody else marked it, before 4
 * nobody was asked how they felt on their feet, before 5 nobody said how long they had lain, before 6 nobody said whether the
 * reading was asked for at once.
 */
export function upgradeRun(content: unknown, from: number): unknown {
  if (from > 5) return content;
  const { evidence: kept, ...older } = content as z.infer<
    typeof thirdRunContent | typeof fourthRunContent | typeof fifthRunContent
  >;
  const { previous } = kept.circumstances;
  const circumstances = {
    unwellUpright: null,
    lyingMinutes: null,
    ...kept.circumstances,
    previous: previous === null ? null : { ...previous, isNextAtOnce: null },
  };
  const gauge = from === 1 ? null : kept.gauge;
  const by = from < 3 ? null : kept.markedBy;
  return { ...older, evidence: { ...kept, circumstances, gauge, markedBy: by } };
}
