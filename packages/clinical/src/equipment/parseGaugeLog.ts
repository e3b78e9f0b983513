import { type FieldReader, type NumberCheck, readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import { isBlank, pointer } from '../contract/numberText.js';
import { type Parsed, type Refusal, refusal } from '../contract/refusal.js';
import { EQUIPMENT_FIGURES as F } from './figures.js';
import { type ComparisonPoint, GAUGE_CHECKS, GAUGE_EVENTS, type GaugeLog } from './gaugeLog.js';

const OF = [...GAUGE_CHECKS, ...GAUGE_EVENTS] as const;
const FIELDS = ['of', 'restMmHg', 'reference', 'points', 'fromMmHg', 'toMmHg', 'seconds'] as const;

/**
 * Reads what was done with a gauge: `{ of: 'zero', restMmHg }`, `{ of: 'comparison', reference, points:
 * [{ referenceMmHg, gaugeMmHg }] }`, `{ of: 'leak', fromMmHg, toMmHg, seconds }`, `{ of: 'dropped' }`,
 * `{ of: 'repaired' }`. Numbers may come as text. A point of which neither number was given is left out.
 *
 * Errors, all together in the order above: `missing`, `not-a-number`, `out-of-range`, `unknown-id`, `unknown-field`,
 * `out-of-order` (a leak that ends above its start). A blank is `missing`; it is never zero.
 */
export function parseGaugeLog(input: unknown): Parsed<GaugeLog> {
  const reader = readFields(input, FIELDS);
  const of = reader.choice('of', OF, null);
  const read = of === null ? null : readLog(of, reader);
  if (reader.refusals.length > 0 || read === null)
    return { ok: false, refusals: inOrder(reader.refusals, FIELDS) };
  return { ok: true, value: read };
}

function readLog(of: (typeof OF)[number], reader: FieldReader): GaugeLog | null {
  switch (of) {
    case 'zero': {
      const restMmHg = reader.number('restMmHg', between(-F.topMmHg.value));
      return restMmHg === null ? null : { of, restMmHg };
    }
    case 'comparison': {
      const reference = reader.raw('reference');
      const named = typeof reference === 'string' ? reference.trim() : '';
      if (named === '') reader.refusals.push(refusal('/reference', 'missing', 'gauge-reference', null));
      const points = readPoints(reader);
      return named === '' ? null : { of, reference: named, points };
    }
    case 'leak': {
      const fromMmHg = reader.number('fromMmHg', between(0));
      const toMmHg = reader.number('toMmHg', between(0));
      const seconds = reader.number('seconds', (value) =>
        value > 0 && value <= F.longestLeakSeconds.value
          ? null
          : {
              code: 'out-of-range',
              expected: 'over-zero-at-most',
              figures: { maximum: F.longestLeakSeconds.value },
            },
      );
      if (fromMmHg === null || toMmHg === null || seconds === null) return null;
      if (toMmHg > fromMmHg)
        reader.refusals.push(
          refusal('/toMmHg', 'out-of-order', 'not-above-moment-before', toMmHg, {
            figures: { beforeMmHg: fromMmHg },
          }),
        );
      return { of, fromMmHg, toMmHg, seconds };
    }
    default:
      return { of };
  }
}

function readPoints(reader: FieldReader): ComparisonPoint[] {
  const got = reader.raw('points');
  const given = Array.isArray(got) ? got : [];
  const points: ComparisonPoint[] = [];
  let isGiven = false;
  for (const [index, one] of given.entries()) {
    const fields = readFields(one, ['referenceMmHg', 'gaugeMmHg'], pointer('/points', index));
    if (isBlank(fields.raw('referenceMmHg')) && isBlank(fields.raw('gaugeMmHg'))) continue;
    isGiven = true;
    const referenceMmHg = fields.number('referenceMmHg', between(0));
    const gaugeMmHg = fields.number('gaugeMmHg', between(-F.topMmHg.value));
    reader.refusals.push(...fields.refusals);
    if (referenceMmHg !== null && gaugeMmHg !== null) points.push({ referenceMmHg, gaugeMmHg });
  }
  if (!isGiven) reader.refusals.push(noPoints());
  return points;
}

function noPoints(): Refusal {
  return refusal('/points', 'missing', 'gauge-points', null);
}

/** From so many mmHg to the top of any gauge. */
function between(minimum: number): NumberCheck {
  const maximum = F.topMmHg.value;
  return (value) =>
    value >= minimum && value <= maximum
      ? null
      : { code: 'out-of-range', expected: 'gauge-between', figures: { minimum, maximum } };
}
