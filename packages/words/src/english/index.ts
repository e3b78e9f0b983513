import type { ClinicalCode } from '../codes.js';
import { cautions } from './cautions.js';
import { commandLine, commands, options } from './commandLine.js';
import { countDetails } from './countDetails.js';
import { cuffDetails } from './cuffDetails.js';
import type { Detail } from './detail.js';
import { expected, expectedByCode } from './expected/index.js';
import { messages, problemWords } from './problems.js';
import { runDetails } from './runDetails.js';
import { screens } from './screens/index.js';
import { signDetails } from './signDetails.js';
import { starting } from './starting.js';
import { tapsDetails } from './tapsDetails.js';
import { titles } from './titles.js';

/** A sentence for every code of every clinical result. */
const details = {
  ...countDetails,
  ...cuffDetails,
  ...runDetails,
  ...signDetails,
  ...tapsDetails,
} as const satisfies Record<ClinicalCode, Detail>;

/** The English catalogue. Its keys are the keys of every language (see `Catalogue`). */
export const english = {
  details,
  sections: { ...screens, cautions, commands, options, commandLine },
  titles,
  starting,
  expected,
  expectedByCode,
  messages,
  problemWords,
} as const;
