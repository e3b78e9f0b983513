import type { FieldReader } from '../contract/fields.js';
import { isBlank } from '../contract/numberText.js';
import { refusal } from '../contract/refusal.js';
import { optionalNumber, pressureFault, systolicFault } from '../deflation/readPressure.js';
import type { Measured } from './categoryIn.js';

/**
 * Reads `systolic` and `diastolic` in mmHg, decimals allowed (they may be means); one of them may be absent. What is
 * wrong goes to the reader: both absent is `missing`, a diastolic not below the systolic `not-below-systolic`.
 */
export function readMeasured(reader: FieldReader): Measured {
  const systolic = optionalNumber(reader, 'systolic', systolicFault);
  const diastolic = optionalNumber(reader, 'diastolic', pressureFault);
  if (isBlank(reader.raw('systolic')) && isBlank(reader.raw('diastolic'))) {
    reader.refusals.push(refusal('/systolic', 'missing', 'a-number', null));
  }
  if (systolic !== null && diastolic !== null && diastolic >= systolic) {
    const figures = { systolic };
    reader.refusals.push(
      refusal('/diastolic', 'not-below-systolic', 'below-systolic', reader.raw('diastolic'), { figures }),
    );
  }
  return { systolic, diastolic };
}
