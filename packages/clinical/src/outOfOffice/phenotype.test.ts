import { expect, test } from 'vitest';
import { phenotypeOf, whiteCoatEffect } from './phenotype.js';

const at = (limit: number) => ({ comparison: '>=' as const, limit });
const held = (typed: string, limits: string) => {
  const [systolic = 0, diastolic = 0] = typed.split('/').map(Number);
  const [high = 0, low = 0] = limits.split('/').map(Number);
  return { systolic, diastolic, highSystolic: at(high), highDiastolic: at(low) };
};

// P1 of the out-of-office handbook 19.
test.each([
  ['146/88', '128/80', false, 'white-coat-hypertension'],
  ['146/88', '128/80', true, 'white-coat-effect'],
  ['132/84', '134/86', false, 'masked-hypertension'],
  ['132/84', '138/80', true, 'masked-uncontrolled'],
  ['139/89', '134/84', false, 'sustained-normotension'],
  ['140/80', '135/70', false, 'sustained-hypertension'],
  ['134/78', '131/78', false, 'sustained-normotension'],
  ['138/88', '130/80', true, 'controlled'],
  ['140/90', '135/85', true, 'uncontrolled'],
])('P1: office %s, home %s, treated %s: %s', (office, home, treated, name) => {
  expect(phenotypeOf(held(office, '140/90'), [held(home, '135/85')], treated).names).toEqual([name]);
});

test('P1: by limits of 130/80 the same person has another name', () => {
  const found = phenotypeOf(held('134/78', '130/80'), [held('131/78', '130/80')], false);
  expect(found.names).toEqual(['sustained-hypertension']);
});

test('P1: the size of the white-coat effect', () => {
  const size = (office: string, home: string) => whiteCoatEffect(held(office, '0/0'), held(home, '0/0'));
  expect(size('146/88', '128/80')).toEqual({ systolic: 18, diastolic: 8, isLarge: false });
  // Over 20/10, not at it.
  expect(size('148/90', '128/80').isLarge).toBe(false);
  expect(size('149/90', '128/80').isLarge).toBe(true);
  expect(size('148/91', '128/80').isLarge).toBe(true);
  expect(whiteCoatEffect({ systolic: null, diastolic: null }, held('128/80', '0/0')).isLarge).toBeNull();
});

test('not known whether treated: both names; a pressure not known: none, unless the known one is high', () => {
  expect(phenotypeOf(held('146/88', '140/90'), [held('128/80', '135/85')], null).names).toEqual([
    'white-coat-hypertension',
    'white-coat-effect',
  ]);
  const unknown = { ...held('128/80', '135/85'), diastolic: null };
  expect(phenotypeOf(held('146/88', '140/90'), [unknown], false).names).toEqual([]);
  expect(phenotypeOf(held('146/88', '140/90'), [{ ...unknown, systolic: 150 }], false).names).toEqual([
    'sustained-hypertension',
  ]);
  expect(phenotypeOf(held('146/88', '140/90'), [], false).names).toEqual([]);
});
