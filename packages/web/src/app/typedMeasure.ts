import {
  askedUnit,
  howToType,
  inUnit,
  keptFrom,
  limitsIn,
  type MeasureTyped,
  type Quantity,
  type Refusal,
  readMeasure,
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
  bladderCm: 'length',
} as const satisfies Record<string, Quantity>;
export type Measured = keyof typeof MEASURED;

export function isMeasured(key: string): key is Measured {
  return Object.hasOwn(MEASURED, key);
}

/** The units in which it can be typed; the one that is kept stands first. */
export function unitsOf(key: Measured): readonly Unit[] {
  return UNITS[MEASURED[key]];
}

/** The unit in which this device's user types it. */
export function unitOf(key: Measured, manner: Manner): Unit {
  return manner[MEASURED[key]];
}

/** The unit that a text names as one of a measure; null for none. */
export function unitNamed(key: Measured, text: string): Unit | null {
  return unitsOf(key).find((unit) => unit === text) ?? null;
}

/** The field of a form it is typed in: one for each usual unit, so that a number is never read in another one than it was typed in. */
export function fieldIn(field: string, key: Measured, manner: Manner): string {
  const unit = unitOf(key, manner);
  return isKeptUnit(key, unit) ? field : `${field}.${unit}`;
}

function isKeptUnit(key: Measured, unit: Unit): boolean {
  return unit === UNITS[MEASURED[key]][0];
}

/** A measure as it was typed: the text, and the unit that was chosen beside it; null for the usual one. */
export type TypedMeasure<T extends string | null = string | null> = {
  readonly text: T;
  readonly chosen?: Unit | null;
};

/** A unit that was typed wins over the one that was chosen beside it, that one over the usual one. */
function read({ text, chosen = null }: TypedMeasure, key: Measured, manner: Manner): MeasureTyped | null {
  if (text === null) return null;
  const measure = readMeasure(text, MEASURED[key], chosen ?? unitOf(key, manner));
  return measure === null || chosen === null ? measure : { ...measure, isUnitSaid: true };
}

/** The unit in which a text is read as it stands: the one that it names, else the one that was chosen, else the usual one. */
export function unitRead(typed: TypedMeasure, key: Measured, manner: Manner): Unit {
  return read(typed, key, manner)?.unit ?? typed.chosen ?? unitOf(key, manner);
}

/** The number of a text that names its own unit, in that unit; null for a text that names none. */
export function numberBesideUnit(text: string, key: Measured, manner: Manner): number | null {
  const measure = readMeasure(text, MEASURED[key], unitOf(key, manner));
  return measure?.isUnitSaid ? measure.value : null;
}

/** A typed measure in the unit that is kept, converted once; what is none stays as typed, to be refused. */
export function keptOf<T extends string | null>(
  typed: TypedMeasure<T>,
  key: Measured,
  manner: Manner,
): T | number {
  const measure = read(typed, key, manner);
  return measure === null ? typed.text : keptFrom(measure.value, measure.unit);
}

/** A typed number with the unit in which it was typed; null for what is no measure. */
export function typedIn(typed: TypedMeasure, key: Measured, manner: Manner): TypedNumber | null {
  const measure = read(typed, key, manner);
  return measure === null ? null : { value: measure.value, unit: measure.unit };
}

/** A kept number as it is shown to be typed over: in the unit in which it was typed, else in the usual one. */
export function toType(
  kept: number,
  typed: TypedNumber | null,
  key: Measured,
  manner: Manner,
): { readonly value: number; readonly chosen: Unit | null } {
  const usual = unitOf(key, manner);
  const unit = typed === null ? null : unitNamed(key, typed.unit);
  if (typed === null || unit === null) return { value: inUnit(kept, usual), chosen: null };
  return { value: typed.value, chosen: unit === usual ? null : unit };
}

/** How what cannot be read is to be typed, by what it is of: its examples lie within its limits. */
const EXPECTED = {
  celsius: 'a-temperature',
  kg: 'a-weight',
  cm: 'a-height',
  armCm: 'a-length-of-arm',
  bladderCm: 'a-length-of-arm',
} as const satisfies Record<Measured, string>;

/** A refusal of what was typed, speaking of the unit in which it was typed; where nobody said one and another would do, it asks. */
export function asTyped(refusal: Refusal, typed: TypedMeasure, key: Measured, manner: Manner): Refusal {
  const measure = read(typed, key, manner);
  const got = typed.text;
  if (measure === null) {
    if (refusal.code !== 'not-a-number') return refusal;
    return { ...refusal, expected: howToType(got ?? '', MEASURED[key]) ?? EXPECTED[key], got };
  }
  const asked = askedUnit({ ...refusal, got }, measure, MEASURED[key]);
  if (asked.code === 'ambiguous' || isKeptUnit(key, measure.unit)) return asked;
  return { ...asked, figures: limitsIn(asked.figures, measure.unit) };
}
