import type { ClinicalCode } from '../codes.js';
import { actNowDetails } from './actNowDetails.js';
import { askDetails } from './askDetails.js';
import { averageLines, averageOptions } from './averageLines.js';
import { categoryDetails } from './categoryDetails.js';
import { categoryLines } from './categoryLines.js';
import { categoryTitles } from './categoryTitles.js';
import { cautions } from './cautions.js';
import { commandLine, commands, options } from './commandLine.js';
import { countDetails } from './countDetails.js';
import { cuffDetails } from './cuffDetails.js';
import type { Detail } from './detail.js';
import { equipmentDetails } from './equipmentDetails.js';
import { exchanged } from './exchanged.js';
import { expected, expectedByCode } from './expected/index.js';
import { factTitles } from './factTitles.js';
import { guidelineTitles } from './guidelineTitles.js';
import { longerCount } from './longerCount.js';
import { outOfOfficeDetails } from './outOfOfficeDetails.js';
import { outOfOfficeTitles } from './outOfOfficeTitles.js';
import { patternTitles } from './patternTitles.js';
import { messages, problemWords } from './problems.js';
import { reach } from './reach.js';
import { readingsDetails } from './readingsDetails.js';
import { reportLines, reportOptions } from './reportLines.js';
import { roundDetails } from './roundDetails.js';
import { roundTitles } from './roundTitles.js';
import { runDetails } from './runDetails.js';
import { runLines } from './runLines.js';
import { runTitles } from './runTitles.js';
import { scoreDetails } from './scoreDetails.js';
import { scoreLines } from './scoreLines.js';
import { scoreOptions } from './scoreOptions.js';
import { scoreTitles } from './scoreTitles.js';
import { screens } from './screens/index.js';
import { seriesLines, seriesOptions } from './seriesLines.js';
import { signDetails } from './signDetails.js';
import { signTitles } from './signTitles.js';
import { standingDetails } from './standingDetails.js';
import { starting } from './starting.js';
import { tapsDetails } from './tapsDetails.js';
import { titles } from './titles.js';
import { usualDetails } from './usualDetails.js';

/** A sentence for every code of every clinical result. */
const details = {
  ...actNowDetails,
  ...categoryDetails,
  ...countDetails,
  ...cuffDetails,
  ...equipmentDetails,
  ...askDetails,
  ...outOfOfficeDetails,
  ...readingsDetails,
  ...roundDetails,
  ...runDetails,
  ...scoreDetails,
  ...signDetails,
  ...standingDetails,
  ...tapsDetails,
  ...usualDetails,
} as const satisfies Record<ClinicalCode, Detail>;

/** The English catalogue. Its keys are the keys of every language (see `Catalogue`). */
export const english = {
  details,
  longerCount,
  sections: {
    ...screens,
    average: averageLines,
    category: categoryLines,
    report: reportLines,
    run: runLines,
    score: scoreLines,
    series: seriesLines,
    cautions,
    reach,
    exchanged,
    commands,
    options: { ...options, ...averageOptions, ...scoreOptions, ...seriesOptions, ...reportOptions },
    commandLine,
  },
  titles: {
    ...titles,
    ...categoryTitles,
    ...factTitles,
    ...guidelineTitles,
    ...outOfOfficeTitles,
    ...patternTitles,
    ...roundTitles,
    ...runTitles,
    ...scoreTitles,
    ...signTitles,
  },
  starting,
  expected,
  expectedByCode,
  messages,
  problemWords,
} as const;
