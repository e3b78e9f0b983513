const GRAMMAR = /^-?\d+(\.\d+)?$/;

/**
 * A number from outside: a finite number as it is, or text with a decimal point and no other sign than a leading
 * minus. Anything else (a comma, an exponent, a blank, spaces) is null: it is refused, never guessed.
 * Source: docs/conventions.md section 1.
 */
export function numberFrom(got: unknown): number | null {
  if (typeof got === 'number') return Number.isFinite(got) ? got : null;
  if (typeof got !== 'string' || !GRAMMAR.test(got)) return null;
  const value = Number(got);
  return Number.isFinite(value) ? value : null;
}

/** Whether nothing came: absent, null or an empty text. A blank is never a zero. */
export function isBlank(got: unknown): got is undefined | null | '' {
  return got === undefined || got === null || got === '';
}

/** The JSON Pointer (RFC 6901) of a key below a pointer. */
export function pointer(parent: string, key: string | number): string {
  return `${parent}/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`;
}
