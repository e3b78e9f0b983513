import { type FieldReader, type NumberFault, readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import type { Parsed } from '../contract/refusal.js';
import { refusal } from '../contract/refusal.js';
import { passes, settled } from '../contract/threshold.js';
import { COUNT_COMPARISONS as SIDE } from './comparisons.js';
import type { Count, CountClock, CountFirst, CountOf } from './count.js';
import { COUNT_FIGURES } from './figures.js';
import { type CountRules, DEFAULT_COUNT_RULES } from './rules.js';

const FIELDS = ['n', 'windowSeconds', 'clock', 'first', 'of'] as const;

/**
 * Reads a count from outside: a form's fields, a request body, a command line. Numbers may come as text.
 * `clock`, `first` and `of` may be absent: then the local rules' start and a pulse.
 *
 * Errors: fields `/n`, `/windowSeconds`, `/clock`, `/first`, `/of` and any unknown one, all together:
 * `missing`, `not-a-number`, `not-whole`, `out-of-range`, `unknown-id`, `unknown-field`; `impossible` when the
 * rate is over the ceiling. `n` must be at least 1 if the clock started on a beat that was called 1.
 * Source: docs/conventions.md section 5.
 */
export function parseCount(input: unknown, rules: CountRules = DEFAULT_COUNT_RULES): Parsed<Count> {
  const reader = readFields(input, FIELDS);
  const n = reader.number('n', countFault, 'a-whole-number');
  const start = readStart(reader, rules);
  const { refusals } = reader;
  if (n !== null && start.clock === 'beat' && start.first === 1 && n < 1) {
    refusals.push(refusal('/n', 'out-of-range', 'at-least-first-beat', n, { figures: { minimum: 1 } }));
  }
  if (n !== null && start.windowSeconds !== null) {
    const perMinute = settled((60 * n) / start.windowSeconds);
    const figures = { perMinute, ceilingPerMinute: rules.ceilingPerMinute };
    if (passes(perMinute, SIDE.ceilingPerMinute, rules.ceilingPerMinute)) {
      refusals.push(refusal('/n', 'impossible', 'at-most-per-minute', n, { figures }));
    }
  }
  const { of, windowSeconds, clock, first } = start;
  if (refusals.length > 0 || n === null || windowSeconds === null || of === null) {
    return { ok: false, refusals: inOrder(refusals, FIELDS) };
  }
  if (clock === null || first === null) return { ok: false, refusals: inOrder(refusals, FIELDS) };
  return { ok: true, value: { of, n, windowSeconds, clock, first } };
}

/** How a count was started and for how long; null for each part that was refused. */
export type CountStart = {
  readonly of: CountOf | null;
  readonly windowSeconds: number | null;
  readonly clock: CountClock | null;
  readonly first: CountFirst | null;
};

/** The fields that a count and a void one share. */
export function readStart(reader: FieldReader, rules: CountRules): CountStart {
  const windowSeconds = reader.number('windowSeconds', (value) => windowFault(value, rules));
  const clock = reader.choice<CountClock>('clock', ['beat', 'any'], rules.clock);
  const first = reader.choice('first', ['0', '1'], rules.first === 0 ? '0' : '1');
  const of = reader.choice<CountOf>('of', ['pulse', 'breaths'], 'pulse');
  return { of, windowSeconds, clock, first: first === null ? null : first === '0' ? 0 : 1 };
}

function countFault(n: number): NumberFault | null {
  if (!Number.isInteger(n)) return { code: 'not-whole', expected: 'a-whole-number', figures: {} };
  return n < 0 ? { code: 'out-of-range', expected: 'not-negative', figures: { minimum: 0 } } : null;
}

function windowFault(seconds: number, { longestWindowSeconds }: CountRules): NumberFault | null {
  const shortestWindowSeconds = COUNT_FIGURES.shortestWindowSeconds.value;
  if (seconds > 0 && passes(seconds, SIDE.shortestWindowSeconds, shortestWindowSeconds))
    return { code: 'out-of-range', expected: 'window-at-least', figures: { shortestWindowSeconds } };
  if (seconds > 0 && !passes(seconds, SIDE.longestWindowSeconds, longestWindowSeconds)) return null;
  return { code: 'out-of-range', expected: 'window-over-zero-at-most', figures: { longestWindowSeconds } };
}
