import { SCENARIOS, type Scenario } from '@evenfall/physiology';
import { z } from 'zod';
import { scenario } from './exercise.js';

/** Ids that the program has itself: one of the place never hides it. */
const BUILT_IN: ReadonlySet<string> = new Set(SCENARIOS.map(({ id }) => id));

/** One of the place has a name of its own, since no catalogue has words for it, and an id of its own. */
const ofThePlace = scenario.superRefine(({ id, title }, context) => {
  if (title === null || title.trim() === '')
    context.addIssue({ code: 'custom', path: ['title'], message: 'named-scenario' });
  if (BUILT_IN.has(id)) context.addIssue({ code: 'custom', path: ['id'], message: 'own-scenario-id' });
});

/**
 * A simulated person that the place made for itself. The newest entry of an id is the one that stands; `isRetired`: it is
 * not offered any more, while exercises with it keep it whole.
 */
export const scenarioContent = z.object({ scenario: ofThePlace, isRetired: z.boolean() }).strict();
export type ScenarioContent = { readonly scenario: Scenario; readonly isRetired: boolean };
