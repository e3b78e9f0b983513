import { scenarioLessons } from './scenarios.js';
import { counts } from './screens/counts.js';
import { debrief } from './screens/debrief.js';
import { plan } from './screens/plan.js';
import { practice as screen } from './screens/practice.js';
import { scenarioForm } from './screens/scenarioForm.js';
import { showing } from './screens/showing.js';

/** What the pages of practice say beside `later`: fetched with them. */
export const practice = {
  sections: { practice: screen, debrief, scenarioForm, showing, plan, counts },
  titles: { ...scenarioLessons },
} as const;
