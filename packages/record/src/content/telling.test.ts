import { expect, test } from 'vitest';
import { type Seen, saysSomething, wrongTelling } from './telling.js';

const at = (time: string) => ({ at: `2026-03-05T${time}+01:00`, zone: 'Europe/Vienna', asEntered: null });

/** Something that was measured then, by a clock so many minutes ahead of the one that records. */
const measured = (kind: Seen['kind'], time: string, aheadMinutes = 0, content: object = {}): Seen => {
  const { at: instant } = at(time);
  const recordedAt = new Date(Date.parse(instant) - aheadMinutes * 60_000).toISOString();
  return { kind, measuredAt: at(time), writtenAt: instant, recordedAt, content } as unknown as Seen;
};

const wrong = (told: string, saw: readonly Seen[], written = '23:59:00.000', came = written) =>
  wrongTelling(
    { toldWhom: 'Dr Birch', saidBack: 'comes', toldAt: at(told) },
    saw,
    at(written).at,
    at(came).at,
  );

// What counts as a name is a decision of this project: no source.
test('punctuation alone is nobody that was told and nothing that was said', () => {
  for (const text of ['.', '..', '-', '— !', '', ' ', '()']) expect(saysSomething(text), text).toBe(false);
  for (const text of ['Dr Ó', 'ok', 'bed 7, comes', '李', '医生', '4421', 'مـ'])
    expect(saysSomething(text), text).toBe(true);
  const telling = { toldWhom: '.', saidBack: '-', toldAt: at('23:03:00.000') };
  expect(wrongTelling(telling, [], at('23:03:00.000').at)).toEqual(['nobody-told', 'nothing-said']);
});

test('nobody was told of a reading before it was taken, to the minute that is typed, nor later than now', () => {
  const saw = [
    measured('run', '23:01:40.000'),
    measured('count', '23:05:00.000'),
    measured('round', '22:50:00.000'),
  ];
  expect(wrong('20:00:00.000', saw)).toEqual(['before-measured']);
  expect(wrong('23:00:00.000', saw)).toEqual(['before-measured']);
  expect(wrong('23:01:00.000', saw)).toEqual([]);
  expect(wrong('23:03:00.000', saw)).toEqual([]);
  expect(wrong('23:10:00.000', saw, '23:08:00.000')).toEqual(['ahead']);
  expect(wrong('23:09:00.000', saw, '23:08:00.000')).toEqual([]);
  // What was written first, refused and put right is of any time until it came.
  expect(wrong('23:10:00.000', saw, '23:08:00.000', '23:11:00.000')).toEqual([]);
  expect(wrong('23:13:00.000', saw, '23:08:00.000', '23:11:00.000')).toEqual(['ahead']);
  // A device whose clock is ahead writes by its own clock.
  expect(wrong('23:33:00.000', saw, '23:33:00.000', '23:08:00.000')).toEqual([]);
});

test('of readings from away somebody may be told before they are brought in, and not before they were taken', () => {
  const readings = [{ at: at('08:00:00.000') }, { at: at('20:00:00.000') }];
  const saw = [measured('series', '23:00:00.000', 0, { readings })];
  expect(wrong('20:05:00.000', saw)).toEqual([]);
  expect(wrong('08:00:00.000', saw)).toEqual([]);
  expect(wrong('07:00:00.000', saw)).toEqual(['before-measured']);
});

test('a device whose clock is ahead makes no alert that nobody can close', () => {
  const ahead = [measured('run', '23:30:00.000', 25)];
  // It was 23:05 when it was recorded: told at 23:06, by a clock that is right.
  expect(wrong('23:06:00.000', ahead, '23:06:00.000')).toEqual([]);
  expect(wrong('22:30:00.000', ahead, '23:06:00.000')).toEqual(['before-measured']);
  // A clock that is behind what was recorded: now is never too early.
  expect(wrong('22:50:00.000', ahead, '22:50:00.000')).toEqual([]);
});
