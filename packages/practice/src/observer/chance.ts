import { keyOf, normalOf, uniformOf } from '@evenfall/physiology';

/** Sets an observer's chance apart from that of the person with the same seed. */
const OBSERVER_SALT = 0x6f627376;

/** Draws of one reading, in the order in which they were added: a new one goes to the end. */
export const OBSERVER_LANE = {
  reactionFirst: 0,
  reactionLast: 1,
  tenFirst: 2,
  tenLast: 3,
  start: 4,
  reactionMuffled: 5,
  tenMuffled: 6,
} as const;
type Lane = keyof typeof OBSERVER_LANE;

/** Chance of an observer: a value is named by seed, reading and lane, never by what was drawn before. */
export function observerKey(seed: number): number {
  return keyOf((seed ^ OBSERVER_SALT) >>> 0, 'noise');
}

export function observerUniform(key: number, reading: number, lane: Lane): number {
  return uniformOf(key, reading, OBSERVER_LANE[lane]);
}

export function observerNormal(key: number, reading: number, lane: Lane): number {
  return normalOf(key, reading, OBSERVER_LANE[lane]);
}
