import { roundTo } from '@evenfall/clinical';
import { EXERCISE_LIMITS } from '@evenfall/practice';
import type { Manner } from '@evenfall/words';
import { keptOf } from '../app/typedMeasure.js';

/** What a conversion leaves in the last bits is no temperature. */
const KEPT_DECIMALS = 6;
const NUMBER = /^\d{2,3}([.,]\d)?$/;

/** A temperature as it is typed in this device's unit, with at most one decimal, point or comma; in degC. Null: it is none. */
export function temperatureTyped(text: string, manner: Manner): number | null {
  const trimmed = text.trim();
  if (!NUMBER.test(trimmed)) return null;
  const celsius = roundTo(
    Number(keptOf({ text: trimmed.replace(',', '.') }, 'celsius', manner)),
    KEPT_DECIMALS,
  );
  const [minimum, maximum] = EXERCISE_LIMITS.celsius;
  return celsius >= minimum && celsius <= maximum ? celsius : null;
}
