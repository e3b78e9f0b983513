import type { Circumstances } from '../circumstances/circumstances.js';
import { PERSON_FIGURES } from './figures.js';
import type { Person } from './person.js';

/** So far under the systolic of a beat a cuff has to be for fingers to feel it at the wrist, mmHg. */
export function feelingOf(
  { feelingMmHg }: Pick<Person, 'feelingMmHg'>,
  { fingers }: Pick<Circumstances, 'fingers'>,
): number {
  return feelingMmHg + (fingers === 'beginner' ? PERSON_FIGURES.feelingBeginnerMmHg.value : 0);
}
