import { figures } from '@evenfall/clinical';

/** How near a count has to come, and what about a person makes a longer window the better one. */
export const COUNTING_FIGURES = figures({
  withinPerMinute: {
    value: 2,
    unit: '/min',
    meaning: 'a regular pulse, or breaths, are right this near; a window whose one beat is more allows that',
    source: 'assessment handbook 13 (pulse 11, respiration 5)',
    sure: 'found',
  },
  irregularWithinShare: {
    value: 0.05,
    unit: 'share',
    meaning: 'an irregular pulse is right this near',
    source: 'assessment handbook 13 (pulse 11)',
    sure: 'found',
  },
  graveShare: {
    value: 0.1,
    unit: 'share',
    meaning: 'a pulse further off than this from the rate is a critical failure',
    source: 'assessment handbook 13 (pulse 11)',
    sure: 'found',
  },
  graveBreathsPerMinute: {
    value: 4,
    unit: '/min',
    meaning: 'breaths further off than this from the rate are a critical failure',
    source: 'assessment handbook 13 (respiration 5)',
    sure: 'found',
  },
  slowBreathsPerMinute: {
    value: 10,
    unit: '/min',
    meaning: 'breaths slower than this are counted for a full minute',
    source: 'assessment handbook 13 (respiration 2)',
    sure: 'found',
  },
  fastBreathsPerMinute: {
    value: 24,
    unit: '/min',
    meaning: 'breaths faster than this are counted for a full minute',
    source: 'assessment handbook 13 (respiration 2)',
    sure: 'found',
  },
  unevenShare: {
    value: 0.2,
    unit: 'share',
    meaning: 'an interval this far from the middle one of its window can be told by a finger or an eye',
    source: 'no source: decision of this project',
    sure: 'decision',
  },
});
