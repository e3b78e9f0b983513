import type { Words } from '@evenfall/words';
import { stampParts } from '../app/times.js';
import type { Slip } from './slip.js';

/**
 * What would be put back: the rate of a count, else the time at which it was taken. A pressure is not read again before
 * the next one is taken.
 */
export function slipText({ value }: Slip, words: Words): string {
  if (value.kind === 'count' && 'n' in value.count)
    return words.say.rate((60 * value.count.n) / value.count.windowSeconds);
  return words.sentence('count.slipAt', { at: stampParts(value.measuredAt, words).time });
}
