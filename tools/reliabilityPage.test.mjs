import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { reliabilityPage, sectionsOf } from './reliabilityPage.mjs';

const about = { today: '2026-01-02', engine: 'Node 20', byHand: 'By hand: nothing.' };
const number = (row, some = {}) => ({
  row,
  what: 'a number',
  got: '1.00 mmHg',
  wanted: '1 ± 2 mmHg',
  isRight: true,
  source: 'Somebody 2001',
  note: null,
  ...some,
});
const before = reliabilityPage(
  [
    { name: 'One', passed: 1, failed: 0, lines: ['ok: as it stood'] },
    { name: 'Two', passed: 1, failed: 0, lines: ['ok: old'] },
  ],
  '',
  about,
);

test('what was run anew stands in its place, the rest as it stood, and it is said which', () => {
  const page = reliabilityPage([{ name: 'Two', passed: 2, failed: 0, lines: ['ok: new'] }], before, about);
  expect(sectionsOf(page).map(({ name }) => name)).toEqual(['One', 'Two']);
  expect(page).toContain('ok: as it stood');
  expect(page).toContain('ok: new');
  expect(page).not.toContain('ok: old');
  expect(page).toContain('*One* in an earlier run');
  expect(before).not.toContain('earlier run');
});

test('numbers held against published ones are a table, by the rows of the book, in its order', () => {
  const table = [
    number('section 5'),
    number('33', { note: 'a column' }),
    number('4'),
    number('33', { isRight: false }),
  ];
  const page = reliabilityPage([{ name: 'Two', passed: 3, failed: 1, lines: [], table }], '', about);
  const rows = page.split('\n').filter((line) => line.startsWith('| ') && !line.startsWith('| row'));
  expect(rows.map((line) => line.split(' | ')[0])).toEqual(['| 4', '| 33', '| ', '| section 5']);
  expect(rows[1]).toContain('| 1.00 mmHg | Somebody 2001 |');
  expect(rows[2]).toContain('| **1.00 mmHg: not met** |  |');
  expect(page).toContain('- **33**: a column.');
});

// The page in the repository: every row of the book's table of 41 stands in it, and none is unmet.
test('every row of the validation table stands on the page, and lands', () => {
  const page = readFileSync(new URL('../docs/reliability.md', import.meta.url), 'utf8');
  const section = sectionsOf(page).find(({ name }) => name === 'The simulated person against the model book');
  const numbers = [...(section?.text ?? '').matchAll(/^\| (\d+) \|/gm)].map(([, row]) => Number(row));
  expect(numbers).toEqual(Array.from({ length: 41 }, (_, i) => i + 1));
  expect(section?.text).not.toContain('not met');
});
