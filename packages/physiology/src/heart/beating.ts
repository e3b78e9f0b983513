import type { BeatStream } from './beatStream.js';

/** What an artery and an ear need to know of a beat: the beat at hand of a stream, or a copy of it. */
export type Beating = Pick<
  BeatStream,
  | 'index'
  | 'r'
  | 'rr'
  | 'stretch'
  | 'foot'
  | 'systolic'
  | 'diastolic'
  | 'stroke'
  | 'isFelt'
  | 'loudness'
  | 'levelSystolic'
>;

/** A copy of the beat at hand that stays when the stream goes on. */
export function keptBeat(beat: Beating): Beating {
  return {
    index: beat.index,
    r: beat.r,
    rr: beat.rr,
    stretch: beat.stretch,
    foot: beat.foot,
    systolic: beat.systolic,
    diastolic: beat.diastolic,
    stroke: beat.stroke,
    isFelt: beat.isFelt,
    loudness: beat.loudness,
    levelSystolic: beat.levelSystolic,
  };
}
