import type { Figure } from '../contract/figure.js';
import type { SidedLimit } from '../contract/shownPressure.js';
import { OUT_OF_OFFICE_FIGURES as F } from '../outOfOffice/figures.js';
import {
  HOME_AVERAGED,
  HOME_JUDGED,
  type HomeRules,
  DEFAULT_HOME_RULES as RULES,
  SITTING_USES,
} from '../outOfOffice/homeRules.js';
import { HOME_SCHEME_IDS } from '../outOfOffice/homeSchemes.js';
import { type Bounds, choiceField, wholeField } from './fieldShapes.js';
import type { Disagreement, FieldShape, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 6;
/** That which first had what a mean is of. */
const AVERAGED_SINCE = 9;

const OWN = { source: 'out-of-office handbook 3', sure: 'decision' } as const;

/** How readings taken at home are chosen, averaged and named. The bounds of a local value are this project's. */
export const HOME_SECTION: Section<HomeRules> = {
  fields: {
    readingsInSitting: wholeField(F.homeReadingsInSitting, [1, 4], null, SINCE),
    daysAsked: wholeField(F.homeDays, [3, 14], null, SINCE),
    droppedDays: wholeField(F.homeDroppedDays, [0, 3], null, SINCE),
    sittingUse: choiceField(
      SITTING_USES,
      RULES.sittingUse,
      { meaning: 'which readings of a sitting are averaged', ...OWN },
      SINCE,
    ),
    averaged: choiceField(
      HOME_AVERAGED,
      RULES.averaged,
      { meaning: 'what a mean is of: every reading, or every sitting, averaged first', ...OWN },
      AVERAGED_SINCE,
    ),
    leastDays: limitField(F.homeLeastDays, [1, 14], RULES.leastDays, ['>=']),
    leastReadings: limitField(F.homeLeastReadings, [1, 56], RULES.leastReadings, ['>=']),
    judged: choiceField(
      HOME_JUDGED,
      RULES.judged,
      { meaning: 'what is held against the limits: one mean, or morning and evening each', ...OWN },
      SINCE,
    ),
    highSystolic: limitField(F.homeHighSystolic, [110, 160], RULES.highSystolic),
    highDiastolic: limitField(F.homeHighDiastolic, [65, 100], RULES.highDiastolic),
    scheme: choiceField(
      HOME_SCHEME_IDS,
      RULES.scheme,
      { meaning: 'how a mean at home is named', ...OWN },
      SINCE,
    ),
    averagesWrist: {
      kind: 'yes-no',
      value: RULES.averagesWrist,
      unit: null,
      meaning: 'readings at the wrist are averaged, where there are no others',
      source: 'out-of-office handbook 4',
      sure: 'decision',
      since: SINCE,
    },
    dayStartsAt: wholeField(F.dayStartsAt, [0, 360], null, SINCE),
    morningTo: wholeField(F.morningTo, [540, 900], null, SINCE),
    eveningFrom: wholeField(F.eveningFrom, [900, 1260], null, SINCE),
    sittingGapMinutes: wholeField(F.sittingGapMinutes, [5, 120], null, SINCE),
  },
  agree,
};

/** A limit that a guideline may not have; its side is `>=` unless a place says otherwise. */
export function limitField(
  { unit, meaning, source, sure }: Figure,
  [low, high]: Bounds,
  value: SidedLimit | null,
  comparisons: readonly SidedLimit['comparison'][] = ['>=', '>'],
  since = SINCE,
): FieldShape<SidedLimit | null> {
  return {
    kind: 'limit',
    low,
    high,
    comparisons,
    orNone: true,
    value,
    unit,
    meaning,
    source,
    sure,
    since,
  };
}

/** A name needs both limits; the bounds of morning and evening keep them apart. */
function agree({ scheme, highSystolic, highDiastolic }: HomeRules): Disagreement[] {
  const faults: Disagreement[] = [];
  if (scheme !== 'none' && highSystolic === null) {
    faults.push({ key: 'highSystolic', expected: 'limit-for-names', figures: {} });
  }
  if (scheme !== 'none' && highDiastolic === null) {
    faults.push({ key: 'highDiastolic', expected: 'limit-for-names', figures: {} });
  }
  return faults;
}
