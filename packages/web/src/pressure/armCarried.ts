import type { Side } from '@evenfall/clinical';
import type { PressureDraft } from './pressureDraft.js';

/** Whether the circumference of an arm is that of the other one: measured there, and on this one by nobody. */
export function isArmCarried(
  { place, values }: Pick<PressureDraft, 'place' | 'values'>,
  side: Side,
  armCm: number | null,
): boolean {
  if (armCm === null || place?.armCm !== armCm) return false;
  const measured = values.filter((one) => one.place.armCm === armCm).map((one) => one.place.side);
  return measured.length === 0 ? place.side !== side : !measured.includes(side);
}
