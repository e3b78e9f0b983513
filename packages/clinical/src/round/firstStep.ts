import { UNKNOWN_READINGS_CIRCUMSTANCES } from './furtherReading.js';
import { type NextStep, nextStep, type StepRules } from './nextStep.js';
import type { RoundFacts } from './roundFacts.js';
import type { RoundState } from './roundState.js';

/** The {@link nextStep} of a round in which nothing was taken yet: no reading bears on it. */
export function firstStep(state: RoundState, facts: RoundFacts, rules: StepRules): NextStep {
  return nextStep(state, facts, UNKNOWN_READINGS_CIRCUMSTANCES, rules);
}
