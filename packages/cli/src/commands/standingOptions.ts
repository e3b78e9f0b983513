import {
  DEFAULT_RUN_RULES,
  numberFrom,
  type Parsed,
  parseShorthand,
  type Refusal,
  refusal,
  type StandingNumbers,
  shorthandResult,
} from '@evenfall/clinical';
import type { Given, Option } from '../options/option.js';

/** The times on the feet that have an option, in minutes; about 1 and 3 are the test. */
const STANDING_MINUTES = [0, 1, 2, 3, 5, 10] as const;

const RESTS = ['lying', 'sitting'] as const;

/** All options of `evenfall orthostatic`. */
export const STANDING_OPTIONS: readonly Option[] = [
  { name: 'lying', kind: 'value', means: 'options.lying', hint: 'S/DxPULSE' },
  { name: 'sitting', kind: 'value', means: 'options.sitting', hint: 'S/DxPULSE' },
  ...STANDING_MINUTES.map(
    (minutes): Option => ({
      name: `standing${minutes}`,
      kind: 'value',
      means: 'options.standing',
      hint: 'S/DxPULSE',
    }),
  ),
  { name: 'symptoms-at', kind: 'value', means: 'options.symptomsAt', hint: 'MINUTES' },
  { name: 'age', kind: 'value', means: 'options.age', hint: 'YEARS' },
  { name: 'supine-hypertension', kind: 'switch', means: 'options.supineHypertension' },
  { name: 'not-sinus-rhythm', kind: 'switch', means: 'options.notSinusRhythm' },
  { name: 'pacemaker', kind: 'switch', means: 'options.pacemaker' },
  { name: 'rate-slowing-drug', kind: 'switch', means: 'options.rateSlowingDrug' },
];

/** What was typed of a standing test, for `parseStandingTest`; refusals name the option. A switch that is absent is off. */
export function typedTest(given: Given): Parsed<Record<string, unknown>> {
  const refusals: Refusal[] = [];
  const numbers = (name: string) => {
    const text = given.text(name);
    if (text === null) return null;
    const read = readUpright(name, text);
    if (!read.ok) refusals.push(...read.refusals);
    return read.ok ? read.value : null;
  };
  const rests = RESTS.filter((name) => given.text(name) !== null);
  if (rests.length === 0) refusals.push(refusal('/lying', 'missing', 'numbers-at-rest', null));
  if (rests.length > 1)
    refusals.push(refusal('/sitting', 'contradicts', 'one-at-rest', given.text('sitting')));
  const from = rests[0] ?? null;
  const baseline = from === null ? null : numbers(from);
  const typed = STANDING_MINUTES.filter((minutes) => given.text(`standing${minutes}`) !== null);
  if (typed.length === 0) refusals.push(refusal('/standing3', 'missing', 'a-reading-on-the-feet', null));
  const unwell = symptomMinutes(given.text('symptoms-at'), typed, refusals);
  const readings = typed.map((minutes) => ({
    minutes,
    ...numbers(`standing${minutes}`),
    symptoms: unwell === null ? null : unwell.includes(minutes),
  }));
  if (refusals.length > 0) return { ok: false, refusals };
  return {
    ok: true,
    value: {
      from,
      baseline,
      readings,
      age: given.text('age'),
      supineHypertension: given.isOn('supine-hypertension'),
      sinusRhythm: !given.isOn('not-sinus-rhythm'),
      pacemaker: given.isOn('pacemaker'),
      rateSlowingDrug: given.isOn('rate-slowing-drug'),
    },
  };
}

/** Reads `148/84x68`, `122/Px80` or `148/84`: here the number after the x is the pulse, never a count of readings. */
function readUpright(name: string, text: string): Parsed<StandingNumbers> {
  const field = `/${name}`;
  const [pressure = '', pulse, ...more] = text.split(/x/i);
  const isOdd = more.length > 0 || pulse === '' || /\s/.test(text) || !pressure.includes('/');
  if (isOdd) return { ok: false, refusals: [refusal(field, 'not-a-number', 'pressure-and-pulse', text)] };
  // A single digit is no pulse: `148/92x2` is the mean of two readings elsewhere.
  if (pulse !== undefined && /^\d$/.test(pulse)) {
    return { ok: false, refusals: [refusal(field, 'ambiguous', 'pulse-not-readings', text)] };
  }
  const written = parseShorthand(pulse === undefined ? pressure : `${pressure} ${pulse}`);
  if (!written.ok) return { ok: false, refusals: written.refusals.map((one) => ({ ...one, field })) };
  const { systolic, diastolicUsed } = shorthandResult(written.value, DEFAULT_RUN_RULES);
  return { ok: true, value: { systolic, diastolic: diastolicUsed, pulse: written.value.pulse } };
}

/** The minutes at which the person felt unwell; null if nothing was typed of it. Each must have a reading. */
function symptomMinutes(text: string | null, typed: readonly number[], refusals: Refusal[]): number[] | null {
  if (text === null) return null;
  const minutes = text.split(',').map(numberFrom);
  const known = minutes.filter((one): one is number => one !== null && typed.includes(one));
  if (known.length === minutes.length) return known;
  const choices = typed.map(String);
  refusals.push(refusal('/symptoms-at', 'unknown-id', 'minutes-of-a-reading', text, { choices }));
  return null;
}
