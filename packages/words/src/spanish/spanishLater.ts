import type { later as english } from '../english/later.js';
import type { Reworded } from '../reworded.js';
import { averageLines, averageOptions } from './averageLines.js';
import { categoryLines } from './categoryLines.js';
import { commandLine, commands, options } from './commandLine.js';
import { exchanged } from './exchanged.js';
import { laterExpected } from './expected/later.js';
import { guidelineTitles } from './guidelineTitles.js';
import { laterTitles } from './laterTitles.js';
import { outOfOfficeDetails } from './outOfOfficeDetails.js';
import { outOfOfficeTitles } from './outOfOfficeTitles.js';
import { patternTitles } from './patternTitles.js';
import { reach } from './reach.js';
import { reportLines, reportOptions } from './reportLines.js';
import { ruleTitles } from './ruleTitles.js';
import { runLines } from './runLines.js';
import { scenarioTitles } from './scenarioTitles.js';
import { scoreLines } from './scoreLines.js';
import { scoreOptions } from './scoreOptions.js';
import { laterScreens } from './screens/later.js';
import { seriesLines, seriesOptions } from './seriesLines.js';
import { starting } from './starting.js';
import { usualDetails } from './usualDetails.js';

/** As in `english/later`. */
export const later: Reworded<typeof english> = {
  details: { ...outOfOfficeDetails, ...usualDetails },
  sections: {
    ...laterScreens,
    average: averageLines,
    category: categoryLines,
    report: reportLines,
    run: runLines,
    score: scoreLines,
    series: seriesLines,
    reach,
    exchanged,
    commands,
    options: { ...options, ...averageOptions, ...scoreOptions, ...seriesOptions, ...reportOptions },
    commandLine,
  },
  titles: {
    ...guidelineTitles,
    ...laterTitles,
    ...outOfOfficeTitles,
    ...patternTitles,
    ...scenarioTitles,
    ...ruleTitles,
  },
  starting,
  expected: laterExpected,
};
