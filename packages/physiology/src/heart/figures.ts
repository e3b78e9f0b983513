import { figures } from '@evenfall/clinical';

const BOOK = (section: string) => `physiology handbook ${section}`;

/** Every number of the heart period and of the strength of a beat. */
export const HEART_FIGURES = figures({
  mayerHz: {
    value: 0.1,
    unit: 'Hz',
    meaning: 'the slow wave of heart period and pressure',
    source: BOOK('2.1'),
    sure: 'memory',
  },
  mayerWanderTurns: {
    value: 0.6,
    unit: 'turns',
    meaning:
      'how far the slow wave runs ahead or behind (SD, over about a minute); its frequency stays within 0.07 to 0.12 Hz nearly always',
    source: BOOK('2.1, choice of the book; as a wandering phase: decision of this project'),
    sure: 'decision',
  },
  mayerWanderSeconds: {
    value: 60,
    unit: 's',
    meaning: 'time constant of that wandering',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
  depthFromPerMinute: {
    value: 12,
    unit: '/min',
    meaning:
      'above this rate of breathing the swing of the heart period with the breath halves with each doubling',
    source: BOOK('2.1'),
    sure: 'decision',
  },
  breathShape: {
    value: 0.89,
    unit: 'share',
    meaning:
      'breaths are no sines: lopsided and of uneven depth they change the interval from beat to beat more than a sine of the same amplitude, by as much as this takes back',
    source:
      'fitted so that the RMSSD of physiology handbook 2.1 comes about (packages/physiology/prove/person.mjs, row 28)',
    sure: 'derived',
  },
  independentShare: {
    value: 0.04,
    unit: 'share',
    meaning:
      'SD of the intervals of a pulse whose beats know nothing of each other: no heart beats so, but what windows do to a count is worked out with it',
    source: BOOK('5 (count errors by window: 4 % jitter)'),
    sure: 'derived',
  },
  leastDriftSeconds: {
    value: 0.008,
    unit: 's',
    meaning: 'least SD of the slow part of the heart period',
    source: BOOK('2.1'),
    sure: 'decision',
  },
  largestStep: {
    value: 0.15,
    unit: 'share',
    meaning: 'a sinus interval differs from the one before by no more than this',
    source: BOOK('2.1'),
    sure: 'decision',
  },
  shortestSeconds: {
    value: 0.33,
    unit: 's',
    meaning: 'shortest sinus interval',
    source: BOOK('2.1'),
    sure: 'decision',
  },
  leastSeconds: {
    value: 0.2,
    unit: 's',
    meaning: 'no beat follows another sooner, whatever the rhythm: the heart has not recovered',
    source: 'assumption',
    sure: 'decision',
  },
  sinusLeastShare: {
    value: 0.8,
    unit: 'share',
    meaning: 'at rates whose mean interval comes near the shortest, the shortest is this share of the mean',
    source: 'assumption',
    sure: 'decision',
  },
  mostVariationShare: {
    value: 0.45,
    unit: 'share',
    meaning:
      'waves and 2.5 SD of the drift of the heart period together, at most this share of its mean: a fast heart varies little',
    source: 'assumption',
    sure: 'decision',
  },
  couplingMean: {
    value: 0.6,
    unit: 'share',
    meaning: 'interval before a premature beat beside the sinus interval',
    source: 'Park 2015, Korean Circ J 45:294 (physiology handbook 2.2)',
    sure: 'found',
  },
  couplingSd: {
    value: 0.1,
    unit: 'share',
    meaning: 'its SD',
    source: BOOK('2.2'),
    sure: 'decision',
  },
  couplingLow: { value: 0.4, unit: 'share', meaning: 'its least', source: BOOK('2.2'), sure: 'decision' },
  couplingHigh: { value: 0.85, unit: 'share', meaning: 'its most', source: BOOK('2.2'), sure: 'decision' },
  prematurePower: {
    value: 0.8,
    unit: 'power',
    meaning: 'strength of a premature beat grows with its coupling between least and most to this power',
    source: BOOK('2.2'),
    sure: 'decision',
  },
  atrialResetSeconds: {
    value: 0.08,
    unit: 's',
    meaning: 'pause after a premature beat of the atria beyond a sinus interval',
    source: BOOK('2.2'),
    sure: 'decision',
  },
  interpolatedShare: {
    value: 0.05,
    unit: 'share',
    meaning: 'premature beats that leave no pause',
    source: BOOK('2.2'),
    sure: 'decision',
  },
  afterPauseGain: {
    value: 0.098,
    unit: 'share',
    meaning: 'rise of the pulse amplitude after a pause',
    source:
      'regulation after ventricular premature complexes, J Physiol, PMC2290033 (physiology handbook 2.2)',
    sure: 'found',
  },
  afterPauseGainSd: { value: 0.054, unit: 'share', meaning: 'its SD', source: BOOK('2.2'), sure: 'found' },
  afterPauseGainFailing: {
    value: 0.487,
    unit: 'share',
    meaning: 'the same in a heart that fails',
    source: 'PMC2290033 (physiology handbook 2.2)',
    sure: 'found',
  },
  afterPauseGainFailingSd: {
    value: 0.326,
    unit: 'share',
    meaning: 'its SD',
    source: BOOK('2.2'),
    sure: 'found',
  },
  turbulenceOnset: {
    value: 0.055,
    unit: 'share',
    meaning: 'the two intervals after the pause are shorter by this',
    source: 'PMC2290033 (physiology handbook 2.2)',
    sure: 'found',
  },
  turbulenceOnsetFailing: {
    value: 0.006,
    unit: 'share',
    meaning: 'the same in a heart that fails',
    source: 'PMC2290033 (physiology handbook 2.2)',
    sure: 'found',
  },
  turbulenceSeconds: {
    value: 0.0307,
    unit: 's',
    meaning: 'then each interval is longer than the one before by this',
    source: 'PMC2290033 (physiology handbook 2.2)',
    sure: 'found',
  },
  turbulenceSecondsFailing: {
    value: 0.0085,
    unit: 's',
    meaning: 'the same in a heart that fails',
    source: 'PMC2290033 (physiology handbook 2.2)',
    sure: 'found',
  },
  fibrillationTailHz: {
    value: 6,
    unit: '/s',
    meaning:
      'rate of the exponential part of the intervals in atrial fibrillation, at its mean rate of 81.4/min',
    source: 'Hennig 2006, arXiv cond-mat/0605295: 3 to 12 (physiology handbook 2.3)',
    sure: 'found',
  },
  fibrillationFloorSeconds: {
    value: 0.3,
    unit: 's',
    meaning: 'shortest interval in atrial fibrillation',
    source: BOOK('2.3'),
    sure: 'decision',
  },
  fibrillationSlowSd: {
    value: 0.105,
    unit: 'share',
    meaning: 'SD of the slow part of the intervals beside its mean (0.06 of 0.571 s)',
    source: BOOK('2.3'),
    sure: 'decision',
  },
  fibrillationSlowSdFast: {
    value: 0.02,
    unit: 'share',
    meaning:
      'the same at a fast rate, where hardly an interval fills a ventricle: a wider one has minutes that lose no beat and minutes that lose two of three',
    source:
      'no source: decision of this project; physiology handbook 2.3 gives no SD at 136/min, a deficit of 10 to 30, and a serial correlation of about 0',
    sure: 'decision',
  },
  fibrillationSlowSeconds: {
    value: 14.4,
    unit: 's',
    meaning: 'time constant of that slow part: a correlation of 0.95 from beat to beat',
    source: BOOK('2.3'),
    sure: 'decision',
  },
  fillingFromSeconds: {
    value: 0.15,
    unit: 's',
    meaning: 'an interval as short as this gives no stroke',
    source: BOOK('2.3'),
    sure: 'derived',
  },
  fillingFromFastSeconds: {
    value: 0.295,
    unit: 's',
    meaning:
      'the same at a fast rate, so that the deficit of the book (10 to 30 a minute at 136, about 24 in its scenario) comes about',
    source: 'no source: decision of this project; physiology handbook 2.3 gives 0.15 to 0.2',
    sure: 'decision',
  },
  feltShare: {
    value: 0.55,
    unit: 'share',
    meaning: 'at an open wrist a beat weaker than this beside its neighbours is not felt',
    source:
      'no source: decision of this project, by physiology handbook 2.2 (a premature beat of 0.17 is not felt)',
    sure: 'decision',
  },
  fillingSeconds: {
    value: 0.3,
    unit: 's',
    meaning: 'time constant with which the stroke grows with the interval before it',
    source: BOOK('2.3'),
    sure: 'derived',
  },
  beforeLastWeight: {
    value: 0.15,
    unit: 'share',
    meaning: 'how much a long interval before the last one weakens the stroke',
    source: BOOK('2.3'),
    sure: 'derived',
  },
  strokeNoise: {
    value: 0.05,
    unit: 'share',
    meaning: 'what is left of the strength of a stroke by chance (SD)',
    source: BOOK('2.3'),
    sure: 'decision',
  },
  ejectionSeconds: {
    value: 0.15,
    unit: 's',
    meaning: 'the run-off between beats starts this long after the foot of the pulse',
    source: BOOK('3.3'),
    sure: 'decision',
  },
  runOffToMmHg: {
    value: 22,
    unit: 'mmHg',
    meaning: 'pressure to which the arteries would run off: 20 to 25',
    source: BOOK('3.3'),
    sure: 'decision',
  },
  blockSpread: {
    value: 0.01,
    unit: 'share',
    meaning: 'SD of the intervals in complete heart block',
    source: BOOK('2.4'),
    sure: 'decision',
  },
  blockSwingMmHg: {
    value: 6,
    unit: 'mmHg',
    meaning: 'largest change of the systolic by the atria in complete heart block, either way',
    source: BOOK('2.4'),
    sure: 'decision',
  },
  blockSwingDb: {
    value: 6,
    unit: 'dB',
    meaning: 'largest change of loudness with it, either way',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
  longPauseGain: {
    value: 0.08,
    unit: 'share',
    meaning: 'gain of the beat after a dropped one',
    source: BOOK('2.4'),
    sure: 'decision',
  },
  pauseEveryLow: {
    value: 40,
    unit: 's',
    meaning: 'least time between two sinus pauses',
    source: BOOK('2.4'),
    sure: 'decision',
  },
  pauseEveryHigh: {
    value: 90,
    unit: 's',
    meaning: 'most time between two sinus pauses',
    source: BOOK('2.4'),
    sure: 'decision',
  },
  pauseLow: { value: 2.2, unit: 's', meaning: 'shortest sinus pause', source: BOOK('2.4'), sure: 'decision' },
  pauseHigh: { value: 2.8, unit: 's', meaning: 'longest sinus pause', source: BOOK('2.4'), sure: 'decision' },
  alternansDiastolicShare: {
    value: 0.2,
    unit: 'share',
    meaning: 'change of the diastolic in alternans, either way, beside the difference of the systolics',
    source: BOOK('2.4'),
    sure: 'decision',
  },
  slowSdMmHg: {
    value: 2.5,
    unit: 'mmHg',
    meaning: 'SD of the slow wandering of the systolic',
    source: BOOK('3.1'),
    sure: 'decision',
  },
  slowSpread: {
    value: 0.5,
    unit: 'share',
    meaning: 'SD of the logarithm of that SD between people',
    source:
      'chosen so that the range over ten minutes differs between people as in Mukadam 2023 (21, SD 9; physiology handbook 3.1)',
    sure: 'derived',
  },
  slowSeconds: { value: 60, unit: 's', meaning: 'its time constant', source: BOOK('3.1'), sure: 'decision' },
  beatSdMmHg: {
    value: 1.25,
    unit: 'mmHg',
    meaning: 'what is left from beat to beat, systolic (SD, 1.0 to 1.5)',
    source: BOOK('3.1'),
    sure: 'decision',
  },
  beatDiastolicSdMmHg: {
    value: 1,
    unit: 'mmHg',
    meaning: 'the same, diastolic',
    source: BOOK('2.3'),
    sure: 'decision',
  },
  paradoxMmHg: {
    value: 10,
    unit: 'mmHg',
    meaning: 'a swing of the systolic with the breath over this is a paradox',
    source: 'diagnostic-accuracy page citing the JAMA rational-examination review (physiology handbook 2.5)',
    sure: 'second-hand',
  },
  breathDiastolicShare: {
    value: 0.35,
    unit: 'share',
    meaning: 'swing of the diastolic with the breath beside that of the systolic',
    source: BOOK('3.1'),
    sure: 'decision',
  },
  slowDiastolicShare: {
    value: 0.6,
    unit: 'share',
    meaning: 'slow waves of the diastolic beside those of the systolic',
    source: BOOK('3.1'),
    sure: 'decision',
  },
  slowWaveLagSeconds: {
    value: 3.5,
    unit: 's',
    meaning:
      'the slow wave of the pressure comes this long after the opposite one of the heart period (3 to 4)',
    source: BOOK('3.1'),
    sure: 'decision',
  },
});

/** A row of the table of sinus rhythms: targets over five minutes at a reference rate of breathing. */
export type VariationTargets = {
  readonly sdnnMs: number;
  readonly rmssdMs: number;
  /** Variance of the slow wave beside that of the breath. */
  readonly slowShare: number;
  readonly breathHz: number;
  /** How the slow rest is shared over time constants of 5, 15, 45, 135 and 405 s: equal, or as in a heart that fails. */
  readonly drift: 'even' | 'failing';
  /** SD of what each interval has for itself, as a share of the mean one; 0 in every heart of the book. */
  readonly independentShare: number;
};
