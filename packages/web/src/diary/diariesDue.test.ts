import type { PersonRow } from '@evenfall/api';
import { expect, test } from 'vitest';
import { diariesDue } from './diariesDue.js';

function row(id: string, dueOn: string | null): PersonRow {
  const diary = dueOn === null ? null : { entry: `diary of ${id}`, dueOn };
  const diaries = diary === null ? [] : [{ ...diary, from: '2026-06-01' }];
  const latest = {
    pulse: null,
    breaths: null,
    pressure: null,
    actNow: 0,
    actNowFirst: null,
    recheck: null,
    toCountersign: 0,
    diary,
    diaries,
    awayUntil: null,
  };
  return { id, identity: null, classIdentity: null, latest };
}

test('a diary is due on its day and after it, and who has had it longest comes first', () => {
  const rows = [row('b', '2026-07-08'), row('a', '2026-07-02'), row('c', null), row('d', '2026-07-09')];
  const due = (today: string) => diariesDue(rows, today).map(({ id }) => id);
  expect(due('2026-07-01')).toEqual([]);
  expect(due('2026-07-02')).toEqual(['a']);
  expect(due('2026-07-08')).toEqual(['a', 'b']);
  expect(due('2026-07-09')).toEqual(['a', 'b', 'd']);
});

test('of two diaries that are out to one person each is named', () => {
  const one = row('a', '2026-07-02');
  const second = { entry: 'second', dueOn: '2026-07-05', from: '2026-06-20' };
  const both = { ...one, latest: { ...one.latest, diaries: [...one.latest.diaries, second] } };
  const due = (today: string) => diariesDue([both], today).map(({ entry, from }) => [entry, from]);
  expect(due('2026-07-04')).toEqual([['diary of a', '2026-06-01']]);
  expect(due('2026-07-05')).toEqual([
    ['diary of a', '2026-06-01'],
    ['second', '2026-06-20'],
  ]);
});
