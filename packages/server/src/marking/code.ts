import { randomInt } from 'node:crypto';
import { MARKING } from './figures.js';

/** No 0 and O, 1, I and L: a code is read from one screen and typed on another. */
export const CODE_LETTERS = 'ABCDEFGHJKMNPQRSTUVWXYZ23456789';

/** A code that nobody can guess while it lasts, from the system's own source of chance. */
export function newCode(): string {
  return Array.from({ length: MARKING.codeLetters }, () => CODE_LETTERS[randomInt(CODE_LETTERS.length)]).join(
    '',
  );
}

/** A code as somebody typed it: capitals or not, with spaces or hyphens; null for what is no code. */
export function readCode(typed: string): string | null {
  const code = typed.replace(/[\s-]/g, '').toUpperCase();
  const isCode =
    code.length === MARKING.codeLetters && [...code].every((letter) => CODE_LETTERS.includes(letter));
  return isCode ? code : null;
}
