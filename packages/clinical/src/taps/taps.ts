import type { CountOf } from '../count/count.js';

/** What made the times: a finger on a screen (which can bounce), a key or pedal, or a file. */
export type TapSource = 'touch' | 'key' | 'file';

/** A time per beat or breath, in seconds from any zero, each later than the one before. */
export type Taps = {
  readonly of: CountOf;
  readonly source: TapSource;
  readonly seconds: readonly number[];
};

/** The version of the rules that read a rate and a rhythm from taps. */
export const TAPS_RULE = 'taps-1';
