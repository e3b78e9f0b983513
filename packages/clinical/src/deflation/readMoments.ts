import { readFields } from '../contract/fields.js';
import { isBlank, pointer } from '../contract/numberText.js';
import { type Refusal, refusal } from '../contract/refusal.js';
import { abovePeak, type PlacedMoment, sequenceRefusals } from './momentSequence.js';
import { optionalNumber, pressureFault, systolicFault, timeFault } from './readPressure.js';
import { type Method, MOMENTS, type Moment, type MomentOf, type Palpated, type Peak } from './run.js';

/** The moments that belong to a method; those that it cannot do without come first. */
const MOMENTS_OF: Readonly<Record<Method, readonly MomentOf[]>> = {
  auscultation: ['first sound', 'last sound', 'muffled'],
  palpation: ['pulse back'],
  device: ['first sound', 'last sound'],
};

/** The moments of a run in the order given, and everything wrong with them. By palpation the return of the pulse is filled in from `palpated`. */
export function readMoments(
  got: unknown,
  method: Method | null,
  palpated: Palpated,
  peak: Peak | null,
): { moments: readonly Moment[]; refusals: readonly Refusal[] } {
  const isAbsent = isBlank(got);
  const back = method === 'palpation' ? palpated.backMmHg : null;
  if (!isAbsent && !Array.isArray(got)) {
    return { moments: [], refusals: [refusal('/moments', 'missing', 'a-list', got)] };
  }
  const items: readonly unknown[] = isAbsent ? [] : (got as unknown[]);
  const read = items.map(readMoment);
  const refusals = read.flatMap((one) => one.refusals);
  const placed = read.flatMap(({ moment }, index) => (moment === null ? [] : [{ ...moment, index }]));
  if (method !== null) {
    refusals.push(...foreign(method, placed), ...missing(method, items.map(namedIn), back));
  } else if (items.length === 0) {
    refusals.push(refusal('/moments', 'missing', 'a-list', null));
  }
  refusals.push(...sequenceRefusals(placed, peak));
  const moments: Moment[] = placed.map(({ what, mmHg, atSeconds }) => ({ what, mmHg, atSeconds }));
  if (back !== null && moments.length === 0) {
    if (peak !== null && back > peak.mmHg) refusals.push(abovePeak('/palpated/backMmHg', back, peak));
    moments.push({ what: 'pulse back', mmHg: back, atSeconds: null });
  }
  return { moments, refusals: byPlace(refusals) };
}

function readMoment(got: unknown, index: number): { moment: Moment | null; refusals: Refusal[] } {
  const reader = readFields(got, ['what', 'mmHg', 'atSeconds'], pointer('/moments', index));
  const what = reader.choice<MomentOf>('what', MOMENTS, null);
  const isSystolic = what === 'first sound' || what === 'pulse back';
  const mmHg = reader.number('mmHg', isSystolic ? systolicFault : pressureFault);
  const atSeconds = optionalNumber(reader, 'atSeconds', timeFault);
  const moment = what === null || mmHg === null ? null : { what, mmHg, atSeconds };
  return { moment, refusals: reader.refusals };
}

function namedIn(item: unknown): unknown {
  return typeof item === 'object' && item !== null && 'what' in item ? item.what : null;
}

/** Moments that this method cannot have. */
function foreign(method: Method, moments: readonly PlacedMoment[]): Refusal[] {
  const choices = MOMENTS_OF[method];
  return moments
    .filter(({ what }) => !choices.includes(what))
    .map(({ what, index }) =>
      refusal(pointer(pointer('/moments', index), 'what'), 'contradicts', 'moment-of-method', what, {
        choices,
      }),
    );
}

/** Moments without which there is no reading. One that was named and refused is not missing too. */
function missing(method: Method, named: readonly unknown[], back: number | null): Refusal[] {
  return MOMENTS_OF[method]
    .filter(
      (what) => what !== 'muffled' && !named.includes(what) && !(what === 'pulse back' && back !== null),
    )
    .map((what) => refusal('/moments', 'missing', 'moment', null, { choices: [what] }));
}

/** In order of place; what is wrong with the whole list comes before what is wrong with its items. */
function byPlace(refusals: readonly Refusal[]): Refusal[] {
  const place = (field: string) => Number(field.split('/')[2] ?? -1);
  return [...refusals].sort((a, b) => place(a.field) - place(b.field));
}
