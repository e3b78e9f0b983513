import {
  inUnit,
  keptFrom,
  numberFrom,
  type Quantity,
  type Refusal,
  roundTo,
  UNITS,
  type Unit,
} from '@evenfall/clinical';
import type { TypedNumber } from '@evenfall/record';
import type { Manner } from '@evenfall/words';

/** What can be typed in another unit than the one that is kept. */
const MEASURED = {
  celsius: 'temperature',
  kg: 'mass',
  cm: 'length',
  armCm: 'length',
} as const satisfies Record<string, Quantity>;
export type Measured = keyof typeof MEASURED;

export function isMeasured(key: string): key is Measured {
  return Object.hasOwn(MEASURED, key);
}

/** The unit in which this device's user types it. */
export function unitOf(key: Measured, manner: Manner): Unit {
  return manner[MEASURED[key]];
}

/** The field of a form it is typed in: one for each unit, so that a number is never read in another one than it was typed in. */
export function fieldIn(field: string, key: Measured, manner: Manner): string {
  const unit = unitOf(key, manner);
  return isKeptUnit(key, unit) ? field : `${field}.${unit}`;
}

function isKeptUnit(key: Measured, unit: Unit): boolean {
  return unit === UNITS[MEASURED[key]][0];
}

/** A typed number in the unit that is kept, converted once; what is no number stays as typed, to be refused. */
export function keptOf<T extends string | null>(text: T, key: Measured, manner: Manner): T | number {
  const unit = unitOf(key, manner);
  const value = numberFrom(text);
  return value === null || isKeptUnit(key, unit) ? text : keptFrom(value, unit);
}

/** A typed number with the unit in which it was typed; null for what is no number. */
export function typedIn(text: string | null, key: Measured, manner: Manner): TypedNumber | null {
  const value = numberFrom(text);
  return value === null ? null : { value, unit: unitOf(key, manner) };
}

/** A kept number as it is typed in the unit of this device: digit for digit what was typed, where it was in that unit. */
export function toType(kept: number, typed: TypedNumber | null, key: Measured, manner: Manner): number {
  const unit = unitOf(key, manner);
  return typed?.unit === unit ? typed.value : inUnit(kept, unit);
}

/** A refusal of what was typed, speaking of the unit in which it was typed. */
export function asTyped(refusal: Refusal, got: string | null, key: Measured, manner: Manner): Refusal {
  const unit = unitOf(key, manner);
  if (isKeptUnit(key, unit)) return refusal;
  const limits = Object.entries(refusal.figures).map(([name, kept]) => [
    name,
    roundTo(inUnit(kept, unit), 1),
  ]);
  return { ...refusal, got, figures: Object.fromEntries(limits) };
}
