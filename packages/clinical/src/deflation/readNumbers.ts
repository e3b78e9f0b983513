import type { NumberFault } from '../contract/fields.js';
import { numberFrom } from '../contract/numberText.js';
import { type Refusal, refusal } from '../contract/refusal.js';
import { DEFLATION_FIGURES as F } from './figures.js';
import type { Gap } from './pressures.js';
import { pressureFault, pulseFault, systolicFault } from './readPressure.js';

/** The word before the limits of a gap. */
export const GAP = 'gap';

/** The numbers of a shorthand: two, three, or one by feel. */
export type WrittenNumbers = {
  readonly systolic: number;
  readonly muffled: number | null;
  readonly diastolic: number | null;
  readonly readings: number;
  readonly isPalpated: boolean;
};

type Read<T> = { readonly value: T } | { readonly refusals: Refusal[] };

const PALPATED = /^(p|palp)$/i;

/** Reads `148/92`, `118/62/0`, `122/P` and `148/92x2`. */
export function readNumbers(text: string): Read<WrittenNumbers> {
  const [pressures = '', ...times] = text.split(/x/i);
  const parts = pressures.split('/');
  const [first = '', ...rest] = parts;
  const isPalpated = rest.length === 1 && PALPATED.test(rest[0] ?? '');
  const refusals: Refusal[] = [];
  if (rest.length > 2) refusals.push(refusal('/diastolic', 'ambiguous', 'two-or-three-numbers', text));
  const systolic = readOne('/systolic', first, systolicFault, refusals);
  const muffled = rest.length === 2 ? readOne('/muffled', rest[0] ?? '', pressureFault, refusals) : null;
  const last = rest.at(-1) ?? '';
  if (systolic !== null && rest.length === 1 && last === '') return { refusals: [loneNumber(systolic)] };
  const diastolic = isPalpated ? null : readOne('/diastolic', last, pressureFault, refusals);
  const readings = times.length === 0 ? 1 : readTimes(times.join('x'), refusals);
  if (refusals.length === 0) refusals.push(...notFalling(systolic, muffled, diastolic));
  if (refusals.length > 0 || systolic === null || readings === null) return { refusals };
  return { value: { systolic, muffled, diastolic, readings, isPalpated } };
}

/** What is wrong with one number alone: it is no pressure, or its second number was left out. */
export function loneNumber(mmHg: number): Refusal {
  const fault = systolicFault(mmHg);
  return fault === null
    ? refusal('/diastolic', 'missing', 'second-number', mmHg, { figures: { systolic: mmHg } })
    : refusal('/systolic', fault.code, fault.expected, mmHg, { figures: fault.figures });
}

/** Each number is below the first, and the last not above the muffling. */
function notFalling(systolic: number | null, muffled: number | null, diastolic: number | null): Refusal[] {
  if (systolic === null) return [];
  const refusals = Object.entries({ muffled, diastolic })
    .filter(([, mmHg]) => mmHg !== null && mmHg >= systolic)
    .map(([key, mmHg]) =>
      refusal(`/${key}`, 'not-below-systolic', 'below-systolic', mmHg, { figures: { systolic } }),
    );
  if (refusals.length > 0 || muffled === null || diastolic === null || diastolic <= muffled) return refusals;
  const figures = { beforeMmHg: muffled };
  return [refusal('/diastolic', 'out-of-order', 'not-above-moment-before', diastolic, { figures })];
}

function readOne(
  field: string,
  text: string,
  check: (value: number) => NumberFault | null,
  refusals: Refusal[],
): number | null {
  const value = numberFrom(text);
  const fault: NumberFault | null =
    text === ''
      ? { code: 'missing', expected: 'a-number', figures: {} }
      : value === null
        ? { code: 'not-a-number', expected: 'a-number', figures: {} }
        : check(value);
  if (fault === null) return value;
  refusals.push(refusal(field, fault.code, fault.expected, text, { figures: fault.figures }));
  return null;
}

function readTimes(text: string, refusals: Refusal[]): number | null {
  return readOne('/readings', text, timesFault, refusals);
}

function timesFault(readings: number): NumberFault | null {
  const maximum = F.mostReadings.value;
  if (!Number.isInteger(readings)) return { code: 'not-whole', expected: 'a-whole-number', figures: {} };
  if (readings >= 2 && readings <= maximum) return null;
  return { code: 'out-of-range', expected: 'within-limits', figures: { minimum: 2, maximum } };
}

/** Reads a pulse per minute: a whole number, as one is written. */
export function readPulse(text: string): Read<number> {
  const refusals: Refusal[] = [];
  const value = readOne('/pulse', text, wholePulseFault, refusals);
  return value === null ? { refusals } : { value };
}

function wholePulseFault(perMinute: number): NumberFault | null {
  if (Number.isInteger(perMinute)) return pulseFault(perMinute);
  return { code: 'not-whole', expected: 'a-whole-number', figures: {} };
}

/** Reads the limits of a gap, `186-152`: where sounds vanished, and lower or as low, where they came back. */
export function readGap(text: string | null): Read<Gap> {
  const [from, to, ...more] = (text ?? '').split('-').map(numberFrom);
  if (text === null) return { refusals: [refusal('/gap', 'missing', 'gap-limits', null)] };
  if (typeof from !== 'number' || typeof to !== 'number' || more.length > 0) {
    return { refusals: [refusal('/gap', 'not-a-number', 'gap-limits', text)] };
  }
  if (to > from) return { refusals: [refusal('/gap', 'out-of-order', 'gap-falling', text)] };
  return { value: { fromMmHg: from, toMmHg: to } };
}
