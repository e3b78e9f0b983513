import { describe, expect, test } from 'vitest';
import { frame, idOf } from '../testing/work.js';
import { BOOKS } from './book.js';
import { entryFrame } from './entry.js';
import { ROLES } from './role.js';

const GOOD = frame('entered-in-error', { note: null });

describe('the frame of an entry', () => {
  test('keeps what came, to the letter', () => {
    expect(entryFrame.parse(GOOD)).toEqual(GOOD);
  });

  // docs/conventions.md section 9: what an entry is made of. Each part must be said, also when it is null.
  test.each(Object.keys(GOOD).filter((key) => !['frame', 'session'].includes(key)))(
    'is refused without %s',
    (key) => {
      const { [key as 'id']: _, ...without } = GOOD;
      const read = entryFrame.safeParse(without);
      expect(read.error?.issues.map(({ path }) => path[0])).toEqual([key]);
    },
  );

  test('an older frame, which had no session, belongs to none', () => {
    const { session: _, ...older } = GOOD;
    expect(entryFrame.parse(older)).toEqual({ ...GOOD, session: null });
  });

  test('is refused with anything else', () => {
    expect(entryFrame.safeParse({ ...GOOD, patient: idOf(1) }).success).toBe(false);
  });

  test('is of one of the three books, by an agent in one of the five roles', () => {
    for (const book of BOOKS) expect(entryFrame.safeParse({ ...GOOD, book }).success).toBe(true);
    for (const role of ROLES) expect(entryFrame.safeParse({ ...GOOD, role }).success).toBe(true);
    expect(entryFrame.safeParse({ ...GOOD, book: 'demo' }).success).toBe(false);
    expect(entryFrame.safeParse({ ...GOOD, role: 'patient' }).success).toBe(false);
    expect(BOOKS).toEqual(['care', 'class', 'simulated']);
    expect(ROLES).toEqual(['observer', 'supervisor', 'teacher', 'assessor', 'importer']);
  });

  test.each([
    ['writtenAt', 'yesterday'],
    ['writtenAt', '2026-11-25T09:00:00+23:59'],
    ['writtenAt', null],
    ['sequence', -1],
    ['sequence', 0.5],
    ['sequence', 2 ** 53],
    ['schema', 0],
    ['kind', 'pressure'],
    ['agent', null],
    ['content', []],
    ['content', null],
  ])('is refused with %s %j', (key, value) => {
    expect(entryFrame.safeParse({ ...GOOD, [key]: value }).success).toBe(false);
  });
});
