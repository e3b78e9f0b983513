import { expect, test } from 'vitest';
import { isToLieDown, lieDownFlags, uprightAsk } from './lieDown.js';
import type { RoundReading } from './roundReading.js';
import { reading } from './testing.js';

const lying = reading({ id: 'a', posture: 'lie', systolic: 150, diastolic: 90 });
const up = (more: Partial<RoundReading> = {}) =>
  reading({ id: 'b', posture: 'stand', uprightMinutes: 1, systolic: 146, diastolic: 88, ...more });

// Bedside handbook 3.14: stop for symptoms; a systolic falling below 90. A fall by itself (20/10 from 150/90) stops nothing.
test.each([
  ['146/88', {}, []],
  ['130/80, a fall', { systolic: 130, diastolic: 80 }, []],
  ['90/60', { systolic: 90, diastolic: 60 }, []],
  ['well', { isUnwellUpright: false }, []],
  ['unwell', { isUnwellUpright: true }, [{ code: 'symptoms-on-standing', figures: { minutes: 1 } }]],
  [
    '89/60',
    { systolic: 89, diastolic: 60 },
    [{ code: 'standing-systolic-low', figures: { systolic: 89, minutes: 1, limitMmHg: 90 } }],
  ],
])('on the feet %s', (_, more, flags) => {
  expect(lieDownFlags([lying, up(more)])).toEqual(flags);
  expect(isToLieDown([lying, up(more)])).toBe(flags.length > 0);
});

test('lying, a low systolic lays nobody down; minutes that nobody noted are not made up', () => {
  expect(isToLieDown([{ ...lying, systolic: 84 }])).toBe(false);
  expect(lieDownFlags([up({ uprightMinutes: null, isUnwellUpright: true })])).toEqual([
    { code: 'symptoms-on-standing', figures: {} },
  ]);
});

test('who is to lie down is told of no reading on the feet, neither due, late nor missed', () => {
  expect(uprightAsk(120, [lying, up()])).toEqual({
    due: { minutes: 3, inSeconds: 60 },
    missed: null,
    isLate: false,
    isToLieDown: false,
  });
  expect(uprightAsk(240, [lying, up({ systolic: 130 })])).toMatchObject({ missed: 3, isLate: true });
  for (const more of [{ systolic: 84 }, { isUnwellUpright: true }]) {
    for (const seconds of [70, 120, 180, 240]) {
      const none = { due: null, missed: null, isLate: false, isToLieDown: true };
      expect(uprightAsk(seconds, [lying, up(more)])).toEqual(none);
    }
  }
});
