/**
 * The one function that rounds a number to be shown: half away from zero, on the shortest decimal text of the
 * double, so that 38.05 shows as 38.1 although the double lies a little below it.
 *
 * Units: those of the value. Keeps trailing zeros (`roundedText(36, 1)` is `36.0`); a value that rounds to zero
 * has no minus sign.
 * Errors: throws if the value is not finite or the decimals are not a whole number from 0; both are faults of
 * the caller, since what comes from outside has been parsed.
 * Source: docs/conventions.md section 4; bedside handbook 0.2 (147.5 is 148, 90.67 is 91).
 */
export function roundedText(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new Error(`Cannot round ${value}`);
  if (!Number.isInteger(decimals) || decimals < 0) throw new Error(`Cannot round to ${decimals} decimals`);
  const { digits, pointAt } = plainDigits(Math.abs(value));
  const kept = pointAt + decimals;
  const rounded =
    kept < 0 ? '0' : increasedIf(digits.charAt(kept) >= '5', digits.slice(0, kept).padEnd(kept, '0'));
  const padded = rounded.padStart(decimals + 1, '0');
  const whole = padded.slice(0, padded.length - decimals).replace(/^0+(?=\d)/, '');
  const text = decimals === 0 ? whole : `${whole}.${padded.slice(padded.length - decimals)}`;
  return value < 0 && /[1-9]/.test(text) ? `-${text}` : text;
}

/** {@link roundedText} as a number, for comparing what is shown with what is meant. */
export function roundTo(value: number, decimals: number): number {
  return Number(roundedText(value, decimals));
}

/** The decimal digits of a number from 0, without exponent, and where the point stands among them. */
function plainDigits(value: number): { digits: string; pointAt: number } {
  const [mantissa = '0', exponent = '0'] = String(value).split('e');
  const [whole = '0', fraction = ''] = mantissa.split('.');
  const pointAt = whole.length + Number(exponent);
  return { digits: whole + fraction, pointAt };
}

/** A decimal numeral, or the next one; an empty numeral is zero. */
function increasedIf(up: boolean, numeral: string): string {
  return (BigInt(numeral === '' ? '0' : numeral) + (up ? 1n : 0n)).toString();
}
