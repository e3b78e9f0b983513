import { SCORE_FIGURES as F } from './figures.js';

/** Degrees Fahrenheit of degrees Celsius, unrounded. */
export function fahrenheitOf(celsius: number): number {
  return celsius * F.fahrenheitPerCelsius.value + F.fahrenheitAtZero.value;
}

/** Degrees Celsius of degrees Fahrenheit, unrounded. */
export function celsiusOf(fahrenheit: number): number {
  return (fahrenheit - F.fahrenheitAtZero.value) / F.fahrenheitPerCelsius.value;
}

/** Kilopascals of mmHg, unrounded. */
export function kiloPascalsOf(mmHg: number): number {
  return mmHg / F.mmHgPerKiloPascal.value;
}

/** Kilograms of pounds, and stones beside them, unrounded. */
export function kilogramsOf(pounds: number, stones = 0): number {
  return (pounds + stones * F.poundsPerStone.value) * F.kgPerPound.value;
}

/** Centimetres of inches, unrounded. */
export function centimetresOf(inches: number): number {
  return inches * F.cmPerInch.value;
}
