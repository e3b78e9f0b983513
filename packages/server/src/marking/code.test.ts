import { expect, test } from 'vitest';
import { CODE_LETTERS, newCode, readCode } from './code.js';

test('a code has more than the 20 bits that are asked of one (OWASP ASVS 4.0.3, 2.7.6, from memory)', () => {
  expect(new Set(CODE_LETTERS).size).toBe(CODE_LETTERS.length);
  expect(Math.log2(CODE_LETTERS.length ** newCode().length)).toBeGreaterThan(20);
  for (const alike of '01OIL') expect(CODE_LETTERS).not.toContain(alike);
});

test('every letter comes up in every place, and no code twice in a thousand', () => {
  const codes = Array.from({ length: 1000 }, newCode);
  expect(new Set(codes).size).toBe(1000);
  // One letter missing in a place has a chance of (30/31)^1000, about 6e-15.
  for (let place = 0; place < 6; place++)
    expect(new Set(codes.map((code) => code[place])).size).toBe(CODE_LETTERS.length);
});

test('a code is read as people type it, and nothing else is', () => {
  const code = newCode();
  for (const typed of [
    code,
    code.toLowerCase(),
    `${code.slice(0, 3)}-${code.slice(3)}`,
    ` ${[...code].join(' ')} `,
  ])
    expect(readCode(typed)).toBe(code);
  for (const typed of ['', code.slice(1), `${code}A`, `${code.slice(1)}0`, `${code.slice(1)}é`])
    expect(readCode(typed)).toBeNull();
});
