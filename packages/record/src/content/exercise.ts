import { parseScenario, type Scenario } from '@evenfall/physiology';
import { type Exercise, parseExercise } from '@evenfall/practice';
import { z } from 'zod';
import { refusalsOf } from '../entry/refusals.js';

/** A scenario by the rules of the simulated person, at its field. */
export const scenario = z.unknown().transform((given, context): Scenario => {
  const read = parseScenario(given);
  if (read.ok) return read.value;
  for (const { field } of read.refusals)
    context.addIssue({ code: 'custom', path: field.split('/').slice(1), message: 'scenario-as-written' });
  return z.NEVER;
});

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
export type Aids = z.infer<typeof aids>;

/**
 * One exercise of the practice room: the `Exercise` of `packages/practice`, from which the whole visit is played again,
 * and what helped the ear. Who and when stand in the frame. Nothing that can be worked out from it is kept.
 */
export type ExerciseContent = Exercise & { readonly aids: Aids };

/** Read by `parseExercise`, each thing wrong at its field. */
export const exerciseContent = z.unknown().transform((given, context): ExerciseContent => {
  const { aids: helped, ...done } = { ...(given as Record<string, unknown>) };
  const ears = aids.safeParse(helped);
  const read = parseExercise(done);
  const fields = [
    ...(ears.success ? [] : refusalsOf(ears.error, helped, '/aids')),
    ...(read.ok ? [] : read.refusals),
  ].map(({ field }) => field);
  for (const field of fields)
    context.addIssue({ code: 'custom', path: field.split('/').slice(1), message: 'exercise-as-written' });
  return ears.success && read.ok ? { ...read.value, aids: ears.data } : z.NEVER;
});
