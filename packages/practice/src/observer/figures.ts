import { figures } from '@evenfall/clinical';

const BOOK = (section: string) => `physiology handbook ${section}`;

/** What an observer's ear, eye and hand are like. */
export const OBSERVER_FIGURES = figures({
  reactionSeconds: {
    value: 0.2,
    unit: 's',
    meaning: 'from a sound to the eye on the needle, in a practised reader',
    source: BOOK('11'),
    sure: 'decision',
  },
  reactionSdSeconds: { value: 0.05, unit: 's', meaning: 'its SD', source: BOOK('11'), sure: 'decision' },
  slowReactionSeconds: {
    value: 0.5,
    unit: 's',
    meaning: 'from here on a mark was late: hearing and then reading a needle takes 0.30 to 0.45',
    source: BOOK('11'),
    sure: 'decision',
  },
  expectationShare: {
    value: 0.15,
    unit: 'share',
    meaning: 'pull of an earlier reading on the next one',
    source: BOOK('11'),
    sure: 'decision',
  },
  offAxisDegrees: {
    value: 20,
    unit: 'degree',
    meaning: 'how far beside the gauge somebody stands who does not look at it straight on',
    source: BOOK('6.3'),
    sure: 'decision',
  },
  parallaxMmHg: {
    value: 2,
    unit: 'mmHg',
    meaning: 'how far a needle looked at from there seems to stand from where it does, either way',
    source: BOOK('6.3'),
    sure: 'decision',
  },
  tenShare: {
    value: 0.27,
    unit: 'share',
    meaning: 'share of readings that a reader with a habit gives to the nearest ten',
    source: 'assessment handbook 9.3 (41.5 % zeros)',
    sure: 'derived',
  },
  rateMmHgPerSecond: {
    value: 2.5,
    unit: 'mmHg/s',
    meaning: 'fall of a practised hand: the middle of 2 to 3',
    source: 'bedside handbook 3.6',
    sure: 'derived',
  },
  perBeatMmHg: {
    value: 2,
    unit: 'mmHg per beat',
    meaning: 'no faster than this where the pulse is slow',
    source: '2013 Korean guideline, table 4 (physiology handbook 9)',
    sure: 'found',
  },
  marginMmHg: {
    value: 30,
    unit: 'mmHg',
    meaning: 'pumped up over where the pulse was lost',
    source: 'bedside handbook 3.5',
    sure: 'found',
  },
  tooHighMmHg: {
    value: 40,
    unit: 'mmHg',
    meaning:
      'pumped up this much over what was needed is said to have been too high: it hurts and may raise the pressure',
    source: 'no source for the size: decision of this project (that it hurts: bedside handbook 3.5)',
    sure: 'decision',
  },
  pumpMmHgPerSecond: {
    value: 20,
    unit: 'mmHg/s',
    meaning: 'how fast a practised hand pumps up',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
  faintDb: {
    value: 12,
    unit: 'dB',
    meaning:
      'where the best sounds are no louder than this over what a place lets through the ear fails: it is felt',
    source: BOOK('8.6'),
    sure: 'found',
  },
  paradoxMmHg: {
    value: 10,
    unit: 'mmHg',
    meaning: 'a systolic that falls by more than this while breathing in is let down past slowly',
    source: BOOK('2.5'),
    sure: 'found',
  },
  paradoxMmHgPerSecond: {
    value: 0.5,
    unit: 'mmHg/s',
    meaning: 'the fall at which such a difference is found best',
    source: BOOK('2.5'),
    sure: 'derived',
  },
  waitSeconds: {
    value: 15,
    unit: 's',
    meaning: 'between the estimate by feel and the reading, the cuff empty: the least of 15 to 30',
    source: 'bedside handbook 3.4',
    sure: 'memory',
  },
});
