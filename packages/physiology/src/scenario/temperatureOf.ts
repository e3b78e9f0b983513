import { PERSON_FIGURES } from '../person/figures.js';
import type { Scenario } from './scenario.js';

/** What a thermometer under the tongue of this person shows, degC, to a tenth. */
export function temperatureOf({ temperatureC }: Pick<Scenario, 'temperatureC'>): number {
  return Math.round((temperatureC ?? PERSON_FIGURES.usualCelsius.value) * 10) / 10;
}
