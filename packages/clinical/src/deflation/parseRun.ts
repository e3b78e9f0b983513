import { type FieldReader, readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import { isBlank } from '../contract/numberText.js';
import { type Parsed, type Refusal, refusal } from '../contract/refusal.js';
import { readMoments } from './readMoments.js';
import {
  optionalNumber,
  pressureFault,
  pulseFault,
  stepFault,
  systolicFault,
  timeFault,
} from './readPressure.js';
import { DEFAULT_DEFLATION_RULES, type DeflationRules } from './rules.js';
import { METHODS, type Method, type Moment, type Palpated, type Peak, type Run } from './run.js';

const FIELDS = [
  'method',
  'gaugeStepMmHg',
  'pulsePerMinute',
  'palpated',
  'peak',
  'reinflated',
  'moments',
] as const;

/**
 * Reads a run from outside: `{ method, gaugeStepMmHg, pulsePerMinute, palpated: { lostMmHg, backMmHg },
 * peak: { mmHg, atSeconds }, reinflated, moments: [{ what, mmHg, atSeconds }] }`. Numbers may come as text.
 * Only `method` and `moments` are needed; an absent graduation is that of the local rules, and by palpation
 * `palpated.backMmHg` may stand in place of the moment `pulse back`.
 *
 * Errors, all together, at JSON Pointers in the order above: `missing`, `not-a-number`, `out-of-range`,
 * `unknown-id`, `unknown-field`, `impossible` (a pulse over the ceiling), `repeated`, `contradicts` (a moment of
 * another method; two values of one fact), `out-of-order` (a later moment above an earlier one or above the
 * peak, a time not after the one before), `not-below-systolic`.
 * Source: docs/conventions.md section 6.
 */
export function parseRun(input: unknown, rules: DeflationRules = DEFAULT_DEFLATION_RULES): Parsed<Run> {
  const reader = readFields(input, FIELDS);
  const method = reader.choice<Method>('method', METHODS, null);
  const gaugeStepMmHg = optionalNumber(reader, 'gaugeStepMmHg', stepFault) ?? rules.gaugeStepMmHg;
  const pulsePerMinute = optionalNumber(reader, 'pulsePerMinute', pulseFault);
  const reinflated = readYesNo(reader, 'reinflated');
  const { palpated, refusals: ofPalpated } = readPalpated(reader.raw('palpated'));
  const { peak, refusals: ofPeak } = readPeak(reader.raw('peak'));
  const read = readMoments(reader.raw('moments'), method, palpated, peak);
  const refusals = inOrder(
    [
      ...reader.refusals,
      ...ofPalpated,
      ...contradictions(method, palpated, peak, read.moments),
      ...ofPeak,
      ...read.refusals,
    ],
    FIELDS,
  );
  if (refusals.length > 0 || method === null) return { ok: false, refusals };
  const moments = read.moments;
  return {
    ok: true,
    value: { method, gaugeStepMmHg, pulsePerMinute, palpated, peak, reinflated, moments },
  };
}

function readYesNo(reader: FieldReader, key: string): boolean {
  const got = reader.raw(key);
  return typeof got === 'boolean' ? got : reader.choice(key, ['true', 'false'], 'false') === 'true';
}

function readPalpated(got: unknown): { palpated: Palpated; refusals: readonly Refusal[] } {
  const reader = readFields(got, ['lostMmHg', 'backMmHg'], '/palpated');
  const lostMmHg = optionalNumber(reader, 'lostMmHg', systolicFault);
  const backMmHg = optionalNumber(reader, 'backMmHg', systolicFault);
  return { palpated: { lostMmHg, backMmHg }, refusals: reader.refusals };
}

function readPeak(got: unknown): { peak: Peak | null; refusals: readonly Refusal[] } {
  if (isBlank(got)) return { peak: null, refusals: [] };
  const reader = readFields(got, ['mmHg', 'atSeconds'], '/peak');
  const mmHg = reader.number('mmHg', pressureFault);
  const atSeconds = optionalNumber(reader, 'atSeconds', timeFault);
  return { peak: mmHg === null ? null : { mmHg, atSeconds }, refusals: reader.refusals };
}

/** By palpation the return of the pulse is one fact in two places, and the pulse was lost on the way to this peak. */
function contradictions(
  method: Method | null,
  { lostMmHg, backMmHg }: Palpated,
  peak: Peak | null,
  moments: readonly Moment[],
): Refusal[] {
  if (method !== 'palpation') return [];
  const refusals: Refusal[] = [];
  if (peak !== null && lostMmHg !== null && lostMmHg > peak.mmHg) {
    const figures = { peakMmHg: peak.mmHg };
    refusals.push(refusal('/palpated/lostMmHg', 'contradicts', 'not-above-peak', lostMmHg, { figures }));
  }
  const back = moments.find(({ what }) => what === 'pulse back');
  if (back !== undefined && backMmHg !== null && back.mmHg !== backMmHg) {
    const figures = { momentMmHg: back.mmHg };
    refusals.push(refusal('/palpated/backMmHg', 'contradicts', 'same-as-moment', backMmHg, { figures }));
  }
  return refusals;
}
