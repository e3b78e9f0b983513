// The numbers of the last paragraph of the changelog are the program's.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PROTOCOL_SCHEMA } from '@evenfall/clinical';
import { CSV_SCHEMA_NUMBER } from '@evenfall/exchange';
import { BLANK } from '@evenfall/physiology';
import { BACKUP_VERSION, KINDS } from '@evenfall/record';
import { expect, test } from 'vitest';
import { root } from './ensure.mjs';

const last = readFileSync(join(root, 'CHANGELOG.md'), 'utf8').trimEnd().split('\n').at(-1) ?? '';

test('each kind of entry with more than one schema stands with its number, and no other', () => {
  const told = [...last.matchAll(/`([a-z-]+)` at (\d+)/g)].map(([, kind, number]) => [kind, Number(number)]);
  const grown = Object.entries(KINDS).flatMap(([kind, { newest }]) => (newest > 1 ? [[kind, newest]] : []));
  expect(Object.fromEntries(told)).toEqual(Object.fromEntries(grown));
  expect(told).toHaveLength(grown.length);
  expect(last).toContain('every other kind at 1');
});

test.each([
  ['simulated people', /Simulated people are written in schema (\d+)/, BLANK.schema],
  ['a protocol', /Protocol schema (\d+)/, PROTOCOL_SCHEMA],
  ['a backup', /Backup format (\d+)/, BACKUP_VERSION],
  ['the table', /CSV `evenfall-chart-(\d+)`/, CSV_SCHEMA_NUMBER],
])('of %s it has the number of the program', (_, says, number) => {
  expect(Number(last.match(says)?.[1])).toBe(number);
});
