import { expect, test } from 'vitest';
import { isNotReliedOn } from './notReliedOn.js';
import type { Countersigned } from './projectChart.js';

const said = (signing: string, agrees: boolean) => ({ content: { signing, agrees } }) as Countersigned;

test.each([
  ['nobody said anything', [], false],
  ['a supervisor relied on it', [said('b', true)], false],
  ['a supervisor did not', [said('b', false)], true],
  ['the last one decides', [said('b', false), said('b', true)], false],
  ['and the other way round', [said('b', true), said('b', false)], true],
  ['what was amended since waits anew', [said('a', false)], false],
] as const)('%s: %j', (_what, countersigned, is) => {
  expect(isNotReliedOn(countersigned, 'b')).toBe(is);
});
