import { expect, test } from 'vitest';
import { parseTapLines } from './parseTapLines.js';

/** The faults of a text as `line code`. */
function faults(text: string): string[] {
  const parsed = parseTapLines(text);
  return parsed.ok ? [] : parsed.refusals.map(({ line, code }) => `${line} ${code}`);
}

test('one time a line; blank lines, comments, CRLF and a byte-order mark do no harm', () => {
  const parsed = parseTapLines('\uFEFF# radial, left\r\n0.00\r\n\r\n  0.83\r\n1.66\r\n');
  expect(parsed).toEqual({ ok: true, value: [0, 0.83, 1.66] });
});

test('the clock may have its zero anywhere', () => {
  expect(parseTapLines('-1.5\n-0.5\n0.25')).toEqual({ ok: true, value: [-1.5, -0.5, 0.25] });
});

test.each([
  ['0\n0,8\n1.6', ['2 not-a-number']],
  ['0\n8e-1\n1.6', ['2 not-a-number']],
  ['0\n+0.8', ['2 not-a-number']],
  ['0\n.8', ['2 not-a-number']],
  ['0 0.8', ['1 not-a-number']],
  ['0\n1\n1', ['3 out-of-order']],
  ['# a\n\n5\n4\n6', ['4 out-of-order']],
  // One slip is one refusal: what follows is compared with the slip.
  ['0\n1\n20\n3\n4', ['4 out-of-order']],
  [`0\n1${'0'.repeat(12)}`, ['2 out-of-range']],
  [`0\n1${'0'.repeat(400)}`, ['2 not-a-number']],
  ['0\nx\n2\n1', ['2 not-a-number', '4 out-of-order']],
  ['', ['null missing']],
  ['# nothing\n\n', ['null missing']],
  // Eleven taps in 1.4 s are 428 a minute; in 1.5 s, 400.
  [Array.from({ length: 11 }, (_, i) => (i * 0.14).toFixed(2)).join('\n'), ['null impossible']],
  [Array.from({ length: 11 }, (_, i) => (i * 0.15).toFixed(2)).join('\n'), []],
])('%j: %j', (text, expected) => {
  expect(faults(text)).toEqual(expected);
});

test('says what came and what it should have followed', () => {
  expect(parseTapLines('2\n1.5')).toMatchObject({
    refusals: [
      { field: '/seconds', got: '1.5', expected: 'later-than-the-one-before', figures: { beforeSeconds: 2 } },
    ],
  });
});
