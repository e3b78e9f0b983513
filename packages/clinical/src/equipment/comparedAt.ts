import { EQUIPMENT_FIGURES as F } from './figures.js';
import type { EquipmentRules } from './rules.js';

/**
 * The pressures that are offered for a comparison, mmHg: from zero to the one it must reach, evenly, each a whole
 * number, as many as are needed and never further apart than is usual.
 */
export function comparedAtMmHg({
  fewestPoints,
  toMmHg,
}: Pick<EquipmentRules, 'fewestPoints' | 'toMmHg'>): readonly number[] {
  const steps = Math.max(fewestPoints - 1, Math.ceil(toMmHg / F.pointsApartMmHg.value));
  const topMmHg = Math.ceil(toMmHg);
  return Array.from({ length: steps + 1 }, (_, index) => Math.round((index * topMmHg) / steps));
}
