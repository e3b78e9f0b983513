import { readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import { isBlank, pointer } from '../contract/numberText.js';
import { type Parsed, type Refusal, refusal } from '../contract/refusal.js';
import type { CountOf } from '../count/count.js';
import { placesWithoutBounces } from './bounce.js';
import type { TapSource, Taps } from './taps.js';
import { readTapTimes, refusalOfAll } from './tapTimes.js';

const FIELDS = ['of', 'source', 'seconds'] as const;

/**
 * Reads taps from outside: `{ of, source, seconds }`. `of` may be absent (a pulse); `seconds` is a list of
 * numbers, each later than the one before.
 *
 * Errors, all together: fields `/of`, `/source`, `/seconds`, `/seconds/0` and so on, and any unknown one:
 * `missing`, `unknown-id`, `unknown-field`, `not-a-number`, `out-of-order`, `out-of-range`, and `impossible`
 * over 400 a minute (on a touch screen after bounces are taken out, so that a bouncing screen refuses nothing).
 * Source: docs/conventions.md section 5.
 */
export function parseTaps(input: unknown): Parsed<Taps> {
  const reader = readFields(input, FIELDS);
  const of = reader.choice<CountOf>('of', ['pulse', 'breaths'], 'pulse');
  const source = reader.choice<TapSource>('source', ['touch', 'key', 'file'], null);
  const { seconds, refusals } = readSeconds(reader.raw('seconds'));
  if (refusals.length === 0) {
    const kept =
      source === 'touch' ? placesWithoutBounces(seconds).map((at) => seconds[at] as number) : seconds;
    const impossible = refusalOfAll(kept, '/seconds');
    if (impossible !== null) refusals.push(impossible);
  }
  const all = inOrder([...reader.refusals, ...refusals], FIELDS);
  if (all.length > 0 || of === null || source === null) return { ok: false, refusals: all };
  return { ok: true, value: { of, source, seconds } };
}

function readSeconds(got: unknown): { seconds: number[]; refusals: Refusal[] } {
  if (Array.isArray(got)) {
    return readTapTimes(
      got.map((one, index) => ({ got: one, field: pointer('/seconds', index), line: null })),
    );
  }
  const code = isBlank(got) ? 'missing' : 'not-a-number';
  return { seconds: [], refusals: [refusal('/seconds', code, 'a-list', got)] };
}
