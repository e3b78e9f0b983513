import type { InventedTaps } from './invented.js';

/** Invented tap times in seconds from 0, to the millisecond. Amounts are for show and stand for nobody's pulse. */
export function inventTaps({ rhythm, meanMs, beats }: InventedTaps, chance: () => number): number[] {
  const seconds: number[] = [];
  let atMs = 0;
  for (let beat = 0; beat < beats; beat += 1) {
    const jitterMs = (chance() + chance() + chance() - 1.5) * 36;
    seconds.push(Math.round(atMs + jitterMs + 100) / 1000);
    atMs += meanMs * factor(rhythm, beat, chance);
  }
  return seconds;
}

function factor(rhythm: InventedTaps['rhythm'], beat: number, chance: () => number): number {
  if (rhythm === 'breathing') return 1 + 0.09 * Math.sin((2 * Math.PI * beat) / 5);
  if (rhythm === 'no-pattern') return 0.62 + 0.76 * chance();
  return 1 + 0.02 * (chance() - 0.5);
}
