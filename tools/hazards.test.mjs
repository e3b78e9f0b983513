// What proves a control of docs/hazards.md is there, under the name that stands beside it.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from './ensure.mjs';

const rows = readFileSync(join(root, 'docs', 'hazards.md'), 'utf8')
  .split('\n')
  .filter((line) => /^\| H\d+ \|/.test(line))
  .map((line) => line.split(' | '));

/** Whether a file stands in the project or below its packages; `*` for some of a folder. */
function isThere(file) {
  const named = new RegExp(`^${basename(file).replaceAll('.', '\\.').replace('*', '.+')}$`);
  const folders = ['packages', '.'].map((base) => join(root, base, dirname(file)));
  return folders.some((folder) => existsSync(folder) && readdirSync(folder).some((one) => named.test(one)));
}

test('each hazard has its number once, in order, and a control with a proof', () => {
  expect(rows.map(([id]) => id)).toEqual(rows.map((_, at) => `| H${at + 1}`));
  for (const row of rows) {
    expect(row).toHaveLength(6);
    expect(row.at(-1)).toMatch(/`[^`]+\.(ts|mjs)`/);
  }
});

test.each(rows.map((row) => [row[0], row.at(-1)]))('%s: each file that proves it is there', (_, proof) => {
  const files = [...proof.matchAll(/`([^`]+\.(?:ts|mjs))`/g)].map(([, file]) => file);
  expect(files.filter((file) => !isThere(file))).toEqual([]);
});
