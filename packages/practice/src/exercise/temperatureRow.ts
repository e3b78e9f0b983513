import { inUnit, roundTo, UNITS } from '@evenfall/clinical';
import { temperatureOf } from '@evenfall/physiology';
import type { Exercise } from './exercise.js';
import { EXERCISE_FIGURES as F } from './figures.js';

/** A temperature that was written beside what the thermometer showed, degC. */
export type TemperatureRow = {
  readonly written: number;
  readonly shown: number;
  readonly isAccepted: boolean;
};

/** Null: none was written. It is copied from a display: to the tenth, or wrong. */
export function temperatureRow({
  entered,
  scenario,
}: Pick<Exercise, 'entered' | 'scenario'>): TemperatureRow | null {
  const written = entered.temperatureC ?? null;
  if (written === null) return null;
  const shown = temperatureOf(scenario);
  return { written, shown, isAccepted: isCopied(written, shown) };
}

/** Of a number that was converted to degC, decimals that mean something. */
const SETTLED_DECIMALS = 3;

/** Whether it is the very number of the display in one of its units: what is one in degF is none beside it in degC. */
function isCopied(written: number, shown: number): boolean {
  return UNITS.temperature.some(
    (unit) =>
      roundTo(inUnit(written, unit), SETTLED_DECIMALS) ===
      roundTo(inUnit(shown, unit), F.thermometerDecimals.value),
  );
}
