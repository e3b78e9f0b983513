import type { FieldReader } from '../contract/fields.js';
import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import type { SignCircumstances } from './circumstances.js';
import type { SignFlagCode } from './codes.js';
import { SIGN_COMPARISONS as SIDE } from './comparisons.js';
import { SIGN_FIGURES as F } from './figures.js';
import { within } from './readSign.js';
import { TEMPERATURE_SITES, type Temperature, type TemperatureSite } from './sign.js';

export const TEMPERATURE_FIELDS = ['of', 'celsius', 'site'] as const;

/** Reads a temperature; null if anything was refused. */
export function readTemperature(reader: FieldReader): Temperature | null {
  const celsius = reader.number('celsius', within(F.coldestCelsius.value, F.hottestCelsius.value));
  const site = reader.choice<TemperatureSite>('site', TEMPERATURE_SITES, null);
  return celsius === null || site === null ? null : { of: 'temperature', celsius, site };
}

/**
 * What to know of a temperature: an entry to be looked at again, a mouth taken too soon, and a word for how far it
 * is from usual, the gravest only. The words are from memory: to be confirmed with the local protocol.
 * Source: bedside handbook 4.1.
 */
export function temperatureFlags(
  { celsius, site }: Temperature,
  known: SignCircumstances,
): Flag<SignFlagCode>[] {
  const flags: Flag<SignFlagCode>[] = [];
  const lowCelsius = F.queryColdCelsius.value;
  const highCelsius = F.queryHotCelsius.value;
  const isQueried =
    passes(celsius, SIDE.queryColdCelsius, lowCelsius) || passes(celsius, SIDE.queryHotCelsius, highCelsius);
  if (isQueried)
    flags.push({ code: 'implausible-temperature', figures: { celsius, lowCelsius, highCelsius } });
  const { minutesSinceDrinkOrSmoke: minutes } = known;
  const waitMinutes = F.mouthWaitMinutes.value;
  if (site === 'oral' && minutes !== null && passes(minutes, SIDE.mouthWaitMinutes, waitMinutes)) {
    flags.push({ code: 'mouth-too-soon', figures: { minutes, waitMinutes } });
  }
  const word = hotWord(celsius, known.ageMonths) ?? coldWord(celsius);
  return word === null ? flags : [...flags, word];
}

function hotWord(celsius: number, ageMonths: number | null): Flag<SignFlagCode> | null {
  const young = ageMonths !== null && passes(ageMonths, SIDE.youngInfantUnderMonths, F.youngInfantUnderMonths.value); // biome-ignore format: one thought
  const infant = ageMonths !== null && passes(ageMonths, SIDE.infantUnderMonths, F.infantUnderMonths.value);
  const words = [
    ['fever-young-infant', young, 'youngInfantFeverCelsius'],
    ['fever-infant', infant, 'infantFeverCelsius'],
    ['hyperpyrexia', true, 'hyperpyrexiaCelsius'],
    ['fever', true, 'feverCelsius'],
  ] as const;
  for (const [code, applies, id] of words) {
    const limitCelsius = F[id].value;
    if (applies && passes(celsius, SIDE[id], limitCelsius))
      return { code, figures: { celsius, limitCelsius } };
  }
  return null;
}

function coldWord(celsius: number): Flag<SignFlagCode> | null {
  const words = [
    ['hypothermia-severe', 'hypothermiaSevereCelsius'],
    ['hypothermia-moderate', 'hypothermiaModerateCelsius'],
    ['hypothermia-mild', 'hypothermiaCelsius'],
  ] as const;
  for (const [code, id] of words) {
    const limitCelsius = F[id].value;
    if (passes(celsius, SIDE[id], limitCelsius)) return { code, figures: { celsius, limitCelsius } };
  }
  return null;
}
