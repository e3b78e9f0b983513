import { refusal } from '@evenfall/clinical';
import { USUAL_MANNER } from '@evenfall/words';
import { expect, test } from 'vitest';
import { asTyped, fieldIn, isMeasured, keptOf } from './typedMeasure.js';

const OTHER = { ...USUAL_MANNER, temperature: '[degF]', length: '[in_i]', mass: '[lb_av]' } as const;

// 1 in is 2.54 cm, 1 lb is 0.45359237 kg, exact (UCUM 2.1).
test('what is typed in another unit is kept in that of the record, in a field of its own', () => {
  expect(keptOf('12', 'armCm', OTHER)).toBe(30.48);
  expect(keptOf('100.4', 'celsius', OTHER)).toBe(38);
  expect(keptOf('10', 'kg', OTHER)).toBe(4.5359237);
  expect(keptOf('30.5', 'armCm', USUAL_MANNER)).toBe('30.5');
  expect(fieldIn('armCm', 'armCm', OTHER)).toBe('armCm.[in_i]');
  expect(fieldIn('n', 'celsius', USUAL_MANNER)).toBe('n');
});

test('what is no number stays as typed, to be refused', () => {
  expect(keptOf('twelve', 'armCm', OTHER)).toBe('twelve');
  expect(keptOf(null, 'kg', OTHER)).toBeNull();
});

test('a refusal speaks of the unit in which it was typed', () => {
  const range = { figures: { minimum: 25.4, maximum: 127 } };
  const refused = refusal('/armCm', 'out-of-range', 'within-limits', 254, range);
  expect(asTyped(refused, '100', 'armCm', OTHER)).toMatchObject({
    got: '100',
    figures: { minimum: 10, maximum: 50 },
  });
  expect(asTyped(refused, '100', 'armCm', USUAL_MANNER)).toBe(refused);
  expect([isMeasured('cm'), isMeasured('percent')]).toEqual([true, false]);
});
