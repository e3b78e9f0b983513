import { expect, test } from 'vitest';
import { DEFAULT_ACT_NOW_RULES as RULES } from './actNowRules.js';
import { isToLieDown, lieDownFlags, uprightAsk } from './lieDown.js';
import type { RoundReading } from './roundReading.js';
import { reading } from './testing.js';

const ADULT = 600;
const lying = reading({ id: 'a', posture: 'lie', systolic: 150, diastolic: 90 });
const up = (more: Partial<RoundReading> = {}) =>
  reading({ id: 'b', posture: 'stand', uprightMinutes: 1, systolic: 146, diastolic: 88, ...more });

// Bedside handbook 3.14: stop for symptoms; a systolic falling below 90. A fall by itself (20/10 from 150/90) stops nothing.
test.each([
  ['146/88', {}, []],
  ['130/80, a fall', { systolic: 130, diastolic: 80 }, []],
  ['91/60', { systolic: 91, diastolic: 60 }, []],
  // Bedside handbook 3.17: 90 or under is very low, and is no fall below 90.
  [
    '90/60',
    { systolic: 90, diastolic: 60 },
    [{ code: 'standing-systolic-low', figures: { systolic: 90, minutes: 1 } }],
  ],
  ['well', { isUnwellUpright: false }, []],
  ['unwell', { isUnwellUpright: true }, [{ code: 'symptoms-on-standing', figures: { minutes: 1 } }]],
  [
    '89/60',
    { systolic: 89, diastolic: 60 },
    [{ code: 'standing-systolic-low', figures: { systolic: 89, minutes: 1, limitMmHg: 90 } }],
  ],
])('on the feet %s', (_, more, flags) => {
  expect(lieDownFlags([lying, up(more)], ADULT, RULES)).toEqual(flags);
  expect(isToLieDown([lying, up(more)], ADULT, RULES)).toBe(flags.length > 0);
});

test('lying, a low systolic lays nobody down; minutes that nobody noted are not made up', () => {
  expect(isToLieDown([{ ...lying, systolic: 84 }], ADULT, RULES)).toBe(false);
  expect(lieDownFlags([up({ uprightMinutes: null, isUnwellUpright: true })], ADULT, RULES)).toEqual([
    { code: 'symptoms-on-standing', figures: {} },
  ]);
});

test('who is to lie down is told of no reading on the feet, neither due, late nor missed', () => {
  expect(uprightAsk(120, [lying, up()], ADULT, RULES)).toEqual({
    due: { minutes: 3, inSeconds: 60 },
    missed: null,
    isLate: false,
    isToLieDown: false,
  });
  expect(uprightAsk(240, [lying, up({ systolic: 130 })], ADULT, RULES)).toMatchObject({
    missed: 3,
    isLate: true,
  });
  for (const more of [{ systolic: 84 }, { isUnwellUpright: true }]) {
    for (const seconds of [70, 120, 180, 240]) {
      const none = { due: null, missed: null, isLate: false, isToLieDown: true };
      expect(uprightAsk(seconds, [lying, up(more)], ADULT, RULES)).toEqual(none);
    }
  }
});

// Bedside handbook 3.17: a child of 4 years is low under 70 + 2 x 4 = 78; 88 is ordinary.
test('a child on the feet goes by the limit of its age, and by that of no adult', () => {
  const at = (systolic: number) => [lying, up({ systolic, diastolic: 54 })];
  expect(lieDownFlags(at(88), 48, RULES)).toEqual([]);
  expect(uprightAsk(120, at(88), 48, RULES)).toMatchObject({ due: { minutes: 3 }, isToLieDown: false });
  expect(lieDownFlags(at(77), 48, RULES)).toEqual([
    { code: 'standing-systolic-low', figures: { systolic: 77, minutes: 1, limitMmHg: 78 } },
  ]);
  expect(isToLieDown([lying, up({ systolic: 88, isUnwellUpright: true })], 48, RULES)).toBe(true);
});
