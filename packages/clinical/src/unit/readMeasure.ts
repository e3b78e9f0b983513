import { numberFrom } from '../contract/numberText.js';
import { type Refusal, refusal } from '../contract/refusal.js';
import { roundTo } from '../contract/rounding.js';
import { SCORE_FIGURES } from '../score/figures.js';
import { UNIT_FIGURES as F } from './figures.js';
import { inUnit, keptFrom, type Quantity, UNITS, type Unit } from './unit.js';

/** A number in a unit, and whether the unit stood beside it or was only the usual one. */
export type MeasureTyped = { readonly value: number; readonly unit: Unit; readonly isUnitSaid: boolean };

/**
 * A number with or without its unit, as people write it: `68.04 kg`, `150 lb`, `10 st 10 lb`, `99.1 F`, `5 ft 6 in`,
 * `5'6"`, `1.68 m`. Feet and inches are inches, stones and pounds are pounds, metres are centimetres, grams are
 * kilograms. Null for what cannot be read, a unit of another quantity among it, and for a part of a foot or a stone:
 * `5.11 ft` is written for 5 ft 11 in as well as for 5.11 feet. It is refused, never guessed ({@link howToType}).
 *
 * @param usual the unit of a number without one
 * Source: bedside handbook 4.4 (1 st = 14 lb).
 */
export function readMeasure(text: string, quantity: Quantity, usual: Unit): MeasureTyped | null {
  const parts = PARTS.exec(text.trim().toLowerCase());
  if (parts === null) return null;
  const [, first = '', word = '', second, smaller = ''] = parts;
  const value = numberFrom(first);
  if (value === null) return null;
  if (word === '') return second === undefined ? { value, unit: usual, isUnitSaid: false } : null;
  const name = NAMES[quantity].find(({ names }) => names.includes(word));
  if (name === undefined) return null;
  const { unit, times = 1, inParts } = name;
  if (inParts !== undefined && !Number.isInteger(value)) return null;
  if (second === undefined) return { value: settled(value * times), unit, isUnitSaid: true };
  const more = numberFrom(second);
  if (inParts === undefined || more === null || more >= times || more < 0 || value < 0) return null;
  if (smaller !== '' && !inParts.includes(smaller)) return null;
  return { value: settled(value * times + more), unit, isUnitSaid: true };
}

/**
 * How to type instead what {@link readMeasure} does not read, where it can be seen what was meant: decimals of feet or
 * stones, or a comma where a point would do. Null where it cannot.
 */
export function howToType(text: string, quantity: Quantity): HowToType | null {
  const pointed = text
    .trim()
    .toLowerCase()
    .replace(/(\d),(\d)/, '$1.$2');
  const [, first = '', word = ''] = PARTS.exec(pointed) ?? [];
  const name = NAMES[quantity].find(({ names, inParts }) => inParts !== undefined && names.includes(word));
  const value = numberFrom(first);
  if (name !== undefined && value !== null && !Number.isInteger(value))
    return name.unit === '[in_i]' ? 'feet-and-inches' : 'stones-and-pounds';
  const isOfComma = text.includes(',') && readMeasure(pointed, quantity, UNITS[quantity][0]) !== null;
  return isOfComma ? 'a-decimal-point' : null;
}

export type HowToType = 'feet-and-inches' | 'stones-and-pounds' | 'a-decimal-point';

/** A number, its unit, and for feet and stones the smaller number behind it with its own. */
const PARTS = /^(-?[\d.]+)\s*([^\d\s.-][^\d\s-]*)?(?:\s*([\d.]+)\s*([^\d\s-]+)?)?$/;

type Name = {
  readonly unit: Unit;
  readonly names: readonly string[];
  /** How many of the unit one of these is; 1 if absent. */
  readonly times?: number;
  /** What the smaller number behind it may be called; absent where none may follow. */
  readonly inParts?: readonly string[];
};

const INCHES = ['in', 'in.', 'inch', 'inches', '"', '″', '”', "''", 'pulgada', 'pulgadas'];
const POUNDS = ['lb', 'lb.', 'lbs', 'lbs.', 'pound', 'pounds', 'libra', 'libras'];
const FEET = ['ft', 'ft.', 'foot', 'feet', "'", '′', '’', 'pie', 'pies'];

const NAMES: Readonly<Record<Quantity, readonly Name[]>> = {
  temperature: [
    { unit: 'Cel', names: ['c', '°c', 'ºc', 'degc', 'celsius'] },
    { unit: '[degF]', names: ['f', '°f', 'ºf', 'degf', 'fahrenheit'] },
  ],
  length: [
    { unit: 'cm', names: ['cm', 'cm.', 'centimetre', 'centimetres', 'centimeter', 'centimeters'] },
    { unit: 'cm', names: ['m', 'm.', 'metre', 'metres', 'meter', 'meters'], times: F.cmPerMetre.value },
    { unit: '[in_i]', names: INCHES },
    { unit: '[in_i]', names: FEET, times: F.inchesPerFoot.value, inParts: INCHES },
  ],
  mass: [
    { unit: 'kg', names: ['kg', 'kg.', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'] },
    { unit: 'kg', names: ['g', 'gram', 'grams'], times: 1 / F.gramsPerKilogram.value },
    { unit: '[lb_av]', names: POUNDS },
    {
      unit: '[lb_av]',
      names: ['st', 'st.', 'stone', 'stones'],
      times: SCORE_FIGURES.poundsPerStone.value,
      inParts: POUNDS,
    },
  ],
};

function settled(value: number): number {
  return roundTo(value, F.settledDecimals.value);
}

/**
 * What to ask of a number that is refused in its usual unit and that nobody gave a unit: which it is, where the other
 * unit of the quantity makes it possible. Any other refusal stays.
 *
 * @param refused by limits in the unit that is kept
 */
export function askedUnit(refused: Refusal, measure: MeasureTyped, quantity: Quantity): Refusal {
  const { minimum, maximum } = refused.figures;
  if (measure.isUnitSaid || refused.code !== 'out-of-range') return refused;
  if (minimum === undefined || maximum === undefined) return refused;
  const { value, unit } = measure;
  const others = UNITS[quantity].filter((other) => {
    const kept = keptFrom(value, other);
    return other !== unit && kept >= minimum && kept <= maximum;
  });
  if (others.length === 0) return refused;
  const figures = { value, ...limitsIn(refused.figures, unit) };
  return refusal(refused.field, 'ambiguous', 'which-unit', refused.got, {
    figures,
    choices: [...others, unit],
  });
}

/** Limits of the kept unit in another one, to a tenth and inwards, so that a limit that is told is never refused. */
export function limitsIn(figures: Refusal['figures'], unit: Unit): Readonly<Record<string, number>> {
  const inwards = (name: string, kept: number) => {
    const exact = inUnit(kept, unit);
    const told = roundTo(exact, 1);
    if (name === 'minimum' && told < exact) return roundTo(told + TENTH, 1);
    return name === 'maximum' && told > exact ? roundTo(told - TENTH, 1) : told;
  };
  return Object.fromEntries(Object.entries(figures).map(([name, kept]) => [name, inwards(name, kept)]));
}

const TENTH = 0.1;
