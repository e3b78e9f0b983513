import {
  type AmbulatoryRules,
  PERIODS,
  DEFAULT_AMBULATORY_RULES as RULES,
  WHOLE_MEANS,
} from '../outOfOffice/ambulatoryRules.js';
import { EDITING_RULES } from '../outOfOffice/artefacts.js';
import { OUT_OF_OFFICE_FIGURES as F } from '../outOfOffice/figures.js';
import { PERIOD_SCHEME_IDS } from '../outOfOffice/periodCategories.js';
import { choiceField, choicesField, wholeField } from './fieldShapes.js';
import { limitField } from './homeSection.js';
import type { Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 6;

const minutes = [0, 1439] as const;

/** The schema of protocols that first said how long may be without a reading. */
const EMPTY_SINCE = 7;

/** The schema of protocols that first said how means are named and how long a recording is to last. */
const NAMES_SINCE = 8;

/** How a recording over 24 hours is edited, divided and held against limits. The bounds of a local value are this project's. */
export const AMBULATORY_SECTION: Section<AmbulatoryRules> = {
  fields: {
    leastPercent: limitField(F.leastPercent, [30, 100], RULES.leastPercent, ['>=']),
    leastDay: limitField(F.leastDayReadings, [1, 60], RULES.leastDay, ['>=']),
    leastNight: limitField(F.leastNightReadings, [1, 30], RULES.leastNight, ['>=']),
    longestEmptyHours: limitField(
      F.olderResearchEmptyHours,
      [1, 12],
      RULES.longestEmptyHours,
      ['>=', '>'],
      EMPTY_SINCE,
    ),
    leastHours: limitField(F.canadaLeastHours, [12, 24], RULES.leastHours, ['>='], NAMES_SINCE),
    judged: choicesField(
      PERIODS,
      RULES.judged,
      {
        meaning: 'which means are held against their limits; any at its limit is high',
        source: 'out-of-office handbook 5',
        sure: 'decision',
      },
      SINCE,
    ),
    wholeMean: choiceField(
      WHOLE_MEANS,
      RULES.wholeMean,
      {
        meaning: 'which mean over 24 hours is held against its limit',
        source: 'out-of-office handbook 13',
        sure: 'decision',
      },
      SINCE,
    ),
    wholeSystolic: limitField(F.wholeHighSystolic, [110, 150], RULES.wholeSystolic),
    wholeDiastolic: limitField(F.wholeHighDiastolic, [65, 95], RULES.wholeDiastolic),
    daySystolic: limitField(F.dayHighSystolic, [110, 160], RULES.daySystolic),
    dayDiastolic: limitField(F.dayHighDiastolic, [65, 100], RULES.dayDiastolic),
    nightSystolic: limitField(F.nightHighSystolic, [95, 140], RULES.nightSystolic),
    nightDiastolic: limitField(F.nightHighDiastolic, [55, 90], RULES.nightDiastolic),
    scheme: choiceField(
      PERIOD_SCHEME_IDS,
      RULES.scheme,
      {
        meaning: 'how a mean of a recording is named',
        source: 'out-of-office handbook 8.1',
        sure: 'decision',
      },
      NAMES_SINCE,
    ),
    editing: choiceField(
      EDITING_RULES,
      RULES.editing,
      {
        meaning: 'by which rule a reading is taken for an artefact',
        source: F.rangeALeastSystolic.source,
        sure: F.rangeALeastSystolic.sure,
      },
      SINCE,
    ),
    editingSds: {
      kind: 'limit',
      low: 1,
      high: 5,
      comparisons: ['>'],
      orNone: true,
      value: RULES.editingSds,
      unit: 'SD',
      meaning: 'a reading further than this from the mean of its period is taken for an artefact too',
      source: 'study with direct comparison, Oxford (out-of-office handbook 6)',
      sure: 'found',
      since: SINCE,
    },
    dayFrom: wholeField(F.dayFrom, minutes, null, SINCE),
    dayTo: wholeField(F.dayTo, minutes, null, SINCE),
    nightFrom: wholeField(F.nightFrom, minutes, null, SINCE),
    nightTo: wholeField(F.nightTo, minutes, null, SINCE),
    reportsStiffness: {
      kind: 'yes-no',
      value: RULES.reportsStiffness,
      unit: null,
      meaning: 'the stiffness index is reported; it depends on scatter and on the fall by night',
      source: 'out-of-office handbook 14',
      sure: 'found',
      since: SINCE,
    },
  },
  agree: () => [],
};
