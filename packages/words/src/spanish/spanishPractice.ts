import type { practice as english } from '../english/practice.js';
import type { Reworded } from '../reworded.js';
import { scenarioLessons } from './scenarios.js';
import { counts } from './screens/counts.js';
import { debrief } from './screens/debrief.js';
import { plan } from './screens/plan.js';
import { practice as screen } from './screens/practice.js';
import { scenarioForm } from './screens/scenarioForm.js';
import { showing } from './screens/showing.js';

/** Como en `english/practice`. */
export const practice: Reworded<typeof english> = {
  sections: { practice: screen, debrief, scenarioForm, showing, plan, counts },
  titles: { ...scenarioLessons },
};
