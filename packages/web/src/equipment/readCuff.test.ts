import { USUAL_MANNER } from '@evenfall/words';
import { expect, test } from 'vitest';
import { type CuffFields, readCuff } from './readCuff.js';

const TYPED: CuffFields = {
  size: 'aha-2005/adult',
  room: ' Room 2 ',
  pieces: '2',
  width: '',
  length: '',
  note: '',
};
const wrongIn = (more: Partial<CuffFields>) =>
  Object.keys(readCuff({ ...TYPED, ...more }, USUAL_MANNER).wrong);

test('cuffs are read as the record keeps them; a blank is not said', () => {
  expect(readCuff(TYPED, USUAL_MANNER).content).toEqual({
    what: 'cuff',
    scheme: 'aha-2005',
    cuff: 'adult',
    room: 'Room 2',
    pieces: 2,
    bladderCm: null,
    note: null,
  });
  expect(readCuff({ ...TYPED, width: '13', length: '30.5' }, USUAL_MANNER).content?.bladderCm).toEqual({
    width: 13,
    length: 30.5,
  });
});

test.each<[string, Partial<CuffFields>, string[]]>([
  ['no size', { size: '' }, ['size']],
  ['a cuff of another scheme', { size: 'uk-arm-bands/adult' }, ['size']],
  ['none', { pieces: '0' }, ['pieces']],
  ['one', { pieces: '1' }, []],
  ['the most', { pieces: '999' }, []],
  ['one more than the most', { pieces: '1000' }, ['pieces']],
  ['half a cuff', { pieces: '1.5' }, ['pieces']],
  ['a width alone', { width: '13' }, ['bladder']],
  ['a bladder of nothing', { width: '0', length: '30' }, ['bladder']],
  ['the largest bladder', { width: '100', length: '100' }, []],
  ['a larger one', { width: '100.1', length: '100' }, ['bladder']],
])('%s: %j is wrong in %j', (_, more, wrong) => {
  expect(wrongIn(more)).toEqual(wrong);
  expect(readCuff({ ...TYPED, ...more }, USUAL_MANNER).content === null).toBe(wrong.length > 0);
});

// 1 in is 2.54 cm, exact (UCUM 2.1).
test('a bladder is typed in the unit of the device, or in the one behind the number, and kept in cm', () => {
  const inches = { ...USUAL_MANNER, length: '[in_i]' } as const;
  const bladder = (width: string, length: string, manner = USUAL_MANNER) =>
    readCuff({ ...TYPED, width, length }, manner).content?.bladderCm;
  expect(bladder('5', '12', inches)).toEqual({ width: 12.7, length: 30.48 });
  expect(bladder('13 cm', '30 cm', inches)).toEqual({ width: 13, length: 30 });
  expect(bladder('5 in', '12 in')).toEqual({ width: 12.7, length: 30.48 });
  // The largest is 100 cm: 39.37 in.
  expect(bladder('39.3', '39.3', inches)).toBeDefined();
  expect(bladder('39.4', '39.3', inches)).toBeUndefined();
});
