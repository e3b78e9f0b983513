import {
  CONSCIOUSNESS_LEVELS,
  HOW_KNOWN,
  keptFrom,
  PAIN_TOOLS,
  PAIN_WORDS,
  PROBE_SITES,
  TEMPERATURE_SITES,
  UNITS,
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

/** Schema 1: before the unit was kept in which a number was typed. */
export const firstSignContent = z
  .object({
    evidence: z.object({ sign, circumstances }).strict(),
    value: z.object({ flags: z.array(flag), why: z.array(flag) }).strict(),
    computedBy,
    note,
  })
  .strict();

/** The number as it was read and typed, in the unit in which it was. */
const typed = z
  .object({
    value: z.number(),
    unit: z.enum([...UNITS.temperature, ...UNITS.mass, ...UNITS.length]),
  })
  .strict();
export type TypedNumber = z.infer<typeof typed>;

const evidence = z
  .object({ sign, typed: typed.nullable(), circumstances })
  .strict()
  .refine(({ sign: of, typed: as }) => as === null || isOf(as, of), {
    path: ['typed'],
    message: 'typed-of-sign',
  });

/** Whether a typed number is what the sign holds, in a unit of its quantity. */
function isOf({ value, unit }: TypedNumber, of: z.infer<typeof sign>): boolean {
  const kept = keptFrom(value, unit);
  switch (of.of) {
    case 'temperature':
      return isAmong(unit, UNITS.temperature) && kept === of.celsius;
    case 'weight':
      return isAmong(unit, UNITS.mass) && kept === of.kg;
    case 'height':
      return isAmong(unit, UNITS.length) && kept === of.cm;
    default:
      return false;
  }
}

function isAmong(unit: string, units: readonly string[]): boolean {
  return units.includes(unit);
}

/**
 * A sign that is neither counted nor taken with a cuff. It is its own value; `value` holds what `clinical/sign` says
 * beyond it. `typed` is the number as it was typed, where it has a unit that can be chosen; null where nobody said.
 * What was read wrongly is corrected by an amendment, so there is nothing to set by hand.
 */
export const signContent = firstSignContent.extend({ evidence }).strict();
export type SignContent = z.infer<typeof signContent>;

/** An older sign in the newest shape: in schema 1 nobody kept how it was typed. */
export function upgradeSign(content: unknown, from: number): unknown {
  if (from > 1) return content;
  const older = content as z.infer<typeof firstSignContent>;
  return { ...older, evidence: { ...older.evidence, typed: null } };
}
