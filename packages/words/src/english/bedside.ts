import type { BedsideCode } from '../codes.js';
import { actNowDetails } from './actNowDetails.js';
import { askDetails } from './askDetails.js';
import { categoryDetails } from './categoryDetails.js';
import { categoryTitles } from './categoryTitles.js';
import { cautions } from './cautions.js';
import { countDetails } from './countDetails.js';
import { cuffDetails } from './cuffDetails.js';
import type { Detail } from './detail.js';
import { equipmentDetails } from './equipmentDetails.js';
import { expected, expectedByCode } from './expected/index.js';
import { factTitles } from './factTitles.js';
import { longerCount } from './longerCount.js';
import { messages, problemWords } from './problems.js';
import { readingsDetails } from './readingsDetails.js';
import { roundDetails } from './roundDetails.js';
import { roundTitles } from './roundTitles.js';
import { runDetails } from './runDetails.js';
import { runTitles } from './runTitles.js';
import { scoreTitles } from './scoreTitles.js';
import { screens } from './screens/index.js';
import { signTitles } from './signTitles.js';
import { standingAtOnce } from './standingAtOnce.js';
import { titles } from './titles.js';

/**
 * What a device has at once: all that the start page and the way of three touches say, with a sentence for every code
 * that they can show (below). A page that says more brings `round` or `later` with it (`wordsInParts`).
 */
export const bedside = {
  details: {
    ...actNowDetails,
    ...categoryDetails,
    ...countDetails,
    ...cuffDetails,
    ...equipmentDetails,
    ...askDetails,
    ...readingsDetails,
    ...roundDetails,
    ...runDetails,
    ...standingAtOnce,
  },
  longerCount,
  sections: { ...screens, cautions },
  titles: {
    ...titles,
    ...categoryTitles,
    ...factTitles,
    ...roundTitles,
    ...runTitles,
    ...scoreTitles,
    ...signTitles,
  },
  expected,
  expectedByCode,
  messages,
  problemWords,
} as const;

bedside.details satisfies Record<BedsideCode, Detail>;
