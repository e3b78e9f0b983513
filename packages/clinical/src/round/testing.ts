import type { RoundRate } from './event.js';
import type { ReadingPlace, RoundReading } from './roundReading.js';

/** The usual place of a cuff. For tests. */
export const PLACE: ReadingPlace = { site: 'upper-arm', side: 'right', posture: 'sit' };

/** A pulse of a round with nothing unusual in it. For tests. */
export function pulse(more: Partial<RoundRate>): RoundRate {
  return { id: 'p', of: 'pulse', perMinute: 72, isFeltIrregular: false, nextWindowSeconds: null, ...more };
}

/** A reading by ear with nothing unusual in it. For tests. */
export function reading(more: Partial<RoundReading>): RoundReading & { readonly of: 'pressure' } {
  return {
    ...PLACE,
    of: 'pressure',
    id: 'r',
    method: 'auscultation',
    systolic: 128,
    diastolic: 76,
    pulsePerMinute: 72,
    uprightMinutes: null,
    atSeconds: null,
    ...more,
  };
}
