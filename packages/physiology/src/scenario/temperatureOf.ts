import { PERSON_FIGURES } from '../person/figures.js';
import type { Scenario } from './scenario.js';

/** Where the thermometer of this person is put. */
export function thermometerPlace({ ageYears }: Pick<Scenario, 'ageYears'>): 'tongue' | 'ear' {
  return ageYears < PERSON_FIGURES.leastTongueYears.value ? 'ear' : 'tongue';
}

/** What it shows there, degC, to a tenth. */
export function temperatureOf({ temperatureC }: Pick<Scenario, 'temperatureC'>): number {
  return Math.round((temperatureC ?? PERSON_FIGURES.usualCelsius.value) * 10) / 10;
}
