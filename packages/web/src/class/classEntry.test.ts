import { CLASS_IDENTIFIERS, readEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { AGENT, AT, DEVICE, ID, PERSON } from '../round/testing.js';
import { agreedByBoth, classEntry } from './classEntry.js';

const START = { id: ID(40), sequence: 7, measuredAt: AT(5), writtenAt: AT(5).at };
const BY = { session: ID(40), agent: AGENT, device: DEVICE };

// The record reads each of them: what an act of a class must be is said there and nowhere else.
test.each([
  classEntry(
    'class-session',
    START,
    { ...BY, person: null, role: 'teacher' },
    { title: 'Tuesday group (invented)', endsBy: AT(30).at },
  ),
  classEntry('class-session-ended', START, { ...BY, person: null, role: 'teacher' }, {}),
  classEntry(
    'kept-by-agreement',
    START,
    { ...BY, person: PERSON, role: 'teacher' },
    { teacherAgrees: true, subjectAgrees: true },
  ),
  classEntry(
    'person',
    START,
    { ...BY, person: PERSON, role: 'observer' },
    { identifiers: [...CLASS_IDENTIFIERS] },
  ),
])('the record takes $kind as it is written here', (entry) => {
  expect(readEntry(entry)).toEqual({ ok: true, value: entry });
});

test('one who agrees alone keeps nothing', () => {
  const agreements = {
    both: { teacher: true, subject: true },
    teacher: { teacher: true, subject: false },
    subject: { teacher: false, subject: true },
    nobody: { teacher: false, subject: false },
  };
  expect(agreedByBoth(agreements)).toEqual(['both']);
  expect(agreedByBoth({})).toEqual([]);
});
