import { expect, test } from 'vitest';
import { diaryAsked } from '../content/diaryAsked.js';
import type { StoredEntry } from '../entry/entry.js';
import { readEntry } from '../entry/readEntry.js';
import { H1, homeEvidence, seriesContentOf } from '../testing/series.js';
import { frame, idOf, kept, placesOf } from '../testing/work.js';
import { chartDiaries, dueDiaries } from './chartDiaries.js';
import { projectDuties } from './duties.js';
import { projectLatest } from './latest.js';

const HANDED = {
  days: 7,
  readingsInSitting: 2,
  language: 'es',
  from: '2026-07-01',
  dueOn: '2026-07-08',
  note: null,
};
const handed = (id: number, more = {}): StoredEntry =>
  kept(frame('diary-handed', { ...HANDED, ...more }, { id: idOf(id), sequence: id }));
const ended = (id: number, diary: number): StoredEntry =>
  kept(frame('diary-ended', { diary: idOf(diary), reason: 'moved away' }, { id: idOf(id), sequence: id }));
const back = (id: number, diary: number): StoredEntry =>
  kept(
    frame('series', seriesContentOf(homeEvidence(H1, { diary: idOf(diary) })), {
      id: idOf(id),
      round: idOf(id + 500),
      sequence: id,
    }),
  );
const inError = (id: number, of: number): StoredEntry =>
  kept(
    frame(
      'entered-in-error',
      { note: null },
      { id: idOf(id), sequence: id, amends: { entry: idOf(of), reason: 'wrong-person', text: null } },
    ),
    5,
  );

test('a diary of seven days from the first is due back on the day after the last', () => {
  expect(diaryAsked({ daysAsked: 7, readingsInSitting: 2 }, '2026-02-25')).toEqual({
    days: 7,
    readingsInSitting: 2,
    from: '2026-02-25',
    dueOn: '2026-03-04',
  });
});

test('a diary is due from its day on, until a series names it or somebody says that it will not come', () => {
  const due = (today: string, ...more: StoredEntry[]) =>
    dueDiaries([handed(1), ...more], today).map(({ entry }) => entry);
  expect(due('2026-07-07')).toEqual([]);
  expect(due('2026-07-08')).toEqual([idOf(1)]);
  expect(due('2026-07-09', back(2, 1))).toEqual([]);
  expect(due('2026-07-09', ended(2, 1))).toEqual([]);
  expect(due('2026-07-09', back(2, 3))).toEqual([idOf(1)]);
  // What was entered in error brings it back to being out.
  expect(due('2026-07-09', back(2, 1), inError(4, 2))).toEqual([idOf(1)]);
  expect(due('2026-07-09', ended(2, 1), inError(4, 2))).toEqual([idOf(1)]);
  expect(due('2026-07-09', inError(4, 1))).toEqual([]);
});

test('each diary is told as out, back or ended, and the first due is in the list of people', () => {
  const all = [handed(1), handed(2, { dueOn: '2026-07-05' }), handed(3), back(4, 3), handed(5), ended(6, 5)];
  expect(chartDiaries(all).map(({ entry, state, reason }) => [entry, state, reason])).toEqual([
    [idOf(2), 'out', null],
    [idOf(1), 'out', null],
    [idOf(3), 'back', null],
    [idOf(5), 'ended', 'moved away'],
  ]);
  expect(projectDuties(all).diaries.map(({ entry }) => entry)).toEqual([idOf(2), idOf(1)]);
  expect(projectLatest(all).diary).toEqual({ entry: idOf(2), dueOn: '2026-07-05' });
  expect(projectLatest([handed(3), back(4, 3)]).diary).toBeNull();
});

test('a diary that is due before it begins, or in a language that has no page, is refused', () => {
  const places = (more: object) => placesOf(readEntry(frame('diary-handed', { ...HANDED, ...more })));
  expect(places({})).toEqual([]);
  expect(places({ dueOn: '2026-07-01' })).toEqual([]);
  expect(places({ dueOn: '2026-06-30' })).toEqual(['/content/dueOn']);
  expect(places({ language: 'xx' })).toEqual(['/content/language']);
  expect(places({ days: 0 })).toEqual(['/content/days']);
  expect(places({ days: 15 })).toEqual(['/content/days']);
});
