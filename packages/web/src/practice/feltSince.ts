import { TICKS_PER_SECOND } from '@evenfall/physiology';
import { type FeltBack, feltBack, replay } from '@evenfall/practice';
import type { VisitData } from './visit.js';

/** What a finger felt of the pulse since the cuff was highest; the visit is played again for it. */
export function feltSince(visit: VisitData, peakSeconds: number | null): FeltBack {
  if (peakSeconds === null) return { hadFinger: false, first: null };
  const seconds = visit.tick / TICKS_PER_SECOND;
  return feltBack(visit, replay({ ...visit, seconds }), peakSeconds, seconds);
}
