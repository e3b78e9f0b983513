import { roundTo } from '@evenfall/clinical';
import type { Quantity } from 'fhir/r4.js';
import { SYSTEMS } from './systems.js';

/** Units by what stands beside the number on paper and the UCUM code. Source: interoperability handbook 2 and 5. */
export const UNITS = {
  pressure: { unit: 'mmHg', code: 'mm[Hg]' },
  pulse: { unit: 'beats/min', code: '/min' },
  breaths: { unit: 'breaths/min', code: '/min' },
  saturation: { unit: '%', code: '%' },
  temperature: { unit: '°C', code: 'Cel' },
  weight: { unit: 'kg', code: 'kg' },
  height: { unit: 'cm', code: 'cm' },
  /** A score out of ten: no unit of measure. */
  score: { unit: 'score', code: '{score}' },
} as const;

export type UnitName = keyof typeof UNITS;

/** A value with its unit, to one decimal: an extension of ours carries every digit. Source: handbook 16. */
export function quantity(value: number, of: UnitName): Quantity {
  const { unit, code } = UNITS[of];
  return { value: Number(roundTo(value, 1)), unit, system: SYSTEMS.ucum, code };
}
