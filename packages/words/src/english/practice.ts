import { scenarioLessons } from './scenarios.js';
import { practice as screen } from './screens/practice.js';

/** What the pages of practice say beside `later`: fetched with them. */
export const practice = { sections: { practice: screen }, titles: { ...scenarioLessons } } as const;
