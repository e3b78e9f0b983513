import type { bedside as english } from '../english/bedside.js';
import type { Reworded } from '../reworded.js';
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
import { scoreTitles } from './scoreTitles.js';
import { screens } from './screens/index.js';
import { signTitles } from './signTitles.js';
import { standingAtOnce } from './standingAtOnce.js';
import { titles } from './titles.js';

/** As in `english/bedside`. */
export const bedside: Reworded<typeof english> = {
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
};
