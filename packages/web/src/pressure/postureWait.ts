import { lyingDue, standingDue } from '@evenfall/clinical';
import type { RunPlace, Stamp } from '@evenfall/record';
import { lainUntil } from './lying.js';
import { type Instant, isLying, type PressureDraft } from './pressureDraft.js';
import { uprightUntil } from './upright.js';

/** How long the posture of the next reading still has to last before the cuff goes up, s; 0 where no clock of it runs. */
export function postureWait(pressure: PressureDraft, place: RunPlace, now: Instant, at: Stamp): number {
  const { lying = null, upright = null, values } = pressure;
  if (place.posture === 'stand') {
    const stood = uprightUntil(upright, now, at);
    const taken = values.flatMap(({ uprightMinutes }) => uprightMinutes ?? []);
    return stood === null ? 0 : (standingDue(stood.seconds, taken)?.inSeconds ?? 0);
  }
  const lain = isLying(place) ? lainUntil(lying, now, at) : null;
  return lain === null ? 0 : lyingDue(lain.seconds);
}
