import { type FieldReader, readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import type { Parsed } from '../contract/refusal.js';
import { HEIGHT_FIELDS, readHeight, readWeight, WEIGHT_FIELDS } from './body.js';
import { CONSCIOUSNESS_FIELDS, readConsciousness } from './consciousness.js';
import { OXYGEN_FIELDS, readOxygenSaturation } from './oxygenSaturation.js';
import { PAIN_FIELDS, readPain } from './pain.js';
import { SIGNS, type Sign, type SignOf } from './sign.js';
import { readTemperature, TEMPERATURE_FIELDS } from './temperature.js';

/** The fields of each sign and what reads them. */
const READERS: {
  readonly [Of in SignOf]: {
    readonly fields: readonly string[];
    readonly read: (reader: FieldReader) => Sign | null;
  };
} = {
  temperature: { fields: TEMPERATURE_FIELDS, read: readTemperature },
  'oxygen-saturation': { fields: OXYGEN_FIELDS, read: readOxygenSaturation },
  pain: { fields: PAIN_FIELDS, read: readPain },
  consciousness: { fields: CONSCIOUSNESS_FIELDS, read: readConsciousness },
  weight: { fields: WEIGHT_FIELDS, read: readWeight },
  height: { fields: HEIGHT_FIELDS, read: readHeight },
};

/**
 * Reads a sign from outside: a form's fields, a request body, an imported row. Numbers may come as text, yes and no
 * may not. `of` says which; what its type allows to be null may be absent.
 *
 * Units: degC, %, L/min, points, kg, cm.
 * Errors, all together in the order of the type's fields: `missing`, `not-a-number`, `not-whole`, `out-of-range`,
 * `unknown-id`, `unknown-field`, `contradicts` (oxygen's flow on air, a word beside a score), `impossible` (an odd
 * number of a face scale). A blank is `missing`; it is never zero.
 * Source: bedside handbook 4.1 to 4.4.
 */
export function parseSign(input: unknown): Parsed<Sign> {
  // Which sign it is says which fields there are; until that is known none is called unknown.
  const asked = readFields(input, Object.keys(typeof input === 'object' && input !== null ? input : {}));
  const of = asked.choice<SignOf>('of', SIGNS, null);
  if (of === null) return { ok: false, refusals: asked.refusals };
  const { fields, read } = READERS[of];
  const reader = readFields(input, fields);
  const value = read(reader);
  if (value === null || reader.refusals.length > 0) {
    return { ok: false, refusals: inOrder(reader.refusals, fields) };
  }
  return { ok: true, value };
}
