import { figures } from '@evenfall/clinical';

const BOOK = 'physiology handbook 4';

/** Every number of how a pressure settles, and of what being measured does to it. */
export const SLOW_FIGURES = figures({
  sittingHalfMinutes: {
    value: 5.8,
    unit: 'min',
    meaning: 'what sitting down has raised is half gone after this',
    source: 'Sala 2006, Am J Hypertens 19:713 (physiology handbook 4)',
    sure: 'found',
  },
  sittingDiastolicShare: {
    value: 0.37,
    unit: 'share',
    meaning: 'its diastolic part beside the systolic: 4.3 of 11.6',
    source: 'Sala 2006 (physiology handbook 4)',
    sure: 'found',
  },
  firstMinutes: {
    value: 1.05,
    unit: 'min',
    meaning: 'time constant with which the effect of the first inflation goes',
    source: `${BOOK}: fitted to the falls of EPIC-Potsdam, Eur J Epidemiol 2000`,
    sure: 'derived',
  },
  firstHoldSeconds: {
    value: 30,
    unit: 's',
    meaning:
      'the effect of the first inflation stays whole for as long as the first reading lasts, and then goes',
    source:
      'no source: decision of this project; without it the published fall to the second reading does not come about',
    sure: 'decision',
  },
  firstDiastolicShare: {
    value: 0.33,
    unit: 'share',
    meaning: 'its diastolic part beside the systolic',
    source: BOOK,
    sure: 'derived',
  },
  firstMmHg: {
    value: 5.5,
    unit: 'mmHg',
    meaning: 'effect of the first inflation on the systolic',
    source: `${BOOK}: fitted to the falls of EPIC-Potsdam`,
    sure: 'derived',
  },
  firstSdMmHg: {
    value: 2,
    unit: 'mmHg',
    meaning: 'how much that differs between people (SD)',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
  coatRiseMinutes: {
    value: 2,
    unit: 'min',
    meaning: 'the effect of who measures is highest this long after their coming in',
    source: 'Mancia 1985, J Hypertens Suppl 3:S421: peak within 4 min (physiology handbook 4)',
    sure: 'found',
  },
  coatHoldMinutes: {
    value: 3,
    unit: 'min',
    meaning: 'and stays there until then',
    source: BOOK,
    sure: 'decision',
  },
  coatFallMinutes: {
    value: 4.2,
    unit: 'min',
    meaning: 'time constant with which it goes: 15 to 28 % of the peak is left at the tenth minute',
    source: 'Mancia 1985, 1987 (physiology handbook 4)',
    sure: 'found',
  },
  coatDiastolicShare: {
    value: 0.59,
    unit: 'share',
    meaning: 'its diastolic part beside the systolic: 13 of 22',
    source: 'reference-chart caption of the same data (physiology handbook 4)',
    sure: 'second-hand',
  },
  coatPulsePerMmHg: {
    value: 0.78,
    unit: '/min per mmHg',
    meaning: 'rise of the pulse for each mmHg of the rise in pressure: 17.7 for 22.6',
    source: 'Mancia 1985 (physiology handbook 4)',
    sure: 'found',
  },
  coatNurseShare: {
    value: 0.53,
    unit: 'share',
    meaning: 'what a nurse raises beside a doctor: 46.7 % less',
    source: 'Mancia 1987, Hypertension 9:209 (physiology handbook 4)',
    sure: 'found',
  },
});
