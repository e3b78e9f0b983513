import { roundTo } from '../contract/rounding.js';
import { UNIT_FIGURES as F } from './figures.js';

/** Units in which a temperature, a length and a mass may be read and written, as UCUM writes them; the first is the one that is kept. */
export const UNITS = {
  temperature: ['Cel', '[degF]'],
  length: ['cm', '[in_i]'],
  mass: ['kg', '[lb_av]'],
} as const;

export type Quantity = keyof typeof UNITS;
export type Unit = (typeof UNITS)[Quantity][number];

/** What a unit is measured in where it is kept. */
type Scale = { readonly toKept: (value: number) => number; readonly fromKept: (kept: number) => number };

const SAME: Scale = { toKept: (value) => value, fromKept: (kept) => kept };

const nine = F.fahrenheitPerNineParts.value;
const five = F.celsiusPerFiveParts.value;

const SCALES: Readonly<Record<Unit, Scale>> = {
  Cel: SAME,
  '[degF]': {
    toKept: (value) => ((value - F.fahrenheitOfIce.value) * five) / nine,
    fromKept: (kept) => (kept * nine) / five + F.fahrenheitOfIce.value,
  },
  cm: SAME,
  '[in_i]': timesKept(F.cmPerInch.value),
  kg: SAME,
  '[lb_av]': timesKept(F.kgPerPound.value),
};

function timesKept(one: number): Scale {
  return { toKept: (value) => value * one, fromKept: (kept) => kept / one };
}

/** Decimals to which a converted value is settled, so that 100.4 degrees Fahrenheit are the 38 of a limit, and what was typed comes back digit for digit. */
const SETTLED_DECIMALS = F.settledDecimals.value;

/**
 * A value in a unit as it is kept: degC, cm or kg. A value in the unit that is kept stays the very same.
 *
 * Source: docs/conventions.md section 4 (settled to 1e-9).
 * @example keptFrom(100.4, '[degF]') // 38
 */
export function keptFrom(value: number, unit: Unit): number {
  return SCALES[unit] === SAME ? value : roundTo(SCALES[unit].toKept(value), SETTLED_DECIMALS);
}

/** Decimals that survive: a converted value is settled to one fewer on the way back. */
const BACK_DECIMALS = SETTLED_DECIMALS - 1;

/** A kept value in a unit. What {@link keptFrom} made of at most six decimals comes back digit for digit. */
export function inUnit(kept: number, unit: Unit): number {
  return SCALES[unit] === SAME ? kept : roundTo(SCALES[unit].fromKept(kept), BACK_DECIMALS);
}
