import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from './canonicalJson.js';

test('RFC 8785 section 3.2.2: the sample object', () => {
  const sample = `{
    "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
    "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
    "literals": [null, true, false]
  }`;
  expect(canonicalJson(JSON.parse(sample))).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
      '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  );
});

test('RFC 8785 section 3.2.3: keys sort by UTF-16 code units', () => {
  const sample =
    '{"\\u20ac":"Euro Sign","\\r":"Carriage Return","\\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One",' +
    '"\\ud83d\\ude00":"Emoji: Grinning Face","\\u0080":"Control","\\u00f6":"Latin Small Letter O With Diaeresis"}';
  expect(Object.values(JSON.parse(canonicalJson(JSON.parse(sample))) as object).sort()).toHaveLength(7);
  expect([...canonicalJson(JSON.parse(sample)).matchAll(/:"([^"]+)"/g)].map((match) => match[1])).toEqual([
    'Carriage Return',
    'One',
    'Control',
    'Latin Small Letter O With Diaeresis',
    'Euro Sign',
    'Emoji: Grinning Face',
    'Hebrew Letter Dalet With Dagesh',
  ]);
});

test('the text reads back as the value', () => {
  fc.assert(
    fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
      expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});

test.each([[undefined], [Number.NaN], [Number.POSITIVE_INFINITY], [10n], [{ a: undefined }], [[undefined]]])(
  'throws on what JSON cannot hold',
  (value) => {
    expect(() => canonicalJson(value)).toThrow(/JSON cannot hold/);
  },
);
