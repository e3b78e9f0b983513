import { figures } from '../contract/figure.js';

const CONVENTIONS = 'docs/conventions.md section 5';
/** The limits at which one sign alone gives the most points in an early-warning score of adults. */
const RCP17 = 'Royal College of Physicians 2017, early-warning score for adults (bedside handbook 1.7, 5.2)';
const HOLLERBACH = 'Hollerbach 1990, Heart Lung 19:258';

/** Every number of counting against a watch. The protocol's `count` section starts from these. */
export const COUNT_FIGURES = figures({
  longestWindowSeconds: {
    value: 300,
    unit: 's',
    meaning: 'longest window of a count that is taken as typed',
    source: CONVENTIONS,
    sure: 'decision',
  },
  shortestWindowSeconds: {
    value: 0.001,
    unit: 's',
    meaning: 'a shorter window is refused: no clock here tells less, and its rates would soon be no numbers',
    source: CONVENTIONS,
    sure: 'decision',
  },
  ceilingPerMinute: {
    value: 400,
    unit: '/min',
    meaning: 'a rate above this is refused as impossible',
    source: CONVENTIONS,
    sure: 'decision',
  },
  fullWindowSeconds: {
    value: 60,
    unit: 's',
    meaning: 'the full minute that a short count is followed by',
    source: 'bedside handbook 1.5',
    sure: 'practice',
  },
  pulseWindowSeconds: {
    value: 30,
    unit: 's',
    meaning: 'usual window for a pulse that is felt to be regular',
    source: HOLLERBACH,
    sure: 'found',
  },
  breathsWindowSeconds: {
    value: 60,
    unit: 's',
    meaning: 'usual window for breaths',
    source: 'Rimbi 2019, QJM 112:513; WHO, Integrated Management of Childhood Illness handbook',
    sure: 'found',
  },
  breathsShortWindowSeconds: {
    value: 30,
    unit: 's',
    meaning: 'shortest window for regular breaths where the local protocol allows a short one',
    source: 'bedside handbook 2.1',
    sure: 'practice',
  },
  slowPerMinute: {
    value: 60,
    unit: '/min',
    meaning: 'a short pulse count below this is followed by a full minute',
    source: 'bedside handbook 1.5',
    sure: 'practice',
  },
  fastPerMinute: {
    value: 100,
    unit: '/min',
    meaning: 'a short pulse count above this is followed by a full minute',
    source: 'bedside handbook 1.5',
    sure: 'practice',
  },
  barredAbovePerMinute: {
    value: 100,
    unit: '/min',
    meaning: 'a pulse above this is too fast for the barred short window',
    source: HOLLERBACH,
    sure: 'found',
  },
  barredWhenFastSeconds: {
    value: 15,
    unit: 's',
    meaning: 'a window this short or shorter is never enough for a pulse that is too fast for it',
    source: HOLLERBACH,
    sure: 'found',
  },
  youngUnderMonths: {
    value: 24,
    unit: 'months',
    meaning: 'infants and young children, counted for a full minute, are under this age',
    source: 'bedside handbook 1.5',
    sure: 'memory',
  },
  disagreementPerMinute: {
    value: 10,
    unit: '/min',
    meaning:
      'a short pulse count that differs from the previous rate or a display by more than this is counted again',
    source: 'bedside handbook 1.5',
    sure: 'practice',
  },
  verySlowPulsePerMinute: {
    value: 40,
    unit: '/min',
    meaning: 'an adult pulse this slow or slower: look at the person before anything else',
    source: RCP17,
    sure: 'second-hand',
  },
  veryFastPulsePerMinute: {
    value: 131,
    unit: '/min',
    meaning: 'an adult pulse this fast or faster: look at the person before anything else',
    source: RCP17,
    sure: 'second-hand',
  },
  verySlowBreathsPerMinute: {
    value: 8,
    unit: '/min',
    meaning: 'adult breaths this slow or slower: look at the person before anything else',
    source: RCP17,
    sure: 'second-hand',
  },
  veryFastBreathsPerMinute: {
    value: 25,
    unit: '/min',
    meaning: 'adult breaths this fast or faster: look at the person before anything else',
    source: RCP17,
    sure: 'second-hand',
  },
  adultFromMonths: {
    value: 192,
    unit: 'months',
    meaning:
      'the limits of very slow and very fast are for people of this age and over, or of an age not known',
    source: RCP17,
    sure: 'second-hand',
  },
  deficitReportPerMinute: {
    value: 10,
    unit: '/min',
    meaning: 'a pulse deficit above this is often quoted as worth reporting; any repeatable one is',
    source: 'bedside handbook 1.10',
    sure: 'memory',
  },
});
