import { figures } from '../contract/figure.js';

const CONVENTIONS = 'docs/conventions.md section 5';
const HANDBOOK = 'bedside handbook 1.12';

/** Every number of the taps: reading, repair, statistics, interval and rhythm. */
export const TAP_FIGURES = figures({
  furthestSeconds: {
    value: 1e12,
    unit: 's',
    meaning:
      'a time this far from zero or further is refused: a double no longer holds a tenth of a millisecond',
    source: CONVENTIONS,
    sure: 'decision',
  },
  touchBounceMs: {
    value: 150,
    unit: 'ms',
    meaning:
      'on a touch screen a tap sooner than this after the last kept one counts as a double (400 a minute)',
    source: CONVENTIONS,
    sure: 'decision',
  },
  localIntervals: {
    value: 5,
    unit: 'intervals',
    meaning: 'intervals on each side whose median is the local interval',
    source: CONVENTIONS,
    sure: 'decision',
  },
  missedWithin: {
    value: 0.15,
    unit: 'share',
    meaning: 'an interval within this share of 2, 3 or 4 local intervals has missed taps',
    source: HANDBOOK,
    sure: 'practice',
  },
  mostIntervalsInGap: {
    value: 4,
    unit: 'intervals',
    meaning: 'a gap of more local intervals than this is left as it is',
    source: CONVENTIONS,
    sure: 'decision',
  },
  doubledUnder: {
    value: 1 / 3,
    unit: 'share',
    meaning: 'an interval under this share of the local one is a doubled tap',
    source: CONVENTIONS,
    sure: 'decision',
  },
  steadySpread: {
    value: 0.1,
    unit: 'share',
    meaning:
      'nothing is repaired where the robust spread of interval / local interval is over this without the tapper’s part',
    source: CONVENTIONS,
    sure: 'decision',
  },
  mostJitterMs: {
    value: 40,
    unit: 'ms',
    meaning:
      'timing jitter of a tapper that is taken off that spread, as a share of the median interval (20 to 40 ms is commonly quoted)',
    source: HANDBOOK,
    sure: 'memory-low',
  },
  mostMissedShort: {
    value: 1 / 3,
    unit: 'share',
    meaning:
      'nothing is repaired if taps would be missing in a larger share of all intervals: that is a rhythm of its own',
    source:
      'assumption: an alternating rhythm has a half, a dropped third beat a half, a dropped fourth a third',
    sure: 'decision',
  },
  fewMissed: {
    value: 3,
    unit: 'intervals',
    meaning: 'taps missing in so many intervals are few, whatever share of a short series they are',
    source: 'assumption',
    sure: 'decision',
  },
  mostMissed: {
    value: 0.2,
    unit: 'share',
    meaning:
      'nor if in more than three intervals and in a larger share than this: every fifth beat dropped is a rhythm',
    source: 'assumption',
    sure: 'decision',
  },
  chaoticSd: {
    value: 0.2,
    unit: 'share',
    meaning:
      'SD of interval / local interval from which a rhythm may be wholly irregular; nothing is repaired unless what is left is surely under it',
    source: 'bedside handbook 1.8',
    sure: 'memory',
  },
  chaoticSureness: {
    value: 0.999,
    unit: 'probability',
    meaning: 'how surely the intervals left after a repair must be under chaoticSd',
    source: 'assumption: a repair in a wholly irregular rhythm is worse than none in a steady one',
    sure: 'decision',
  },
  intervalsForStatistics: {
    value: 3,
    unit: 'intervals',
    meaning: 'fewest whole intervals in a row for every statistic: a spread needs two, a turning point three',
    source: HANDBOOK,
    sure: 'derived',
  },
  intervalsForRange: {
    value: 5,
    unit: 'intervals',
    meaning: 'fewest intervals for a 95 % interval of the rate',
    source: CONVENTIONS,
    sure: 'decision',
  },
  intervalsForJitter: {
    value: 30,
    unit: 'intervals',
    meaning: 'fewest intervals for the timing jitter',
    source: CONVENTIONS,
    sure: 'decision',
  },
  lowestJitterCorrelation: {
    value: -0.55,
    unit: 'correlation',
    meaning:
      'the two-process timing model does not hold where the lag-one autocorrelation is below this, or not below 0',
    source: CONVENTIONS,
    sure: 'decision',
  },
  intervalsForRhythm: {
    value: 30,
    unit: 'intervals',
    meaning: 'with fewer intervals the rhythm is regular or undecided',
    source: HANDBOOK,
    sure: 'practice',
  },
  intervalsForRegular: {
    value: 10,
    unit: 'intervals',
    meaning: 'with fewer intervals not even a regular rhythm is named',
    source: 'assumption: two breaths of a resting adult',
    sure: 'decision',
  },
  intervalsForPutIn: {
    value: 20,
    unit: 'intervals',
    meaning: 'with fewer intervals a pulse is not called regular if a beat was put in',
    source: 'assumption: a beat dropped at every tenth shows twice',
    sure: 'decision',
  },
  gapsInTurn: {
    value: 3,
    unit: 'gaps',
    meaning:
      'fewest gaps at the same distance from each other that are taken as the person’s, not the tapper’s',
    source: 'decision of this project (docs/conventions.md 5)',
    sure: 'decision',
  },
  assumedJitterMs: {
    value: 25,
    unit: 'ms',
    meaning:
      'timing jitter of a tapper, who is not calibrated on a steady beat (20 to 40 ms is commonly quoted)',
    source: HANDBOOK,
    sure: 'memory-low',
  },
  irregularOver: {
    value: 0.15,
    unit: 'share',
    meaning:
      "irregular if RMSSD / mean interval is over this and over irwideFloors times the tapper's own floor",
    source: 'assumption',
    sure: 'practice',
  },
  irwideFloors: {
    value: 2,
    unit: 'times',
    meaning:
      "multiple of the tapper's own floor (RMSSD of a steady beat, jitter x root 6) for an irregular rhythm",
    source: HANDBOOK,
    sure: 'practice',
  },
  regularUnder: {
    value: 0.1,
    unit: 'share',
    meaning: 'regular if RMSSD / mean interval and the coefficient of variation are at most this',
    source: HANDBOOK,
    sure: 'decision',
  },
  wideFloors: {
    value: 1.5,
    unit: 'floors',
    meaning:
      "irregularly irregular only if the robust spread is over this many times the tapper's own, jitter x root 2",
    source: HANDBOOK,
    sure: 'decision',
  },
  waveShortestBeats: {
    value: 3,
    unit: 'beats',
    meaning: 'shortest breath, in beats, looked for as a wave in the intervals',
    source: 'assumption: 20 breaths a minute at a pulse of 60',
    sure: 'decision',
  },
  waveLongestBeats: {
    value: 12,
    unit: 'beats',
    meaning: 'longest breath, in beats, looked for as a wave in the intervals',
    source: 'assumption: 8 breaths a minute at a pulse of 96',
    sure: 'decision',
  },
  waveStandsOut: {
    value: 15,
    unit: 'share times intervals',
    meaning:
      'a wave stands out if its share of the variation is at least this over the number of intervals; about 1 in 100 series without one reach it',
    source: 'simulation, packages/clinical/prove/taps.mjs',
    sure: 'derived',
  },
  waveNamed: {
    value: 17,
    unit: 'share times intervals',
    meaning:
      'a wave is called breathing if its share of the variation is at least this over the number of intervals',
    source: 'simulation, packages/clinical/prove/taps.mjs',
    sure: 'derived',
  },
  waveMostly: {
    value: 0.4,
    unit: 'share',
    meaning:
      'in intervals over the regular limits, the share of the variation from which a wave is called breathing',
    source: 'simulation, packages/clinical/prove/taps.mjs',
    sure: 'derived',
  },
  waveMostIntervals: {
    value: 240,
    unit: 'intervals',
    meaning: 'in longer series no wave is looked for: breathing does not keep time for so long',
    source: 'assumption',
    sure: 'decision',
  },
  waveSmallest: {
    value: 0.02,
    unit: 'share',
    meaning:
      'smallest swing either way, as a share of the mean interval, called breathing (5 to 10 % is usual)',
    source: 'bedside handbook 1.8',
    sure: 'decision',
  },
  earlyBy: {
    value: 0.15,
    unit: 'share',
    meaning: 'an early beat comes at least this share of the local interval early, and the next one does not',
    source: 'assumption',
    sure: 'decision',
  },
  earlySpreads: {
    value: 3.5,
    unit: 'SD',
    meaning: "an early beat comes at least this many SD of the tapper's jitter, and of the intervals, early",
    source: 'simulation, packages/clinical/prove/taps.mjs: about 1 in 100 steady pulses shows one by chance',
    sure: 'derived',
  },
  earlyAtMost: {
    value: 0.15,
    unit: 'share',
    meaning: 'with a larger share of early beats they are no longer occasional (1 to 10 % is usual)',
    source: 'bedside handbook 1.8',
    sure: 'decision',
  },
  cycleCorrelation: {
    value: 0.6,
    unit: 'correlation',
    meaning: 'intervals repeat in a cycle of 2 to 4 if the correlation at that distance is at least this',
    source: 'assumption: over three SD of chance in 30 intervals',
    sure: 'decision',
  },
  cycleNeighbours: {
    value: -0.25,
    unit: 'correlation',
    meaning: 'and neighbouring intervals differ: their correlation is at most this',
    source: 'derived: a cycle with one early beat has -0.5 or less, a wave of four beats 0',
    sure: 'derived',
  },
  longestCycle: {
    value: 4,
    unit: 'beats',
    meaning: 'longest repeating cycle looked for',
    source: 'bedside handbook 1.8',
    sure: 'decision',
  },
  patternCorrelation: {
    value: 0.5,
    unit: 'correlation',
    meaning: 'with a correlation this far from 0 at a distance of 1 to 4 intervals there is some pattern',
    source: 'assumption',
    sure: 'decision',
  },
  turningSpreads: {
    value: 3,
    unit: 'SD',
    meaning: 'turning points of a rhythm without pattern are within this many SD of those of a random series',
    source: HANDBOOK,
    sure: 'decision',
  },
  pauseOver: {
    value: 4.6,
    unit: 'intervals',
    meaning:
      'a gap of more usual intervals than this is longer than missed taps explain: the tapping paused or what was tapped stood still, and there is no rate',
    source: 'the longest gap that a repair fills: 4 local intervals and 15 %',
    sure: 'derived',
  },
  manyMissed: {
    value: 0.1,
    unit: 'share',
    meaning:
      'with a larger share of intervals in which taps are missing, beats may be dropping out: the rhythm is undecided',
    source: 'assumption',
    sure: 'decision',
  },
  breathsRegularUnder: {
    value: 0.2,
    unit: 'share',
    meaning: 'breaths: regular if RMSSD / mean interval is at most this; no other word is given to breaths',
    source: 'assumption: no published statistic of tapped breaths was found',
    sure: 'decision',
  },
  wantedHalfWidthPerMinute: {
    value: 4,
    unit: '/min',
    meaning: 'half-width of the 95 % interval at which taps are enough, unless the caller wants another',
    source: 'bedside handbook 1.4: tolerance of a 30 s count',
    sure: 'decision',
  },
});
