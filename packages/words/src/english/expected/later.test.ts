import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { laterExpected } from './later.js';

const SOURCES = ['clinical', 'record'].map((name) => new URL(`../../../../${name}/src/`, import.meta.url));
/** What the bedside reads nothing by: protocols, readings from elsewhere, what is usual, backups; and values that are made again. */
const LATER = /^(protocol|outOfOffice|usual|recompute|backup)\W/;

// A rule that the bedside does not have is said by its code alone: true, but less exact.
test('no rule by which the bedside reads comes later', () => {
  const files = SOURCES.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && !LATER.test(name))
      .map((name) => ({ name, text: readFileSync(new URL(name.replaceAll('\\', '/'), folder), 'utf8') })),
  );
  expect(files.length).toBeGreaterThan(200);
  const rules = Object.keys(laterExpected);
  expect(rules.length).toBeGreaterThan(20);
  const named = rules.flatMap((rule) =>
    files.filter(({ text }) => text.includes(`'${rule}'`)).map(({ name }) => `${rule}: ${name}`),
  );
  expect(named).toEqual([]);
});
