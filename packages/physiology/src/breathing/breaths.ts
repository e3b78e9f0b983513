import type { Circumstances } from '../circumstances/circumstances.js';
import type { Person } from '../person/person.js';
import type { Breath } from './breath.js';
import { BreathStream } from './breathStream.js';
import { chestOf } from './chest.js';
import { BREATHING_FIGURES as F } from './figures.js';

/** The breaths that begin in [fromSeconds, toSeconds). */
export function breaths(
  person: Person,
  circumstances: Circumstances,
  fromSeconds: number,
  toSeconds: number,
): Breath[] {
  const stream = new BreathStream();
  stream.restart(person, circumstances);
  const found: Breath[] = [];
  for (; stream.start < toSeconds; stream.next()) {
    if (stream.start < fromSeconds) continue;
    found.push({
      index: stream.index,
      startSeconds: stream.start,
      durationSeconds: stream.duration,
      inspirationSeconds: stream.inspiration,
      movingSeconds: stream.moving,
      depth: stream.depth,
      isSigh: stream.isSigh,
    });
  }
  return found;
}

/** How far the chest or shoulder has moved at an instant, mm. */
export function chestAt(person: Person, circumstances: Circumstances, atSeconds: number): number {
  const stream = new BreathStream();
  stream.restart(person, circumstances);
  stream.moveTo(atSeconds);
  return chestMm(person) * chestOf(stream, atSeconds);
}

/** Movement of a usual breath of this person, mm. */
export function chestMm(person: Person): number {
  return person.scenario.armCm >= F.stoutArmCm.value ? F.stoutChestMm.value : F.chestMm.value;
}
