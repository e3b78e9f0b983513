import type { practice as english } from '../english/practice.js';
import type { Reworded } from '../reworded.js';
import { scenarioLessons } from './scenarios.js';
import { practice as screen } from './screens/practice.js';

/** Como en `english/practice`. */
export const practice: Reworded<typeof english> = {
  sections: { practice: screen },
  titles: { ...scenarioLessons },
};
