import { normalOf } from '../chance/normal.js';
import { uniformOf } from '../chance/uniform.js';
import { PERSON_FIGURES } from '../person/figures.js';
import type { Person } from '../person/person.js';
import { SOUND_LANE } from './arm.js';
import { SOUND_FIGURES as F } from './figures.js';
import type { Phase, SoundEvent } from './soundEvent.js';

type Character = {
  readonly hz: number;
  readonly quality: number;
  readonly ms: readonly [number, number];
  readonly clickDb: number | null;
};

/** Character of each phase. Source: physiology handbook 8.3, choices of the book. */
export const CHARACTERS: Readonly<Record<Phase, Character>> = {
  1: { hz: F.tapHz.value, quality: 1.5, ms: [25, 40], clickDb: F.clickFirstDb.value },
  2: { hz: F.swishTapHz.value, quality: 1.5, ms: [40, 40], clickDb: null },
  3: { hz: F.crispHz.value, quality: 1.2, ms: [30, 45], clickDb: F.clickCrispDb.value },
  4: { hz: F.muffledHz.value, quality: 1, ms: [60, 90], clickDb: null },
};
const SWISH_MS = [90, 140] as const;
/** A pulse that collapses and is this loud cracks. */
const PISTOL_FROM_DB = 44;

/** Everything a synthesiser needs of one sound. */
export function describeSound(
  person: Person,
  soundKey: number,
  beat: number,
  atSeconds: number,
  cuffMmHg: number,
  phase: Phase,
  levelDb: number,
): SoundEvent {
  const { scenario } = person;
  const isPistolShot = scenario.waveShape === 'collapsing' && person.soundDb >= PISTOL_FROM_DB && phase === 3;
  const { hz, quality, ms, clickDb } = CHARACTERS[phase];
  const higher =
    (scenario.traits.isStiff ? F.stiffHz.value : 1) *
    (scenario.ageYears < PERSON_FIGURES.adultYears.value ? F.childHz.value : 1);
  const shift = 1 + F.centreSpread.value * within2(normalOf(soundKey, beat, SOUND_LANE.centre));
  return {
    atSeconds,
    beat,
    cuffMmHg,
    phase,
    levelDb: levelDb + (isPistolShot ? F.pistolDb.value : 0),
    centreHz: (isPistolShot ? F.pistolHz.value : hz * (phase === 4 ? 1 : higher)) * shift,
    quality,
    durationMs: between(ms, uniformOf(soundKey, beat, SOUND_LANE.duration)),
    clickDb,
    swish:
      phase === 2
        ? {
            levelDb: F.swishLayerDb.value,
            durationMs: between(SWISH_MS, uniformOf(soundKey, beat, SOUND_LANE.swish)),
          }
        : null,
    isMuffled: phase === 4,
    isPistolShot,
  };
}

const within2 = (z: number) => (z > 2 ? 2 : Math.max(z, -2));
const between = ([low, high]: readonly [number, number], share: number) => low + (high - low) * share;
