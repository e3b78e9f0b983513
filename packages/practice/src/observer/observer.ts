import type { CountClock, CountFirst } from '@evenfall/clinical';
import { OBSERVER_FIGURES as F } from './figures.js';

/** Ear and eye: what is heard, how soon the needle is read after it, and what is written down. */
export type Reader = {
  /** Sounds under this are not heard in a quiet room, dB over a normal listener's threshold; the place's noise comes on top. */
  readonly thresholdDb: number;
  /** From a sound to the eye on the needle, mean and SD over readings. */
  readonly reactionSeconds: number;
  readonly reactionSdSeconds: number;
  /** Which sound is called the first: any, or the first that another soon follows. */
  readonly firstSound: 'any' | 'first-of-two';
  /** Read to the nearest mark of a gauge marked in this, mmHg; null: read to the last digit. */
  readonly markMmHg: number | null;
  /** Share of readings given to the nearest ten instead. */
  readonly tenShare: number;
  /** Share by which a reading is pulled to the one before. */
  readonly expectationShare: number;
  /** From how far beside the gauge it is looked at, degrees; over 0 from the side from which the needle seems further on. */
  readonly offAxisDegrees: number;
};

/** The hand on bulb and valve. */
export type Hand = {
  readonly palpatesFirst: boolean;
  /** Over where the pulse was lost, mmHg; without palpation over nothing: then `peakMmHg`. */
  readonly marginMmHg: number;
  /** Where the cuff is pumped to when no pulse was felt for. */
  readonly peakMmHg: number;
  readonly rateMmHgPerSecond: number;
  /** Not faster than this for each beat; null: no such care. */
  readonly mostPerBeatMmHg: number | null;
};

/** How beats and breaths are counted: a window each, when the clock starts, what the first is called. */
export type Counting = {
  readonly pulseWindowSeconds: number;
  readonly breathsWindowSeconds: number;
  readonly clock: CountClock;
  readonly first: CountFirst;
};

/** Somebody who takes the signs: all habits, no chance. */
export type Observer = { readonly reader: Reader; readonly hand: Hand; readonly counting: Counting };

/** Hears everything, reads at the instant and to the last digit; the hand of the textbook. */
export const PERFECT_OBSERVER: Observer = {
  reader: {
    thresholdDb: -1000,
    reactionSeconds: 0,
    reactionSdSeconds: 0,
    firstSound: 'any',
    markMmHg: null,
    tenShare: 0,
    expectationShare: 0,
    offAxisDegrees: 0,
  },
  hand: {
    palpatesFirst: true,
    marginMmHg: F.marginMmHg.value,
    peakMmHg: 180,
    rateMmHgPerSecond: F.rateMmHgPerSecond.value,
    mostPerBeatMmHg: F.perBeatMmHg.value,
  },
  counting: { pulseWindowSeconds: 60, breathsWindowSeconds: 60, clock: 'any', first: 1 },
};

/** A trained reader of the model book: hears as most do, reacts in 0.2 s, reads to the nearest mark of 2 mmHg. */
export const GOOD_OBSERVER: Observer = {
  ...PERFECT_OBSERVER,
  reader: {
    ...PERFECT_OBSERVER.reader,
    thresholdDb: 0,
    reactionSeconds: F.reactionSeconds.value,
    reactionSdSeconds: F.reactionSdSeconds.value,
    firstSound: 'first-of-two',
    markMmHg: 2,
  },
  counting: { ...PERFECT_OBSERVER.counting, pulseWindowSeconds: 30 },
};
