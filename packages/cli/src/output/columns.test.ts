import { expect, test } from 'vitest';
import { columns } from './columns.js';

test('aligns every column but the last and leaves no blanks at the end', () => {
  expect(
    columns([
      ['76 /min', 'between 72 and 80'],
      ['', 'more'],
      ['Next', ''],
    ]),
  ).toEqual(['76 /min  between 72 and 80', '         more', 'Next']);
});
