import { EQUIPMENT_FIGURES as F } from './figures.js';

/** How far out a gauge may be, what a check must look at and how long it holds: the values of a protocol's `equipment` section. */
export type EquipmentRules = {
  readonly mostRestMmHg: number;
  readonly mostErrorMmHg: number;
  readonly fewestPoints: number;
  readonly fromMmHg: number;
  readonly toMmHg: number;
  readonly mostLeakMmHgPerMinute: number;
  readonly shortestLeakSeconds: number;
  readonly zeroDays: number;
  readonly comparisonMonths: number;
  readonly mercuryComparisonMonths: number;
  readonly leakMonths: number;
};

export const DEFAULT_EQUIPMENT_RULES: EquipmentRules = {
  mostRestMmHg: F.mostRestMmHg.value,
  mostErrorMmHg: F.mostErrorMmHg.value,
  fewestPoints: F.fewestPoints.value,
  fromMmHg: F.fromMmHg.value,
  toMmHg: F.toMmHg.value,
  mostLeakMmHgPerMinute: F.mostLeakMmHgPerMinute.value,
  shortestLeakSeconds: F.shortestLeakSeconds.value,
  zeroDays: F.zeroDays.value,
  comparisonMonths: F.comparisonMonths.value,
  mercuryComparisonMonths: F.mercuryComparisonMonths.value,
  leakMonths: F.leakMonths.value,
};
