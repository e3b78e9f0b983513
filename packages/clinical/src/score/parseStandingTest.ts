import { type FieldReader, readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import { isBlank, pointer } from '../contract/numberText.js';
import { type Parsed, type Refusal, refusal } from '../contract/refusal.js';
import { pulseFault, systolicFault, usableDiastolic } from '../deflation/readPressure.js';
import { numberOrNone, wholeWithin, within, yesNo } from '../sign/readSign.js';
import { SCORE_FIGURES as F } from './figures.js';
import type { StandingNumbers, StandingReading, StandingTest } from './standing.js';

const FIELDS = [
  'from',
  'baseline',
  'readings',
  'age',
  'supineHypertension',
  'sinusRhythm',
  'pacemaker',
  'rateSlowingDrug',
] as const;
const NUMBERS = ['systolic', 'diastolic', 'pulse'] as const;

/**
 * Reads a standing test: `{ from, baseline: { systolic, diastolic, pulse }, readings: [{ minutes, systolic,
 * diastolic, pulse, symptoms }], age, supineHypertension, sinusRhythm, pacemaker, rateSlowingDrug }`. At least one
 * reading, later ones at later minutes. A number that is absent is not known.
 *
 * Errors, all together: `missing`, `not-a-number`, `out-of-range`, `out-of-order`, `impossible`, `unknown-id`,
 * `unknown-field`, `not-below-systolic`.
 */
export function parseStandingTest(input: unknown): Parsed<StandingTest> {
  const reader = readFields(input, FIELDS);
  const from = reader.choice<StandingTest['from']>('from', ['lying', 'sitting'], null);
  const baseline = readBaseline(reader);
  const readings = readReadings(reader);
  const age = numberOrNone(reader, 'age', wholeWithin(0, F.mostAgeYears.value));
  const supineHypertension = yesNo(reader, 'supineHypertension', null);
  const sinusRhythm = yesNo(reader, 'sinusRhythm', null);
  const pacemaker = yesNo(reader, 'pacemaker', null);
  const rateSlowingDrug = yesNo(reader, 'rateSlowingDrug', null);
  if (reader.refusals.length > 0 || from === null || baseline === null) {
    return { ok: false, refusals: inOrder(reader.refusals, FIELDS) };
  }
  const known = { age, supineHypertension, sinusRhythm, pacemaker, rateSlowingDrug };
  return { ok: true, value: { from, baseline, readings, ...known } };
}

function readBaseline({ raw, refusals }: FieldReader): StandingNumbers | null {
  if (isBlank(raw('baseline'))) {
    refusals.push(refusal('/baseline', 'missing', 'numbers-at-rest', null));
    return null;
  }
  const reader = readFields(raw('baseline'), NUMBERS, '/baseline');
  const numbers = readNumbers(reader, '/baseline');
  refusals.push(...reader.refusals);
  return numbers;
}

function readReadings({ raw, refusals }: FieldReader): StandingReading[] {
  const given = raw('readings');
  if (!Array.isArray(given) || given.length === 0) {
    refusals.push(refusal('/readings', 'missing', 'a-reading-on-the-feet', Array.isArray(given) ? null : given)); // biome-ignore format: one thought
    return [];
  }
  const readings: StandingReading[] = [];
  for (const [at, one] of given.entries()) {
    const parent = pointer('/readings', at);
    const reader = readFields(one, ['minutes', ...NUMBERS, 'symptoms'], parent);
    const minutes = reader.number('minutes', within(0, F.longestStandingMinutes.value));
    const numbers = readNumbers(reader, parent);
    const symptoms = yesNo(reader, 'symptoms', null, parent);
    refusals.push(...reader.refusals);
    const before = readings.at(-1)?.minutes;
    if (minutes !== null && before !== undefined && minutes <= before) refusals.push(notLater(parent, minutes, before)); // biome-ignore format: one thought
    if (minutes !== null) readings.push({ minutes, ...numbers, symptoms });
  }
  return readings;
}

function notLater(parent: string, minutes: number, beforeMinutes: number): Refusal {
  return refusal(pointer(parent, 'minutes'), 'out-of-order', 'later-minutes', minutes, {
    figures: { beforeMinutes },
  });
}

function readNumbers(reader: FieldReader, parent: string): StandingNumbers {
  const systolic = numberOrNone(reader, 'systolic', systolicFault);
  const diastolic = usableDiastolic(reader, 'diastolic');
  const pulse = numberOrNone(reader, 'pulse', pulseFault);
  if (systolic !== null && diastolic !== null && diastolic >= systolic) {
    const at = pointer(parent, 'diastolic');
    reader.refusals.push(refusal(at, 'not-below-systolic', 'below-systolic', diastolic, { figures: { systolic } })); // biome-ignore format: one thought
  }
  return { systolic, diastolic, pulse };
}
