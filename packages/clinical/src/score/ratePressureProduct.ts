import { heldAt } from './bands.js';
import { type DerivedValue, without } from './derivedValue.js';
import { missingOf, type ScoreInputs } from './scoreInputs.js';

export type RatePressureBand = 'below-usual' | 'usual' | 'above-usual';

/**
 * The rate-pressure product at rest: pulse times systolic.
 *
 * Units: mmHg per minute. Errors: none. Source: bedside handbook 5.1 (from memory).
 */
export function ratePressureProduct(inputs: ScoreInputs): DerivedValue<RatePressureBand> {
  const { pulse, systolic } = inputs;
  const unit = 'mmHg/min';
  if (pulse === null || systolic === null) return without(unit, missingOf(inputs, ['pulse', 'systolic']));
  const value = pulse * systolic;
  const band = heldAt<RatePressureBand>(
    value,
    [
      ['rateProductLow', 'below-usual'],
      ['rateProductHigh', 'above-usual'],
    ],
    'usual',
  );
  return { value, unit, band, missing: [], flags: [], why: [] };
}
