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
const wrongIn = (more: Partial<CuffFields>) => Object.keys(readCuff({ ...TYPED, ...more }).wrong);

test('cuffs are read as the record keeps them; a blank is not said', () => {
  expect(readCuff(TYPED).content).toEqual({
    what: 'cuff',
    scheme: 'aha-2005',
    cuff: 'adult',
    room: 'Room 2',
    pieces: 2,
    bladderCm: null,
    note: null,
  });
  expect(readCuff({ ...TYPED, width: '13', length: '30.5' }).content?.bladderCm).toEqual({
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
  expect(readCuff({ ...TYPED, ...more }).content === null).toBe(wrong.length > 0);
});
