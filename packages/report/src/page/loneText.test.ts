import { loneReadings } from '@evenfall/clinical';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { A1 } from '../../../clinical/src/outOfOffice/testing.js';
import { loneText } from './loneText.js';

const words = wordsFor('en-GB');
const mean = { systolic: 132.35, diastolic: 83.1 };

// The invented recording A1 of the out-of-office handbook 19, with one reading in it that stands alone.
test('a lone reading is named with its neighbours, and the mean with it and without it', () => {
  const moved = A1.map((one) => (one.index === 11 ? { ...one, systolic: 232, diastolic: 148 } : one));
  const lone = { readings: loneReadings(moved, new Set()), without: { systolic: 129.7, diastolic: 79.94 } };
  expect(loneText(lone, mean, words)).toBe(
    'One reading stands far from its neighbours: 232/148 on 1 Jan at 14:00, between 131/81 and 138/86. Look whether the arm moved. With it the mean is 132.4/83.1, without 129.7/79.9; nothing was left out for it; of what is kept, a hand can take it out.',
  );
  expect(loneText(null, mean, words)).toBeNull();
  expect(loneText({ ...lone, readings: Array(5).fill(lone.readings[0]), without: null }, mean, words)).toBe(
    '5 readings stand far from their neighbours: too many for one movement of the arm. Look at the recording, and how it was taken; nothing was left out for it.',
  );
});
