import { keyOf } from '../chance/uniform.js';
import type { Person } from '../person/person.js';

/** The keys of a person's chance that beats are drawn by. Source of the streams: physiology handbook 1.3. */
export type HeartKeys = {
  readonly beat: number;
  readonly fibrillation: number;
  readonly ectopy: number;
  readonly slow: number;
};

export function heartKeys({ seed, beatSeed }: Person): HeartKeys {
  return {
    beat: keyOf(beatSeed, 'beat'),
    fibrillation: keyOf(beatSeed, 'af'),
    ectopy: keyOf(beatSeed, 'ectopy'),
    slow: keyOf(seed, 'bpv'),
  };
}

/** Lanes of the chance of a beat: each number that is drawn for it is drawn in its own. */
export const LANE = { systolic: 0, diastolic: 1, stroke: 2, atria: 3, interval: 4 };
/** The same of what is not of the sinus node. */
export const ECTOPIC_LANE = {
  happens: 0,
  coupling: 1,
  interpolated: 2,
  gain: 3,
  turbulence: 4,
  every: 5,
  length: 6,
  atria: 7,
};
export const DRIFT_LANE = { phase: 0, pressure: 1, interval: 2 };
