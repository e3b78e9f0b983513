import type { Refusal } from '@evenfall/clinical';
import { parseScenario, type Scenario } from '@evenfall/physiology';
import {
  EXERCISE_SCHEMA,
  type Exercise,
  FIRST_EXERCISE_SCHEMA,
  parseExercise,
  SECOND_EXERCISE_SCHEMA,
  THIRD_EXERCISE_SCHEMA,
  wrapsWhileUp,
} from '@evenfall/practice';
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
 * The protocol that an exercise is judged by: the hash of the one that was in force where it was kept; null: none was chosen there.
 */
const judgedBy = z
  .object({
    presetVersion: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .nullable(),
  })
  .strict();
export type JudgedBy = z.infer<typeof judgedBy>;

/**
 * One exercise of the practice room: the `Exercise` of `packages/practice`, from which the whole visit is played again,
 * what helped the ear, and by which protocol it is judged. Who and when stand in the frame. Nothing that can be worked out from it
 * is kept.
 */
export type ExerciseContent = Exercise & {
  readonly aids: Aids;
  /** Null: it was kept before that was. */
  readonly judgedBy: JudgedBy | null;
};

/** Read by `parseExercise`, each thing wrong at its field. */
export const exerciseContent = judgedContent(EXERCISE_SCHEMA);

/** Of schema 3: the same before somebody could get up and sit down anew. */
export const thirdExerciseContent = judgedContent(THIRD_EXERCISE_SCHEMA);

/** Of schema 2: the same before taps, an asked quiet and a raised arm had their number. */
export const secondExerciseContent = judgedContent(SECOND_EXERCISE_SCHEMA);

function judgedContent(schema: number) {
  return z.unknown().transform((given, context): ExerciseContent => {
    const { aids: helped, judgedBy: by, ...done } = { ...(given as Record<string, unknown>) };
    const protocol = judgedBy.safeParse(by);
    const read = exerciseIn(done, helped, schema);
    const fields = [...read.fields, ...(protocol.success ? [] : fieldsOf(protocol.error, by, '/judgedBy'))];
    refuse(fields, context);
    return read.value !== null && protocol.success ? { ...read.value, judgedBy: protocol.data } : z.NEVER;
  });
}

/** Of schema 1: one reading at most, and no protocol. */
export const firstExerciseContent = z
  .unknown()
  .transform((given, context): Omit<ExerciseContent, 'judgedBy'> => {
    const { aids: helped, ...done } = { ...(given as Record<string, unknown>) };
    const read = exerciseIn(done, helped, FIRST_EXERCISE_SCHEMA);
    refuse(read.fields, context);
    return read.value ?? z.NEVER;
  });

/** Turns an older content into the newest shape: of schema 1 no earlier reading was kept, and no protocol. */
export function upgradeExercise(content: unknown, from: number): unknown {
  if (from !== 1) return content;
  return { ...(content as object), schema: EXERCISE_SCHEMA, earlier: [], judgedBy: null };
}

/**
 * What no hand can have done in an exercise that is sent (`wrapsWhileUp`), at its place in the content. What is kept already is
 * read and played as it was.
 */
export function impossibleMovements(content: ExerciseContent): Refusal[] {
  return wrapsWhileUp(content);
}

function exerciseIn(done: Record<string, unknown>, helped: unknown, schema: number) {
  const ears = aids.safeParse(helped);
  const read = parseExercise(done);
  const fields = [
    ...(ears.success ? [] : fieldsOf(ears.error, helped, '/aids')),
    ...(read.ok ? [] : read.refusals.map(({ field }) => field)),
    ...(read.ok && done.schema !== schema ? ['/schema'] : []),
  ];
  const value = ears.success && read.ok && fields.length === 0 ? { ...read.value, aids: ears.data } : null;
  return { fields, value };
}

function fieldsOf(error: z.ZodError, given: unknown, at: string): string[] {
  return refusalsOf(error, given, at).map(({ field }) => field);
}

function refuse(fields: readonly string[], context: z.RefinementCtx): void {
  for (const field of fields)
    context.addIssue({ code: 'custom', path: field.split('/').slice(1), message: 'exercise-as-written' });
}
