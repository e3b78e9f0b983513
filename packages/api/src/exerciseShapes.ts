import { agent, id } from '@evenfall/record';
import { z } from 'zod';
import { storedEntry } from './shapes.js';

const mmHg = z.number().nullable();
const perMinute = z.number().nullable();

/** Stands on every page and file of the book of practice. */
const notices = z.array(z.enum(['SIMULATED', 'INVENTED']));

/** From which exercise on; absent: from the newest. */
export const exercisesBefore = z.object({ before: id.optional() });

/** What a list says of an exercise; what came of it is worked out from the whole. */
export const exerciseRow = z.object({
  id,
  agent: id,
  measuredAt: z.string(),
  scenario: z.string(),
  /** The title of a scenario of the place; null for a built-in one, whose words are found by its id. */
  title: z.string().nullable(),
  seed: z.number(),
  seconds: z.number(),
  systolic: mmHg,
  diastolic: mmHg,
  pulsePerMinute: perMinute,
  /** Heard at the apex. */
  apexPerMinute: perMinute,
  breathsPerMinute: perMinute,
  /** Under the tongue, degC. */
  temperatureC: z.number().nullable(),
  wasShown: z.boolean(),
});
export type ExerciseRow = z.infer<typeof exerciseRow>;

export const exerciseList = z.object({
  notices,
  exercises: z.array(exerciseRow),
  agents: z.array(agent),
  unreadable: z.number().int().min(0),
  /** By what the next page is asked for (`before`); null: no older ones are left. */
  next: id.nullable(),
});
export type ExerciseList = z.infer<typeof exerciseList>;

/** The simulated persons of the place: the newest entry of each id that is still offered. */
export const scenarioList = z.object({
  notices,
  scenarios: z.array(storedEntry),
  agents: z.array(agent),
  unreadable: z.number().int().min(0),
});
export type ScenarioList = z.infer<typeof scenarioList>;

/** One exercise as it was kept. */
export const exerciseKept = z.object({ notices, entry: storedEntry, agents: z.array(agent) });
export type ExerciseKept = z.infer<typeof exerciseKept>;
