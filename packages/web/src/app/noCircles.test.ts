import { expect, test } from 'vitest';
import { circleOf } from '../../bundling/noCircles.js';

const filesOf = (imports: Record<string, readonly string[]>) => new Map(Object.entries(imports));

test('files that wait for each other are found, wherever the circle begins', () => {
  expect(circleOf(filesOf({ page: ['rules'], rules: ['figures'], figures: [] }))).toBeNull();
  expect(
    circleOf(filesOf({ page: ['rules', 'taps'], rules: ['figures'], taps: ['figures'], figures: [] })),
  ).toBeNull();
  expect(
    circleOf(filesOf({ page: ['rules'], rules: ['figures'], figures: ['taps'], taps: ['rules'] })),
  ).toEqual(['rules', 'figures', 'taps']);
  expect(circleOf(filesOf({ page: ['page'] }))).toEqual(['page']);
});
