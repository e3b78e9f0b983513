import { figures } from '../contract/figure.js';

const AT_A_HOSPITAL = 'Arch Intern Med 1991;151:1409, aneroid gauges at a university hospital';
const IN_PRACTICE = 'Turner, Speechly and Bignell 2007, sphygmomanometer calibration: why, how and how often';
const LEGAL = 'OIML R 16-1:2002, mechanical sphygmomanometers';

/** Every number of keeping gauges: how far out one may be, how it is held against another, and how often. */
export const EQUIPMENT_FIGURES = figures({
  mostErrorMmHg: {
    value: 3,
    unit: 'mmHg',
    meaning: 'most that a gauge may be out at any point of its scale',
    source: `${AT_A_HOSPITAL}; Arch Intern Med 1970;125:1000 (bedside handbook 3.9)`,
    sure: 'found',
  },
  mostRestMmHg: {
    value: 3,
    unit: 'mmHg',
    meaning: 'most that a gauge may show with no pressure in it',
    source: `needle within the box at zero (bedside handbook 3.9); ${LEGAL}`,
    sure: 'memory',
  },
  fewestPoints: {
    value: 5,
    unit: 'points',
    meaning: 'fewest pressures at which a gauge is held against another',
    source: AT_A_HOSPITAL,
    sure: 'found',
  },
  fromMmHg: {
    value: 60,
    unit: 'mmHg',
    meaning: 'a comparison starts at this pressure or below, at zero too',
    source: 'no source: what is charted of a diastolic lies above it',
    sure: 'decision',
  },
  toMmHg: {
    value: 200,
    unit: 'mmHg',
    meaning: 'a comparison reaches this pressure',
    source: `no source: what is charted lies mostly below it; errors are commonest from 150 up (${AT_A_HOSPITAL})`,
    sure: 'decision',
  },
  pointsApartMmHg: {
    value: 50,
    unit: 'mmHg',
    meaning: 'pressures offered for a comparison are this far apart',
    source: LEGAL,
    sure: 'memory',
  },
  mostLeakMmHgPerMinute: {
    value: 4,
    unit: 'mmHg/min',
    meaning: 'most that cuff, tubes and gauge together may lose with the valve shut',
    source: LEGAL,
    sure: 'memory',
  },
  shortestLeakSeconds: {
    value: 60,
    unit: 's',
    meaning: 'shortest time over which a leak is judged',
    source: LEGAL,
    sure: 'memory',
  },
  zeroDays: {
    value: 7,
    unit: 'days',
    meaning: 'a noted check of the zero holds so long; it is looked at before each reading besides',
    source: 'bedside handbook 3.9 names none',
    sure: 'practice',
  },
  comparisonMonths: {
    value: 6,
    unit: 'months',
    meaning: 'a comparison of an aneroid or electronic gauge holds so long, unless it is dropped',
    source: `${AT_A_HOSPITAL}; ${IN_PRACTICE}`,
    sure: 'found',
  },
  mercuryComparisonMonths: {
    value: 12,
    unit: 'months',
    meaning: 'a comparison of a mercury gauge or an automatic device holds so long',
    source: IN_PRACTICE,
    sure: 'found',
  },
  leakMonths: {
    value: 6,
    unit: 'months',
    meaning: 'a leak test holds so long',
    source: 'bedside handbook 3.9 names none',
    sure: 'practice',
  },
  topMmHg: {
    value: 400,
    unit: 'mmHg',
    meaning: 'a pressure above this is on no gauge of the trade and is refused',
    source: 'no source',
    sure: 'decision',
  },
  longestLeakSeconds: {
    value: 3600,
    unit: 's',
    meaning: 'a leak test longer than this was mistyped and is refused',
    source: 'no source',
    sure: 'decision',
  },
});
