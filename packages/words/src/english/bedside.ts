import { actNowDetails } from './actNowDetails.js';
import { askDetails } from './askDetails.js';
import { categoryDetails } from './categoryDetails.js';
import { categoryTitles } from './categoryTitles.js';
import { cautions } from './cautions.js';
import { countDetails } from './countDetails.js';
import { cuffDetails } from './cuffDetails.js';
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
import { scoreDetails } from './scoreDetails.js';
import { scoreTitles } from './scoreTitles.js';
import { screens } from './screens/index.js';
import { signDetails } from './signDetails.js';
import { signTitles } from './signTitles.js';
import { standingDetails } from './standingDetails.js';
import { tapsDetails } from './tapsDetails.js';
import { titles } from './titles.js';

/**
 * What a device has at once: all that the start page and the way of three touches say, with a sentence for every code that a
 * round, its signs and its scores can bring. A page that says more brings `round` or `later` with it (`wordsInParts`).
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
    ...scoreDetails,
    ...signDetails,
    ...standingDetails,
    ...tapsDetails,
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
