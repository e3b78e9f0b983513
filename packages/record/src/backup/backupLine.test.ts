import { describe, expect, test } from 'vitest';
import { at, countContent, frame, idOf } from '../testing/work.js';
import { BACKUP_VERSION, type BackupLine, backupLine } from './backupLine.js';

const LINES: BackupLine[] = [
  {
    line: 'header',
    format: 'evenfall-backup',
    version: BACKUP_VERSION,
    program: 'evenfall 0.1.0',
    madeAt: at(0),
    site: { id: idOf(1), name: 'Test clinic (invented)', invented: false },
  },
  { line: 'agent', id: idOf(2), name: 'Wren (invented)', recordedAt: at(0) },
  { line: 'person', book: 'care', id: idOf(3), recordedAt: at(0) },
  {
    line: 'identity',
    book: 'care',
    person: idOf(3),
    version: 1,
    identity: { name: 'Peg Amundsen (invented)', birthDate: '1950-12-31', number: null },
    recordedAt: at(0),
  },
  { line: 'protocol', version: 'ab'.repeat(32), content: { schema: 1 }, recordedAt: at(0) },
  { line: 'entry', entry: frame('count', countContent({ n: 19, windowSeconds: 15 })), recordedAt: at(0) },
  { line: 'trailer', lines: { header: 1, agent: 1 }, sha256: 'c0'.repeat(32) },
];

describe.each(LINES.map((line) => [line.line, line] as const))('a line of a backup (%s)', (_, line) => {
  test('is read as it was written', () => {
    expect(backupLine.parse(JSON.parse(JSON.stringify(line)))).toEqual(line);
  });

  test('is refused without any of its parts, and with anything else', () => {
    for (const key of Object.keys(line)) {
      const { [key as 'line']: _, ...without } = line;
      expect(backupLine.safeParse(without).success, key).toBe(false);
    }
    expect(backupLine.safeParse({ ...line, extra: 1 }).success).toBe(false);
  });
});

test.each([
  ['another kind of line', { ...LINES[1], line: 'patient' }],
  ['another format', { ...LINES[0], format: 'other-backup' }],
  ['a version that never was', { ...LINES[0], version: 0 }],
  ['a book that is none', { ...LINES[2], book: 'demo' }],
  ['an identity of a name alone', { ...LINES[3], identity: { name: 'Peg', birthDate: null, number: null } }],
  ['a time without an offset', { ...LINES[1], recordedAt: '2026-11-25T09:00:00' }],
  ['a hash of half the length', { ...LINES[6], sha256: 'c0'.repeat(16) }],
  ['a hash in capitals', { ...LINES[6], sha256: 'C0'.repeat(32) }],
  ['half a line', { ...LINES[6], lines: { header: 0.5 } }],
])('%s is refused', (_, line) => {
  expect(backupLine.safeParse(line).success).toBe(false);
});

test('a header of a newer format can be read, so that it can be refused by name', () => {
  expect(backupLine.safeParse({ ...LINES[0], version: BACKUP_VERSION + 1 }).success).toBe(true);
});
