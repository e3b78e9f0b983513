import { type Figure, figures } from '../contract/figure.js';

const WARREN = 'Warren 2010, Br J Gen Pract 60:675 (out-of-office handbook 17.1)';
const percent = (value: number, meaning: string): Figure => ({
  value,
  unit: '% of the level',
  meaning,
  source: WARREN,
  sure: 'found',
});
const own = (value: number, unit: string, meaning: string, where: string): Figure => ({
  value,
  unit,
  meaning,
  source: `out-of-office handbook ${where}`,
  sure: 'decision',
});

/** Every number of the model of the usual pressure. */
export const USUAL_FIGURES = figures({
  officeCvSystolicPercent: percent(8.6, 'within-person variation of systolic between office visits'),
  officeCvDiastolicPercent: percent(8.6, 'within-person variation of diastolic between office visits'),
  homeCvSystolicPercent: percent(
    4.2,
    'within-person variation of systolic between weeks of measuring at home',
  ),
  homeCvDiastolicPercent: percent(
    3.9,
    'within-person variation of diastolic between weeks of measuring at home',
  ),
  ambulatoryCvSystolicPercent: percent(
    5.5,
    'within-person variation of systolic between recordings over 24 hours',
  ),
  ambulatoryCvDiastolicPercent: percent(
    4.9,
    'within-person variation of diastolic between recordings over 24 hours',
  ),
  standardDays: own(7, 'days', 'a week at home, of which the variation is published', '17.4'),
  standardReadings: own(28, 'readings', 'a week at home, of which the variation is published', '17.4'),
  readingSdSystolic: {
    value: 4.29,
    unit: 'mmHg',
    meaning: 'systolic from reading to reading, where the series itself does not tell',
    source: 'NHANES 2009 to 2012, within a visit (out-of-office handbook 17.1)',
    sure: 'derived',
  },
  readingSdDiastolic: {
    value: 3.91,
    unit: 'mmHg',
    meaning: 'diastolic from reading to reading, where the series itself does not tell',
    source: 'NHANES 2009 to 2012, within a visit (out-of-office handbook 17.1)',
    sure: 'derived',
  },
  daySdSystolic: own(
    5,
    'mmHg',
    'systolic from day to day, where the series itself does not tell',
    '17.4 (published: not found)',
  ),
  daySdDiastolic: own(
    3,
    'mmHg',
    'diastolic from day to day, where the series itself does not tell',
    '17.4 (published: not found)',
  ),
  homeOffsetSystolic: {
    value: -5,
    unit: 'mmHg',
    meaning: 'home minus office systolic near 140/90',
    source:
      'ACC/AHA 2025 pocket guideline, table 7: office 140/90 is 135/85 at home (out-of-office handbook 8)',
    sure: 'found',
  },
  homeOffsetDiastolic: {
    value: -5,
    unit: 'mmHg',
    meaning: 'home minus office diastolic near 140/90',
    source:
      'ACC/AHA 2025 pocket guideline, table 7: office 140/90 is 135/85 at home (out-of-office handbook 8)',
    sure: 'found',
  },
  homeOffsetSd: own(5, 'mmHg', 'how uncertain the difference between home and office is', '17.4'),
  intervalZ: own(1.96, 'SD', 'either side of the mean for an interval of 95 %', '17.4'),
  settledProbability: {
    value: 0.8,
    unit: 'probability',
    meaning: 'with this chance on one side of the threshold the question is taken as settled',
    source: 'Powers 2011, Ann Intern Med: 80 % certainty',
    sure: 'second-hand',
  },
  mostMoreDays: own(28, 'days', 'further than this ahead nothing is said of more days', '17.5'),
  leastDaysOfOwn: own(
    3,
    'days',
    'fewest days of two readings each from which the variation of the series itself is taken',
    '17.4',
  ),
});
