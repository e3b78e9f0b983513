import type { Comparison } from '../contract/threshold.js';
import type { TAP_FIGURES } from './figures.js';

/**
 * On which side of each limit of taps its rule applies, by the name of its figure. Figures that make one limit together
 * (the greater of two) have it once.
 */
export const TAP_COMPARISONS = {
  furthestSeconds: '>=',
  touchBounceMs: '<',
  missedWithin: '<=',
  doubledUnder: '<',
  steadySpread: '>',
  mostMissed: '>',
  chaoticSd: '>',
  lowestJitterCorrelation: '<',
  intervalsForRange: '<',
  intervalsForJitter: '<',
  intervalsForRhythm: '<',
  intervalsForRegular: '<',
  intervalsForPutIn: '<',
  gapsInTurn: '>=',
  irregularOver: '>',
  regularUnder: '<=',
  waveStandsOut: '>=',
  waveNamed: '>=',
  waveMostly: '>=',
  waveMostIntervals: '>',
  waveSmallest: '>=',
  earlyBy: '>=',
  earlyAtMost: '>',
  cycleCorrelation: '>=',
  cycleNeighbours: '<=',
  patternCorrelation: '>=',
  turningSpreads: '<=',
  manyMissed: '>',
  pauseOver: '>',
  wantedHalfWidthPerMinute: '<=',
} as const satisfies Partial<Record<keyof typeof TAP_FIGURES, Comparison>>;
