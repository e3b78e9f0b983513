import {
  CONSCIOUSNESS_LEVELS,
  HOW_KNOWN,
  PAIN_TOOLS,
  PAIN_WORDS,
  PROBE_SITES,
  TEMPERATURE_SITES,
} from '@evenfall/clinical';
import { z } from 'zod';
import { computedBy } from './computedBy.js';
import { flag, note } from './shared.js';

const number = z.number().nullable();
const words = z.string().min(1).max(200).nullable();
const how = z.enum(HOW_KNOWN);
const glasgowPart = z.union([z.number().int(), z.literal('not-testable')]);

/** A sign as it was read; which numbers can be is what `clinical/sign` says. */
const sign = z.discriminatedUnion('of', [
  z.object({ of: z.literal('temperature'), celsius: z.number(), site: z.enum(TEMPERATURE_SITES) }).strict(),
  z
    .object({
      of: z.literal('oxygen-saturation'),
      percent: z.number(),
      onOxygen: z.boolean(),
      device: words,
      litresPerMinute: number,
      oxygenPercent: number,
      scale: z.literal([1, 2]).nullable(),
      scalePrescriber: words,
      probe: z.enum(PROBE_SITES).nullable(),
      pulsePerMinute: number,
    })
    .strict(),
  z
    .object({
      of: z.literal('pain'),
      score: number,
      word: z.enum(PAIN_WORDS).nullable(),
      tool: z.enum(PAIN_TOOLS),
      moving: z.boolean().nullable(),
      where: words,
    })
    .strict(),
  z
    .object({
      of: z.literal('consciousness'),
      level: z.enum(CONSCIOUSNESS_LEVELS),
      glasgow: z.object({ eyes: glasgowPart, verbal: glasgowPart, motor: glasgowPart }).strict().nullable(),
    })
    .strict(),
  z.object({ of: z.literal('weight'), kg: z.number(), how }).strict(),
  z.object({ of: z.literal('height'), cm: z.number(), how, lying: z.boolean() }).strict(),
]);

/** What else was known of the sign and of the person. Null is "not known", never "no". */
const circumstances = z
  .object({ ageMonths: number, feltPulsePerMinute: number, minutesSinceDrinkOrSmoke: number })
  .strict();

/**
 * A sign that is neither counted nor taken with a cuff. It is its own value; `value` holds what `clinical/sign` says
 * beyond it. What was read wrongly is corrected by an amendment, so there is nothing to set by hand.
 */
export const signContent = z
  .object({
    evidence: z.object({ sign, circumstances }).strict(),
    value: z.object({ flags: z.array(flag), why: z.array(flag) }).strict(),
    computedBy,
    note,
  })
  .strict();
export type SignContent = z.infer<typeof signContent>;
