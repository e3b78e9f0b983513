import { COUNTING_FIGURES } from './counting/figures.js';
import { EXERCISE_FIGURES } from './exercise/figures.js';
import { OBSERVER_FIGURES } from './observer/figures.js';
import { PLAN_FIGURES } from './plan/figures.js';

/** Every number of simulated observers and of the people a protocol is tried on, by folder. */
export const PRACTICE_FIGURES = {
  counting: COUNTING_FIGURES,
  exercise: EXERCISE_FIGURES,
  observer: OBSERVER_FIGURES,
  plan: PLAN_FIGURES,
};
