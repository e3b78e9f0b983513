import { METHODS, MOMENTS } from '@evenfall/clinical';
import {
  BLADDERS,
  CHEST_PIECES,
  MEASURED_BY,
  POSTURES,
  parseScenario,
  type Scenario,
} from '@evenfall/physiology';
import type { Exercise } from '@evenfall/practice';
import { z } from 'zod';
import { countOf } from './shared.js';

/** The longest visit that is kept, an hour, and how many movements of the hands. Source: decisions of this project. */
const LONGEST_SECONDS = 3_600;
const MOST_ACTIONS = 50_000;
/** Further than any gauge goes, mmHg. */
const MOST_MMHG = 400;

const share = z.number().min(0).max(1);
const mmHg = z.number().min(0).max(MOST_MMHG);
const numberOrNull = z.number().min(0).max(MOST_MMHG).nullable();
const atSeconds = z.number().min(0).max(LONGEST_SECONDS);

/** A scenario by the rules of the simulated person, at its field. */
export const scenario = z.unknown().transform((given, context): Scenario => {
  const read = parseScenario(given);
  if (read.ok) return read.value;
  for (const { field } of read.refusals)
    context.addIssue({ code: 'custom', path: field.split('/').slice(1), message: 'scenario-as-written' });
  return z.NEVER;
});

const circumstances = z
  .object({
    restMinutes: z.number().min(0).max(60),
    measuredBy: z.enum(MEASURED_BY),
    observerMinutes: z.number().min(0).max(60),
    firstInflationSeconds: atSeconds.nullable(),
    posture: z.enum(POSTURES),
    standingMinutes: z.number().min(0).max(60),
    arm: z.enum(['right', 'left']),
    isTalking: z.boolean(),
    hasLegsCrossed: z.boolean(),
    hasBackUnsupported: z.boolean(),
    hasFullBladder: z.boolean(),
    hadCaffeine: z.boolean(),
    hadNicotine: z.boolean(),
    isCold: z.boolean(),
    armBelowHeartCm: z.number().min(-60).max(60),
    isArmUnsupported: z.boolean(),
    isCuffLoose: z.boolean(),
    isOverSleeve: z.boolean(),
    hasTightSleeve: z.boolean(),
    chestPiece: z.enum(CHEST_PIECES),
    chestPieceOffMm: z.number().min(0).max(200),
    wasArmRaised: z.boolean(),
    wasReinflated: z.boolean(),
    fingers: z.enum(['practised', 'beginner']),
  })
  .strict();

const instrument = z
  .object({
    bladder: z.enum(BLADDERS),
    gauge: z.enum(['aneroid', 'liquid-column']),
    zeroOffsetMmHg: z.number().min(-20).max(20),
    scaleError: z.number().min(-1).max(1),
    frictionMmHg: z.number().min(0).max(20),
    leakMmHgPerMinute: z.number().min(0).max(60),
    valveExponent: z.number().min(0.5).max(1),
  })
  .strict();

const tick = z.number().int().min(0);
const rate = z.number().min(0).max(MOST_MMHG);
const action = z.discriminatedUnion('kind', [
  z.object({ tick, kind: z.literal('squeeze'), share }).strict(),
  z.object({ tick, kind: z.literal('valve'), degrees: z.number().min(0).max(120) }).strict(),
  z.object({ tick, kind: z.literal('quick-release') }).strict(),
  z.object({ tick, kind: z.literal('steady-fall'), mmHgPerSecond: rate, toMmHg: mmHg }).strict(),
  z.object({ tick, kind: z.literal('steady-rise'), mmHgPerSecond: rate, toMmHg: mmHg }).strict(),
  z
    .object({
      tick,
      kind: z.literal('chest-piece'),
      offMm: z.number().min(0).max(200).nullable(),
      held: z.enum(CHEST_PIECES),
    })
    .strict(),
  z.object({ tick, kind: z.literal('arm'), belowHeartCm: z.number().min(-60).max(60) }).strict(),
  z.object({ tick, kind: z.literal('finger'), isOn: z.boolean() }).strict(),
  z.object({ tick, kind: z.literal('talk'), isTalking: z.boolean() }).strict(),
]);

const inOrder = z
  .array(action)
  .max(MOST_ACTIONS)
  .refine((all) => all.every((one, at) => at === 0 || one.tick >= (all[at - 1]?.tick ?? 0)), {
    message: 'in-order-of-ticks',
  });

const run = z
  .object({
    method: z.enum(METHODS),
    gaugeStepMmHg: z.number().positive(),
    pulsePerMinute: z.number().min(1).max(MOST_MMHG).nullable(),
    palpated: z.object({ lostMmHg: numberOrNull, backMmHg: numberOrNull }).strict(),
    peak: z.object({ mmHg, atSeconds: atSeconds.nullable() }).strict().nullable(),
    reinflated: z.boolean(),
    moments: z
      .array(z.object({ what: z.enum(MOMENTS), mmHg, atSeconds: atSeconds.nullable() }).strict())
      .min(1)
      .max(20),
  })
  .strict();

const counted = z
  .object({
    startSeconds: atSeconds,
    count: z
      .object({
        of: countOf,
        n: z.number().int().min(0),
        windowSeconds: z.number().positive().max(300),
        clock: z.enum(['beat', 'any']),
        first: z.literal([0, 1]),
      })
      .strict(),
  })
  .strict()
  .nullable();

const evidence = z
  .object({
    run: z.object({ startSeconds: atSeconds, run }).strict().nullable(),
    pulse: counted,
    breaths: counted,
    saysActNow: z.boolean().nullable(),
    wasShown: z.boolean(),
    thresholdDb: z.number().min(-1000).max(120).nullable(),
  })
  .strict();

const entered = z
  .object({
    systolic: numberOrNull,
    muffled: numberOrNull,
    diastolic: numberOrNull,
    pulsePerMinute: numberOrNull,
    breathsPerMinute: numberOrNull,
  })
  .strict();

/** What helped the ear. None is a fault; what was not heard as through a stethoscope is flagged in the result. */
const aids = z
  .object({
    hasHearingAid: z.boolean(),
    isAmplified: z.boolean(),
    isLoudspeakerVoice: z.boolean(),
    /** Whether there was any sound at all. */
    hadSound: z.boolean(),
  })
  .strict();

/**
 * One exercise of the practice room: the `Exercise` of `packages/practice`, from which the whole visit is played again,
 * and what helped the ear. Who and when stand in the frame. Nothing that can be worked out from it is kept.
 */
export const exerciseContent = z
  .object({
    schema: z.literal(1),
    scenario,
    seed: z.number().int().min(0).max(0xffff_ffff),
    circumstances,
    instrument,
    actions: inOrder,
    seconds: atSeconds,
    evidence,
    entered,
    aids,
  })
  .strict();
export type Aids = z.infer<typeof aids>;
export type ExerciseContent = Exercise & { readonly aids: Aids };
