import { temperatureOf } from '@evenfall/physiology';
import type { Exercise } from './exercise.js';

/** A temperature that was written beside what the thermometer showed, degC. */
export type TemperatureRow = {
  readonly written: number;
  readonly shown: number;
  readonly isAccepted: boolean;
};

/** Half of the tenth that a thermometer shows. */
const HALF_MARK = 0.05;

/** Null: none was written. It is copied from a display: to the tenth, or wrong. */
export function temperatureRow({
  entered,
  scenario,
}: Pick<Exercise, 'entered' | 'scenario'>): TemperatureRow | null {
  const written = entered.temperatureC ?? null;
  if (written === null) return null;
  const shown = temperatureOf(scenario);
  return { written, shown, isAccepted: Math.abs(written - shown) < HALF_MARK };
}
