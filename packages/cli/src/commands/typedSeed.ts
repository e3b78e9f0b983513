import { type Parsed, readFields } from '@evenfall/clinical';
import type { Given } from '../options/option.js';

const USUAL_SEED = '1';
/** Chance is drawn from 32 bits. */
const SEEDS = { minimum: 0, maximum: 2 ** 32 - 1 };

/** The option `--seed`, 1 if absent. Errors: `/seed`: `not-a-number`, `not-whole`, `out-of-range`. */
export function typedSeed(given: Given): Parsed<number> {
  return wholeOption(given, 'seed', USUAL_SEED, SEEDS);
}

/** A whole number of an option. Errors at `/NAME`: `not-a-number`, `not-whole`, `out-of-range`. */
export function wholeOption(
  given: Given,
  name: string,
  usual: string,
  limits: { readonly minimum: number; readonly maximum: number },
): Parsed<number> {
  const reader = readFields({ [name]: given.text(name) ?? usual }, [name]);
  const value = reader.number(
    name,
    (got) => {
      if (!Number.isInteger(got)) return { code: 'not-whole', expected: 'a-whole-number', figures: {} };
      if (got >= limits.minimum && got <= limits.maximum) return null;
      return { code: 'out-of-range', expected: 'within-limits', figures: limits };
    },
    'a-whole-number',
  );
  return value === null ? { ok: false, refusals: reader.refusals } : { ok: true, value };
}
