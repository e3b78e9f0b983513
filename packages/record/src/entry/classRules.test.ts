import { describe, expect, test } from 'vitest';
import { frame, idOf, placesOf } from '../testing/work.js';
import { CLASS_KINDS } from './classRules.js';
import type { EntryFrame } from './entry.js';
import { readEntry } from './readEntry.js';

const BEGUN = frame(
  'class-session',
  { title: 'Tuesday group (invented)', endsBy: '2026-11-26T00:00:00+00:00' },
  { book: 'class', role: 'teacher', person: null, session: idOf(1) },
);
const ENDED = { ...BEGUN, kind: 'class-session-ended', id: idOf(2), content: {} } as const;
const KEPT = {
  ...ENDED,
  kind: 'kept-by-agreement',
  person: idOf(9),
  content: { teacherAgrees: true, subjectAgrees: true },
} as const;

const placesIn = (entry: object) => placesOf(readEntry(entry));

describe('a class session', () => {
  test('is begun, ended, and what was agreed to is kept', () => {
    for (const entry of [BEGUN, ENDED, KEPT]) expect(placesIn(entry)).toEqual([]);
  });

  test.each([
    ['in the book of charts', { book: 'care' }, ['/book']],
    ['in the book of practice', { book: 'simulated' }, ['/book']],
    ['of no session', { session: null }, ['/session']],
    ['by a learner', { role: 'observer' }, ['/role']],
  ] satisfies [string, Partial<EntryFrame>, string[]][])('%s is refused', (_, more, places) => {
    for (const entry of [BEGUN, ENDED, KEPT]) expect(placesIn({ ...entry, ...more })).toEqual(places);
  });

  test('is about nobody, and has its own id', () => {
    expect(placesIn({ ...BEGUN, person: idOf(9) })).toEqual(['/person']);
    expect(placesIn({ ...ENDED, person: idOf(9) })).toEqual(['/person']);
    expect(placesIn({ ...BEGUN, session: idOf(5) })).toEqual(['/session']);
    expect(placesIn({ ...KEPT, person: null })).toEqual(['/person']);
  });

  test('has a title and an end', () => {
    const content = (more: object) => placesIn({ ...BEGUN, content: { ...BEGUN.content, ...more } });
    expect(content({ title: ' ' })).toEqual(['/content/title']);
    expect(content({ title: 'x'.repeat(200) })).toEqual([]);
    expect(content({ title: 'x'.repeat(201) })).toEqual(['/content/title']);
    expect(content({ endsBy: '2026-11-26' })).toEqual(['/content/endsBy']);
    expect(content({ endsBy: null })).toEqual(['/content/endsBy']);
  });

  test.each([
    [true, false, ['/content/subjectAgrees']],
    [false, true, ['/content/teacherAgrees']],
    [false, false, ['/content/teacherAgrees', '/content/subjectAgrees']],
    [null, true, ['/content/teacherAgrees']],
  ])('keeps nothing on one agreement: %s, %s', (teacherAgrees, subjectAgrees, places) => {
    expect(placesIn({ ...KEPT, content: { teacherAgrees, subjectAgrees } })).toEqual(places);
  });
});

test('no fact about a body is of a class, and no identity but a pseudonym', () => {
  for (const kind of ['fact', 'fact-ended', 'identity-corrected', 'protocol-chosen'] as const)
    expect(CLASS_KINDS).not.toContain(kind);
});
