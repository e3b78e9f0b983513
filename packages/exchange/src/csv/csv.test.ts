import fc from 'fast-check';
import { inferSchema, initParser } from 'udsv';
import { describe, expect, test } from 'vitest';
import { type Cell, csv } from './csv.js';

/** What an independent reader makes of a file: its headings and rows, each cell as text. */
function readBack(text: string): string[][] {
  const schema = inferSchema(text, { col: ',', row: '\r\n', encl: '"', trim: false });
  return initParser(schema).stringArrs(text);
}

// RFC 4180, section 2, by its numbered rules.
describe('RFC 4180', () => {
  test('2.1 each record ends in CRLF, the last one too (2.2 lets it)', () => {
    expect(
      csv(
        ['a', 'b'],
        [
          ['1', '2'],
          ['3', '4'],
        ],
      ),
    ).toBe('a,b\r\n1,2\r\n3,4\r\n');
  });

  test('2.3 the first line holds the headings, also when there are no rows', () => {
    expect(csv(['a', 'b'], [])).toBe('a,b\r\n');
  });

  test('2.4 every record has as many fields; another number is a fault of the program, not of the file', () => {
    expect(() => csv(['a', 'b'], [['1', '2'], ['3']])).toThrow(/1 cells for 2 headings/);
    expect(() => csv(['a'], [['1', '2']])).toThrow(/2 cells for 1 headings/);
  });

  test('2.4 spaces belong to the field', () => {
    expect(csv(['a', 'b'], [[' x ', 'y']])).toBe('a,b\r\n x ,y\r\n');
  });

  test.each([
    ['a comma', 'Quill, Hester', '"Quill, Hester"'],
    ['a CRLF', 'one\r\ntwo', '"one\r\ntwo"'],
    ['a lone LF, as a text field on a page sends', 'one\ntwo', '"one\ntwo"'],
    ['a lone CR', 'one\rtwo', '"one\rtwo"'],
    ['a double quote (2.7: doubled)', 'the "good" arm', '"the ""good"" arm"'],
  ])('2.6 a field with %s is enclosed in double quotes', (_, cell, written) => {
    expect(csv(['a', 'b'], [[cell, 'z']])).toBe(`a,b\r\n${written},z\r\n`);
  });

  test('no byte-order mark: the file starts with its first heading', () => {
    expect(csv(['schema'], [['x']]).codePointAt(0)).toBe('s'.codePointAt(0));
  });
});

describe('a cell', () => {
  test.each<[Cell, string]>([
    [null, ''],
    [0, '0'],
    [-1.5, '-1.5'],
    [76.19047619047619, '76.19047619047619'],
    [false, 'false'],
    [true, 'true'],
    ['', ''],
  ])('%j is written %j: nothing is empty, and only a zero is 0', (cell, written) => {
    expect(csv(['a', 'b'], [[cell, 'z']])).toBe(`a,b\r\n${written},z\r\n`);
  });

  // docs/conventions.md section 9: `'` before a text cell that starts with =, +, -, @, tab or CR.
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1'])('%j cannot run as a formula', (cell) => {
    expect(readBack(csv(['a', 'b'], [[cell, 'z']]))).toEqual([[`'${cell}`, 'z']]);
  });

  test.each(['a=1', ' =1', '1-1', "'=1", '120/80', '−5', 'x@y'])('%j is left as it is', (cell) => {
    expect(readBack(csv(['a', 'b'], [[cell, 'z']]))).toEqual([[cell, 'z']]);
  });
});

test('whatever is written is read back the same, but for the apostrophe before a formula', () => {
  const text = fc.oneof(
    fc.string({ unit: 'grapheme' }),
    fc
      .array(
        fc.constantFrom('"', ',', '\r', '\n', '\t', '=', '-', '+', '@', "'", ' ', ';', '|', 'a', 'é', '𐍈'),
        {
          maxLength: 6,
        },
      )
      .map((signs) => signs.join('')),
  );
  const cell: fc.Arbitrary<Cell> = fc.oneof(
    text,
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.constant(null),
  );
  const table = fc
    .integer({ min: 2, max: 4 })
    .chain((width) =>
      fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }),
    );
  fc.assert(
    fc.property(table, (rows) => {
      const headings = (rows[0] ?? []).map((_, index) => `h${index}`);
      const expected = rows.map((row) =>
        row.map((one) => {
          const shown = one === null ? '' : String(one);
          return typeof one === 'string' && '=+-@\t\r'.includes(one[0] ?? 'x') ? `'${shown}` : shown;
        }),
      );
      expect(readBack(csv(headings, rows))).toEqual(expected);
    }),
    { numRuns: 500 },
  );
});
