import { normalOf } from '../chance/normal.js';
import type { Beating } from '../heart/beating.js';
import type { Person } from '../person/person.js';
import { SOUND_FIGURES } from '../sound/figures.js';
import { APEX_FIGURES as F } from './figures.js';

/**
 * The first or second heart sound of a beat under a chest piece at the apex, whether the beat reaches the wrist or not.
 * Seconds of the visit, exact; levels are dB over a normal listener's threshold in a quiet room.
 */
export type HeartSound = {
  readonly atSeconds: number;
  readonly beat: number;
  readonly heart: 'first' | 'second';
  readonly levelDb: number;
  readonly centreHz: number;
  readonly durationMs: number;
};

/** Draws of a beat in the stream `ksound`, clear of those of the sounds at the elbow. */
const LANE = { firstLevel: 16, secondLevel: 17, firstCentre: 18, secondCentre: 19 };
const FIRST_AFTER = F.firstAfterSeconds.value;

/** When the first heart sound of a beat comes that was electrical at `rSeconds`. */
export function firstSoundSeconds(rSeconds: number): number {
  return rSeconds + FIRST_AFTER;
}

/**
 * When the second one comes: systole by the rate of the interval before the beat, and before the next beat's first sound.
 * Source: Chest 1981;80:613.
 */
export function secondSoundSeconds(
  { r, rr }: Pick<Beating, 'r' | 'rr'>,
  nextR: number,
  { scenario }: Person,
): number {
  const perMinute = 60 / rr;
  const rate =
    perMinute < F.slowestRate.value ? F.slowestRate.value : Math.min(perMinute, F.fastestRate.value);
  const systole =
    scenario.sex === 'f'
      ? F.systoleWoman.value + F.systoleWomanPerRate.value * rate
      : F.systoleMan.value + F.systoleManPerRate.value * rate;
  return Math.min(r + systole, firstSoundSeconds(nextR) - F.leastBeforeNextSeconds.value);
}

/** The first heart sound of a beat. In complete block it is as loud as the atria make it. */
export function firstSound(beat: Beating, { scenario }: Person, soundKey: number): HeartSound {
  const isFibrillating = scenario.rhythm.kind === 'atrial-fibrillation';
  const spread = isFibrillating ? F.fibrillationSpreadDb.value : F.spreadDb.value;
  return {
    atSeconds: firstSoundSeconds(beat.r),
    beat: beat.index,
    heart: 'first',
    levelDb: F.firstDb.value + beat.loudness + spread * normalOf(soundKey, beat.index, LANE.firstLevel),
    centreHz: F.firstHz.value * shiftOf(soundKey, beat.index, LANE.firstCentre),
    durationMs: F.firstMs.value,
  };
}

/** The second heart sound of a beat; a weak one has a soft one. */
export function secondSound(beat: Beating, nextR: number, person: Person, soundKey: number): HeartSound {
  const lack = 1 - Math.min(1, Math.max(0, beat.stroke));
  return {
    atSeconds: secondSoundSeconds(beat, nextR, person),
    beat: beat.index,
    heart: 'second',
    levelDb:
      F.secondDb.value +
      lack * F.weakSecondDb.value +
      F.spreadDb.value * normalOf(soundKey, beat.index, LANE.secondLevel),
    centreHz: F.secondHz.value * shiftOf(soundKey, beat.index, LANE.secondCentre),
    durationMs: F.secondMs.value,
  };
}

/** Each sound is a little higher or lower than the next, as those at the elbow are. */
function shiftOf(key: number, beat: number, lane: number): number {
  const z = normalOf(key, beat, lane);
  return 1 + SOUND_FIGURES.centreSpread.value * (z > 2 ? 2 : Math.max(z, -2));
}
