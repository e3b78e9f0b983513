import { EXERCISE_LIMITS } from '@evenfall/practice';

const NUMBER = /^\d{2}([.,]\d)?$/;

/** A temperature as it is typed, degC with at most one decimal, point or comma; null: it is none. */
export function celsiusTyped(text: string): number | null {
  const trimmed = text.trim();
  if (!NUMBER.test(trimmed)) return null;
  const celsius = Number(trimmed.replace(',', '.'));
  const [minimum, maximum] = EXERCISE_LIMITS.celsius;
  return celsius >= minimum && celsius <= maximum ? celsius : null;
}
