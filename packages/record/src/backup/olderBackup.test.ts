import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { projectChart } from '../chart/projectChart.js';
import type { StoredEntry } from '../entry/entry.js';
import { readEntry } from '../entry/readEntry.js';
import { backupLine } from './backupLine.js';

const LINES = readFileSync(new URL('../../fixtures/backup-1.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((text) => backupLine.parse(JSON.parse(text)));

/** Every entry of the file, as it is read today. */
const ENTRIES = LINES.flatMap((line): StoredEntry[] => {
  if (line.line !== 'entry') return [];
  const read = readEntry(line.entry);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return [{ ...read.value, recordedAt: line.recordedAt }];
});

test('the first backup is still read: every line, every entry, as the newest frame', () => {
  expect(LINES.filter(({ line }) => line === 'entry')).toHaveLength(ENTRIES.length);
  const { frame, session } = ENTRIES[0] ?? {};
  expect([frame, session]).toEqual([1, null]);
  expect(new Set(ENTRIES.map(({ kind }) => kind))).toEqual(
    new Set(['person', 'protocol-chosen', 'count', 'round', 'entered-in-error', 'identity-erased']),
  );
});

test('the first backup still gives the chart that it was made with', () => {
  // What was put in when the file was made: 66 in 30 s amended to 36 in 30 s; 19 in 15 s, entered in error.
  const rounds = projectChart(ENTRIES).rounds.map(({ values, isPreliminary, unsigned }) => ({
    values: values.map(({ standing, story }) => [
      standing,
      ...story.flatMap((entry) => (entry.kind === 'count' ? [entry.content.value.perMinute] : [])),
    ]),
    isPreliminary,
    unsigned,
  }));
  expect(rounds).toHaveLength(2);
  expect(rounds).toContainEqual({ values: [['amended', 132, 72]], isPreliminary: false, unsigned: [] });
  expect(rounds).toContainEqual({ values: [['entered-in-error', 76]], isPreliminary: true, unsigned: [] });
});
