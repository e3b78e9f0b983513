import type { PersonRow } from '@evenfall/api';
import type { Identity } from '@evenfall/record';
import { expect, test } from 'vitest';
import { doubtsAbout, hasDoubts } from './doubts.js';

const ADA: Identity = { name: 'Åda  Lind', birthDate: '1948-03-05', number: 'A-17' };
const rows = [
  { id: 'ada', identity: ADA },
  { id: 'erased', identity: null },
  { id: 'nameless', identity: { name: 'Bo Ek', birthDate: null, number: null } },
] as unknown as PersonRow[];

const asked = (identity: Partial<Identity>) => {
  const doubts = doubtsAbout({ name: 'Bo Ek', birthDate: null, number: null, ...identity }, rows);
  return [doubts.same.map(({ id }) => id), doubts.isBornLongAgo, hasDoubts(doubts)];
};

// Bedside handbook 7.1: two identifiers; two people of one name are common, of one name and birth date hardly ever.
test.each([
  ['the same name and birth date', { name: 'ada lind', birthDate: '1948-03-05' }, [['ada'], false, true]],
  ['the same number alone', { number: ' a-17 ' }, [['ada'], false, true]],
  ['the same name, born another day', { name: 'Åda Lind', birthDate: '1948-03-06' }, [[], false, false]],
  ['the same birth date, another name', { birthDate: '1948-03-05' }, [[], false, false]],
  ['the same name, and neither has a second identifier in common', { name: 'Bo Ek' }, [[], false, false]],
  ['born on the last day that is asked about', { birthDate: '1899-12-31' }, [[], true, true]],
  ['born on the first day that is not', { birthDate: '1900-01-01' }, [[], false, false]],
] as const)('%s', (_what, identity, expected) => {
  expect(asked(identity)).toEqual(expected);
});
