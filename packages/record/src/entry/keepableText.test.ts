import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unkeepableTexts } from './keepableText.js';

const placesIn = (value: unknown) => unkeepableTexts(value).map(({ field }) => field);

/** Whether UTF-8 can hold a text, by the platform's own judgement (ECMA-262, `encodeURIComponent`). */
function isUnicode(text: string): boolean {
  try {
    encodeURIComponent(text);
    return true;
  } catch {
    return false;
  }
}

describe('texts that cannot be kept', () => {
  test('are found wherever they stand, each at its JSON Pointer (RFC 6901)', () => {
    const sent = {
      note: 'a\0b',
      entries: [{ zone: 'UTC' }, { content: { 'a/b': '\uD800', '~': 'x\uDC00y' } }],
      'k\0': 1,
    };
    expect(placesIn(sent)).toEqual(['/note', '/entries/1/content/a~1b', '/entries/1/content/~0', '']);
  });

  test('are told from every other text as the platform tells them', () => {
    const units = fc.array(
      fc.oneof(
        fc.constantFrom(0, 0x41, 0xd7ff, 0xd800, 0xdbff, 0xdc00, 0xdfff, 0xe000, 0xffff),
        fc.integer({ min: 0, max: 0xffff }),
      ),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(units, (codes) => {
        const text = String.fromCharCode(...codes);
        expect(placesIn(text)).toEqual(isUnicode(text) && !codes.includes(0) ? [] : ['']);
      }),
    );
  });

  test('are repeated readably in the refusal', () => {
    const [refused] = unkeepableTexts('a\0b\uDBFFc');
    expect(refused).toMatchObject({ code: 'contradicts', expected: 'keepable-text', got: 'a\u2400b\uFFFDc' });
    expect(isUnicode(refused?.got ?? '\uD800')).toBe(true);
  });
});

test('every sign of every writing, and what is no text, is keepable', () => {
  expect(placesIn(['Łuk', '赵', '𐍈', '👩🏽‍⚕️', 'a\r\n\tb', '', null, 0, false, {}])).toEqual([]);
});

test('what is nested so deep that walking it exhausts a program is refused, not walked', () => {
  const nested = (levels: number) => JSON.parse(`${'['.repeat(levels)}0${']'.repeat(levels)}`);
  expect(unkeepableTexts(nested(40))).toEqual([]);
  expect(unkeepableTexts(nested(41))).toMatchObject([
    { field: '/0'.repeat(40), code: 'out-of-range', figures: { maximum: 40 } },
  ]);
  expect(unkeepableTexts(nested(100_000))).toHaveLength(1);
});
