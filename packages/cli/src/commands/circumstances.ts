import {
  type Circumstances,
  isBlank,
  numberFrom,
  type Parsed,
  PULSE_SITES,
  type PulseSite,
  type Refusal,
  refusal,
} from '@evenfall/clinical';
import type { Given, Option } from '../options/option.js';

/** The options that say what else is known of a count and of the person. */
export const CIRCUMSTANCE_OPTIONS: readonly Option[] = [
  { name: 'rhythm', kind: 'value', means: 'options.rhythm', choices: ['regular', 'irregular'] },
  { name: 'strength', kind: 'value', means: 'options.strength', choices: ['weak', 'normal', 'strong'] },
  { name: 'site', kind: 'value', means: 'options.site', hint: 'SITE', choices: PULSE_SITES },
  { name: 'age-months', kind: 'value', means: 'options.ageMonths', hint: 'MONTHS' },
  { name: 'previous', kind: 'value', means: 'options.previous', hint: 'RATE' },
  { name: 'device', kind: 'value', means: 'options.deviceRate', hint: 'RATE' },
  { name: 'first-set', kind: 'switch', means: 'options.firstSet' },
  { name: 'heart-rate-drug', kind: 'switch', means: 'options.heartRateDrug' },
];

/** What was typed of the circumstances. What was not typed is not known; a switch that is absent is off. */
export function parseCircumstances(given: Given): Parsed<Circumstances> {
  const refusals: Refusal[] = [];
  const fromZero = (name: string): number | null => {
    const got = given.text(name);
    if (isBlank(got)) return null;
    const value = numberFrom(got);
    if (value === null) refusals.push(refusal(`/${name}`, 'not-a-number', 'a-number', got));
    else if (value < 0) {
      refusals.push(refusal(`/${name}`, 'out-of-range', 'not-negative', got, { figures: { minimum: 0 } }));
    }
    return value;
  };
  const circumstances: Circumstances = {
    rhythmFelt: given.text('rhythm') as Circumstances['rhythmFelt'],
    strength: given.text('strength') as Circumstances['strength'],
    site: given.text('site') as PulseSite | null,
    ageMonths: fromZero('age-months'),
    previousPerMinute: fromZero('previous'),
    devicePerMinute: fromZero('device'),
    firstOnPerson: given.isOn('first-set'),
    heartRateDrug: given.isOn('heart-rate-drug'),
  };
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, value: circumstances };
}
