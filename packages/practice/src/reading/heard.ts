import type { SoundLog } from '@evenfall/physiology';
import type { Reader } from '../observer/observer.js';
import { TOGETHER_BEATS } from './firstOfTwo.js';

/** Which sounds of a log an ear took for the first, the muffling and the last; -1: none. Used again and again. */
export type Heard = { first: number; muffled: number; last: number; sounds: number };

export function newHeard(): Heard {
  return { first: -1, muffled: -1, last: -1, sounds: 0 };
}

/**
 * What an ear makes of the sounds of a fall. Sounds under `thresholdDb` do not exist for it. Where the
 * first of two is asked for and no two came together, the first alone is taken: better than nothing.
 */
export function hear(
  log: SoundLog,
  thresholdDb: number,
  firstSound: Reader['firstSound'],
  out: Heard,
): Heard {
  out.first = -1;
  out.muffled = -1;
  out.last = -1;
  out.sounds = 0;
  let single = -1;
  for (let i = 0; i < log.count; i++) {
    if ((log.levelDb[i] as number) < thresholdDb) continue;
    out.sounds += 1;
    if (single < 0) single = i;
    if (out.first < 0) {
      if (firstSound === 'any') out.first = i;
      else if (out.last >= 0 && (log.beat[i] as number) - (log.beat[out.last] as number) <= TOGETHER_BEATS)
        out.first = out.last;
    }
    if (log.phase[i] !== 4) out.muffled = -1;
    else if (out.muffled < 0) out.muffled = i;
    out.last = i;
  }
  if (out.first < 0) out.first = single;
  return out;
}
