import { expect, test } from 'vitest';
import { frame, idOf, kept } from '../testing/work.js';
import { holdsThen, standingFacts } from './standingFacts.js';

const fistula = { about: { fact: 'fistula', side: 'left' }, from: '2026-03-01', until: null, text: null };
const said = (id: number, content: object, more: object = {}) =>
  kept(frame('fact', content, { id: idOf(id), sequence: id, ...more }), id);
const slip = (entry: number) => ({ amends: { entry: idOf(entry), reason: 'typing-slip', text: null } });

test('a fact stands as it was said, with the end that somebody gave it later', () => {
  const ended = kept(frame('fact-ended', { fact: idOf(1), until: '2026-05-31' }, { id: idOf(2) }), 2);
  expect(standingFacts([said(1, fistula)])).toEqual([{ ...fistula, entry: idOf(1), newest: idOf(1) }]);
  expect(standingFacts([said(1, fistula), ended])).toEqual([
    { ...fistula, until: '2026-05-31', entry: idOf(1), newest: idOf(1) },
  ]);
});

test('an end named before an amendment still ends what the amendment says, since they are one fact', () => {
  const ended = kept(frame('fact-ended', { fact: idOf(1), until: '2026-05-31' }, { id: idOf(2) }), 2);
  const right = { ...fistula, about: { fact: 'fistula', side: 'right' } };
  expect(standingFacts([said(1, fistula), ended, said(3, right, slip(1))])).toEqual([
    { ...right, until: '2026-05-31', entry: idOf(1), newest: idOf(3) },
  ]);
});

test('a fact entered in error stands no more; an end in error ends nothing', () => {
  const error = (id: number, of: number) =>
    kept(
      frame('entered-in-error', { note: null }, { id: idOf(id), sequence: id, ...slip(of) } as object),
      id,
    );
  expect(standingFacts([said(1, fistula), error(2, 1)])).toEqual([]);
  const ended = kept(frame('fact-ended', { fact: idOf(1), until: '2026-05-31' }, { id: idOf(2) }), 2);
  expect(standingFacts([said(1, fistula), ended, error(3, 2)])).toEqual([
    { ...fistula, entry: idOf(1), newest: idOf(1) },
  ]);
});

test('two amendments that disagree are both shown: an arm barred by either is barred', () => {
  const [left, right] = [fistula, { ...fistula, about: { fact: 'fistula', side: 'right' } }];
  const standing = standingFacts([said(1, left), said(2, left, slip(1)), said(3, right, slip(1))]);
  expect(standing.map(({ about }) => 'side' in about && about.side)).toEqual(['left', 'right']);
});

test('both days of a fact count', () => {
  const between = { from: '2026-03-01', until: '2026-03-03' };
  const days = ['2026-02-28', '2026-03-01', '2026-03-03', '2026-03-04'];
  expect(days.map((day) => holdsThen(between, day))).toEqual([false, true, true, false]);
  expect(holdsThen({ from: '2026-03-01', until: null }, '2099-01-01')).toBe(true);
});
