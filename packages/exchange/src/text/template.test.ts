import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillTemplate, parseTemplate } from './template.js';

const FIELDS = ['pulse', 'pressure', 'name'] as const;
const KNOWN = { pulse: '76', pressure: '148/92', name: null };

function filled(template: string, values: Record<(typeof FIELDS)[number], string | null> = KNOWN): string {
  const read = parseTemplate(template, FIELDS);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return fillTemplate(read.value, values, 'not known');
}
const refused = (template: string) => {
  const read = parseTemplate(template, FIELDS);
  return read.ok ? [] : read.refusals.map(({ code, got, figures }) => `${code} ${got} ${figures.at}`);
};

describe('a template', () => {
  test.each([
    ['', ''],
    ['no field', 'no field'],
    ['{pulse}', '76'],
    ['Pulse { pulse }, {pressure}.', 'Pulse 76, 148/92.'],
    ['{pulse}{pulse}', '7676'],
    ['{{pulse}} [[x]]', '{pulse} [x]'],
    // A field that is not known is said to be, and never left blank.
    ['Name: {name}.', 'Name: not known.'],
    // A part without anything known is left out, with one known it stands.
    ['{pulse}[, of {name}]', '76'],
    ['{pulse}[, of {pressure}]', '76, of 148/92'],
    ['[{pressure} {name}]', '148/92 not known'],
    ['[words alone]', 'words alone'],
    ['[{{{pulse}}}]', '{76}'],
  ])('%j is %j', (template, text) => {
    expect(filled(template)).toBe(text);
  });

  test('what a value holds is no template', () => {
    expect(filled('{pulse}', { pulse: '{pressure}[x]', pressure: null, name: null })).toBe('{pressure}[x]');
  });
});

describe('what is wrong with a template is said with its name and where it begins', () => {
  test.each([
    ['{puls}', ['unknown-field puls 1']],
    ['a {Pulse} and {}', ['unknown-field Pulse 3', 'unknown-field null 15']],
    ['{pulse', ['contradicts { 1']],
    ['pulse}', ['contradicts } 6']],
    ['[a', ['contradicts [ 1']],
    ['a]', ['contradicts ] 2']],
    ['[a [b] c]', ['contradicts [ 4', 'contradicts ] 9']],
    ['[{nobody}', ['contradicts [ 1', 'unknown-field nobody 2']],
  ])('%j', (template, problems) => {
    expect(refused(template)).toEqual(problems);
  });

  test('the fields that there are stand beside one that is not', () => {
    const read = parseTemplate('{puls}', FIELDS);
    expect(read.ok || read.refusals[0]?.choices).toEqual(FIELDS);
  });
});

test('any text with its braces and brackets doubled is itself', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      expect(filled(text.replace(/[{}[\]]/g, '$&$&'))).toBe(text);
    }),
  );
});

test('any text at all is read or refused, and never thrown at', () => {
  const signs = fc.constantFrom('{', '}', '[', ']', 'pulse', 'x', ' ', '{pulse}');
  fc.assert(
    fc.property(
      fc.array(signs).map((parts) => parts.join('')),
      (text) => {
        const read = parseTemplate(text, FIELDS);
        if (read.ok) expect(typeof fillTemplate(read.value, KNOWN, '?')).toBe('string');
        else expect(read.refusals.every(({ figures }) => (figures.at ?? 0) >= 1)).toBe(true);
      },
    ),
  );
});
