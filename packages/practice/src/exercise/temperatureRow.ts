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
  return { written, shown, isAccepted: Math.abs(written - shown) < F.thermometerStepC.value / 2 };
}
