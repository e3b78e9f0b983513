import type { SoundEvent } from '../src/sound/soundEvent.js';

/** A sound of each phase as the book's table 8.3 has it, in the middle of its durations. */
export const TABLE: Readonly<Record<1 | 2 | 3 | 4, SoundEvent>> = {
  1: sound({ phase: 1, centreHz: 130, quality: 1.5, durationMs: 32, clickDb: -10 }),
  2: sound({
    phase: 2,
    centreHz: 120,
    quality: 1.5,
    durationMs: 40,
    swish: { levelDb: -6, durationMs: 115 },
  }),
  3: sound({ phase: 3, centreHz: 150, quality: 1.2, durationMs: 37, clickDb: -6 }),
  4: sound({ phase: 4, centreHz: 60, quality: 1, durationMs: 75, isMuffled: true }),
};

function sound(some: Partial<SoundEvent>): SoundEvent {
  return {
    atSeconds: 0,
    beat: 0,
    cuffMmHg: 100,
    phase: 1,
    levelDb: 40,
    centreHz: 130,
    quality: 1.5,
    durationMs: 32,
    clickDb: null,
    swish: null,
    isMuffled: false,
    isPistolShot: false,
    ...some,
  };
}

/** The same sound of so many beats. */
export function beatsOf(event: SoundEvent, count: number): SoundEvent[] {
  return Array.from({ length: count }, (_, beat) => ({ ...event, beat }));
}
