import { SOUND_FIGURES } from '../sound/figures.js';
import type { SoundEvent } from '../sound/soundEvent.js';

/** Levels of the three taps, dB over a normal listener's threshold. Source: physiology handbook 13. */
export const CHECK_LEVELS_DB = [20, 10, 5] as const;
/** From one tap to the next, s. */
export const CHECK_EVERY_SECONDS = 1.2;

/**
 * The taps of the check before a first run: which of them were heard says how soft a sound this listener, these
 * headphones and this loudness still let through. Loudest first, so that whoever hears none knows at once.
 */
export function loudnessCheck(): readonly SoundEvent[] {
  return CHECK_LEVELS_DB.map((levelDb, index) => ({
    atSeconds: index * CHECK_EVERY_SECONDS,
    beat: index,
    cuffMmHg: 0,
    phase: 1,
    levelDb,
    centreHz: SOUND_FIGURES.tapHz.value,
    quality: 1.5,
    durationMs: 32,
    clickDb: SOUND_FIGURES.clickFirstDb.value,
    swish: null,
    isMuffled: false,
    isPistolShot: false,
  }));
}
