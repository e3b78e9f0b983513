import type { Catalogue } from '../catalogue.js';
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

/**
 * The Spanish catalogue, a file for each of the English ones: a sentence too few or too many fails the type check there.
 * A translation that no clinician has reviewed (`LANGUAGES` says so).
 */
export const spanish: Catalogue = {
  details: {
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
  },
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
    commands,
    options: { ...options, ...averageOptions, ...scoreOptions, ...seriesOptions, ...reportOptions },
    commandLine,
    exchanged,
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
};
