import { ARM_FACTS, SIDES } from '@evenfall/clinical';
import { z } from 'zod';

const weeks = z.number().int().min(0).nullable();
const side = z.enum(SIDES);

/** The facts of a round's day, as `RoundFacts` of `clinical` has them. */
export const roundFacts = z
  .object({
    ageMonths: z.number().int().min(0).nullable(),
    sex: z.enum(['f', 'm']).nullable(),
    heightCm: z.number().positive().nullable(),
    isPregnant: z.boolean().nullable(),
    pregnancyWeeks: weeks,
    weeksAfterBirth: weeks,
    arms: z.array(z.object({ kind: z.enum(ARM_FACTS), side }).strict()),
    higherArm: side.nullable(),
    cannotStand: z.boolean(),
    hasIrregularRhythm: z.boolean(),
    hasTremor: z.boolean(),
    hasPacemaker: z.boolean(),
    takesRateSlowingDrug: z.boolean(),
    hasSpinalInjury: z.boolean(),
    oxygenScale: z.literal([1, 2]),
    isFirstPressure: z.boolean(),
  })
  .strict();
