import type { RunPlace } from '@evenfall/record';
import { expect, test } from 'vitest';
import { cuffFlags } from './cuffFlags.js';

const place = (armCm: number | null, id: string | null): RunPlace => ({
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: id === null ? null : { scheme: 'aha-2005', id },
  armCm,
  override: null,
});
const codes = (on: RunPlace | null, at: 'feel' | 'ready' | 'place' = 'ready') =>
  cuffFlags({ place: on, measuring: at === 'feel' ? { at, typed: '' } : { at } }).map(({ code }) => code);

// Bedside handbook 3.2: the adult cuff is for arms of 27 to 34 cm.
test('a cuff of the wrong size is said on every step before it goes up', () => {
  expect([34, 35].map((armCm) => codes(place(armCm, 'adult')))).toEqual([[], ['cuff-too-small']]);
  expect([27, 26].map((armCm) => codes(place(armCm, 'adult')))).toEqual([[], ['cuff-too-large']]);
  expect(codes(place(38, 'adult'), 'feel')).toEqual(['cuff-too-small']);
});

test('where the cuff goes on it is said beside the choice; what was not said is not judged', () => {
  expect(codes(place(38, 'adult'), 'place')).toEqual([]);
  expect([codes(place(null, 'adult')), codes(place(38, null)), codes(null)]).toEqual([[], [], []]);
});
