import { figures } from '../contract/figure.js';

const CONVENTIONS = 'docs/conventions.md section 6';
const AAP17 = 'Flynn 2017, Pediatrics 140:e20171904 (bedside handbook 3.5, 3.6)';
const PLAUSIBLE = 'no source: numbers this far out are asked about, never refused';

/** Every number of letting a cuff down and of reading it. The protocol's `inflation` and `deflation` sections start from these. */
export const DEFLATION_FIGURES = figures({
  marginMmHg: {
    value: 30,
    unit: 'mmHg',
    meaning: 'how far above the pressure at which the pulse is lost the cuff is pumped up',
    source: 'bedside handbook 3.5',
    sure: 'practice',
  },
  targetStepMmHg: {
    value: 10,
    unit: 'mmHg',
    meaning:
      'a target made from an earlier reading is rounded up to this step, so that it does not give the reading away',
    source: 'no source: decision of this project',
    sure: 'practice',
  },
  smallMarginMmHg: {
    value: 20,
    unit: 'mmHg',
    meaning: 'a margin under this is flagged as small',
    source: AAP17,
    sure: 'found',
  },
  insideWithinMmHg: {
    value: 4,
    unit: 'mmHg',
    meaning:
      'without times, a first sound this little under the peak or less may not be the first: about one beat at the taught rate',
    source: 'bedside handbook 3.6: 3 mmHg a second at 50 a minute is 3.6 mmHg a beat',
    sure: 'derived',
  },
  gapAboveBackMmHg: {
    value: 0,
    unit: 'mmHg',
    meaning: 'the pulse coming back further than this above the first sound points to a gap',
    source: 'bedside handbook 3.4, 3.5: by feel is at or a little below by ear',
    sure: 'memory',
  },
  gapAboveLostMmHg: {
    value: 10,
    unit: 'mmHg',
    meaning:
      'the pulse lost while pumping up further than this above the first sound points to a gap: the pump moves on about this much in a beat',
    source: 'bedside handbook 3.4: about 10 mmHg a second upwards, at 60 a minute',
    sure: 'derived',
  },
  slowestMmHgPerSecond: {
    value: 2,
    unit: 'mmHg/s',
    meaning: 'letting down slower than this is flagged',
    source: AAP17,
    sure: 'found',
  },
  fastestMmHgPerSecond: {
    value: 3,
    unit: 'mmHg/s',
    meaning: 'letting down faster than this is flagged',
    source: AAP17,
    sure: 'found',
  },
  fastestPerBeatMmHg: {
    value: 2,
    unit: 'mmHg',
    meaning: 'at a slow or irregular pulse, a drop in one beat above this is flagged',
    source: 'Korean guideline 2013, table 4 (bedside handbook 3.6)',
    sure: 'found',
  },
  slowPulsePerMinute: {
    value: 50,
    unit: '/min',
    meaning: 'below this the drop is judged by the beat and not by the second',
    source: 'bedside handbook 3.6, slow pulse; the number is that of 1.7',
    sure: 'memory',
  },
  waitAfterEstimateSeconds: {
    value: 15,
    unit: 's',
    meaning: 'shortest rest of the arm between the estimate by feel and the next inflation',
    source: 'bedside handbook 3.4',
    sure: 'memory',
  },
  waitAfterReadingSeconds: {
    value: 60,
    unit: 's',
    meaning: 'shortest rest of the arm between two readings',
    source: 'bedside handbook 3.10',
    sure: 'memory',
  },
  gaugeStepMmHg: {
    value: 2,
    unit: 'mmHg',
    meaning: 'graduation of a gauge where none was named',
    source: 'bedside handbook 3.9',
    sure: 'memory',
  },
  toZeroMmHg: {
    value: 10,
    unit: 'mmHg',
    meaning:
      'sounds heard down to under this went on to zero: the muffling is used in place of the last sound',
    source: CONVENTIONS,
    sure: 'decision',
  },
  threeNumbersMmHg: {
    value: 10,
    unit: 'mmHg',
    meaning: 'muffling and last sound further apart than this are both written',
    source: 'bedside handbook 3.7',
    sure: 'memory',
  },
  lowestSystolic: {
    value: 50,
    unit: 'mmHg',
    meaning: 'a systolic under this is flagged as implausible',
    source: PLAUSIBLE,
    sure: 'decision',
  },
  highestSystolic: {
    value: 260,
    unit: 'mmHg',
    meaning: 'a systolic over this is flagged as implausible',
    source: PLAUSIBLE,
    sure: 'decision',
  },
  lowestDiastolic: {
    value: 30,
    unit: 'mmHg',
    meaning: 'a diastolic (as used) under this is flagged as implausible',
    source: PLAUSIBLE,
    sure: 'decision',
  },
  highestDiastolic: {
    value: 150,
    unit: 'mmHg',
    meaning: 'a diastolic (as used) over this is flagged as implausible',
    source: PLAUSIBLE,
    sure: 'decision',
  },
  smallestPulsePressureMmHg: {
    value: 10,
    unit: 'mmHg',
    meaning: 'a systolic less than this above the diastolic is flagged as implausible',
    source: PLAUSIBLE,
    sure: 'decision',
  },
  largestPulsePressureMmHg: {
    value: 120,
    unit: 'mmHg',
    meaning: 'a systolic more than this above the diastolic is flagged as implausible',
    source: PLAUSIBLE,
    sure: 'decision',
  },
  gaugeTopMmHg: {
    value: 300,
    unit: 'mmHg',
    meaning: 'top of the scale: a pressure above this is refused',
    source: 'scale of a sphygmomanometer, from memory',
    sure: 'memory',
  },
  coarsestStepMmHg: {
    value: 10,
    unit: 'mmHg',
    meaning: 'a graduation coarser than this is refused',
    source: 'bedside handbook 3.9: numbered each 10 or 20, marked finer',
    sure: 'decision',
  },
  ceilingPerMinute: {
    value: 400,
    unit: '/min',
    meaning: 'a pulse above this is refused as impossible',
    source: 'docs/conventions.md section 5',
    sure: 'decision',
  },
  shortestSeconds: {
    value: 1,
    unit: 's',
    meaning: 'between two moments closer than this no rate is told',
    source: CONVENTIONS,
    sure: 'decision',
  },
  repeatScatterMmHg: {
    value: 6,
    unit: 'mmHg',
    meaning: 'SD of the systolic readings of one person minutes apart, told beside a range',
    source:
      'three readings of 85 people by two observers, Bland and Altman 1999: 6.1 (assessment handbook 3.2)',
    sure: 'derived',
  },
  markScatterMs: {
    value: 50,
    unit: 'ms',
    meaning:
      'how much a touch at a sound scatters by itself (SD); clocks of two devices further apart are said to be coarser than the thumb',
    source: 'physiology handbook 11: a reaction of 0.20 s, scattering by 0.05 s, is chosen there',
    sure: 'decision',
  },
  mostReadings: {
    value: 99,
    unit: 'readings',
    meaning: 'most readings that a written mean (148/92x2) may be of',
    source: 'docs/conventions.md section 1',
    sure: 'decision',
  },
  endDigitsPer: {
    value: 10,
    unit: 'mmHg',
    meaning: 'end digits come again after so many',
    source: 'bedside handbook 3.9',
    sure: 'derived',
  },
  endDigitsLeast: {
    value: 25,
    unit: 'readings',
    meaning: 'with fewer readings of one observer nothing is said of end digits',
    source: 'bedside handbook 3.9',
    sure: 'derived',
  },
  endDigitsLikelyP: {
    value: 0.05,
    unit: 'probability',
    meaning: 'end digits as uneven as these come by chance less often than this: a preference is likely',
    source: 'bedside handbook 3.9',
    sure: 'derived',
  },
  endDigitsClearP: {
    value: 0.01,
    unit: 'probability',
    meaning: 'end digits as uneven as these come by chance less often than this: a preference is clear',
    source: 'bedside handbook 3.9',
    sure: 'derived',
  },
});
