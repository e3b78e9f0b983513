import { expect, test } from 'vitest';
import { countContent, frame, placesOf } from '../testing/work.js';
import { entryFrame } from './entry.js';
import { type Frames, readFrame } from './readFrame.js';

const GOOD = frame('count', countContent({ n: 19, windowSeconds: 15 }));

test('a frame without a number is the first', () => {
  const { frame: _, ...first } = GOOD;
  expect(readFrame(first)).toEqual({ ok: true, value: { ...GOOD, frame: 1 } });
});

test('a newer frame is refused by name alone: nothing of it is guessed', () => {
  expect(readFrame({ ...GOOD, frame: 2, posture: 'sitting' })).toMatchObject({
    ok: false,
    refusals: [{ field: '/frame', code: 'unknown-id', figures: { newest: 1 } }],
  });
});

test.each([0, -1, 1.5, '1', null, true])('%j is no frame number', (number) => {
  expect(placesOf(readFrame({ ...GOOD, frame: number }))).toEqual(['/frame']);
});

test('everything wrong with a frame is said at its place', () => {
  expect(placesOf(readFrame({ ...GOOD, id: 'mine', role: 'boss' }))).toEqual(['/id', '/role']);
});

test('a later program that adds fields reads every older frame', () => {
  const third: Frames<unknown> = {
    newest: 3,
    schema: entryFrame.omit({ frame: true }).loose(),
    upgrades: {
      1: (older) => ({ ...older, posture: null }),
      2: ({ posture, ...older }) => ({ ...older, stance: posture }),
    },
  };
  expect(readFrame(GOOD, third)).toEqual({ ok: true, value: { ...GOOD, frame: 3, stance: null } });
  const second = { ...GOOD, frame: 2, posture: 'sitting' };
  expect(readFrame(second, third)).toMatchObject({ ok: true, value: { frame: 3, stance: 'sitting' } });
  expect(placesOf(readFrame({ ...GOOD, frame: 4 }, third))).toEqual(['/frame']);
});
