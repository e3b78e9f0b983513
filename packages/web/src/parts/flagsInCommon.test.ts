import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { type Flagged, flagsInCommon as inCommon } from './flagsInCommon.js';

const words = wordsFor('en');
const flagsInCommon = (values: readonly Flagged[]) =>
  inCommon(values, ({ code, figures }) => `${code} ${JSON.stringify(figures)}`);

const flag = (code: string, figures: Record<string, number> = {}) => ({ code, figures });
const GRADUATION = flag('off-graduation', { gaugeStepMmHg: 2 });
const of = (id: string, flags: Flagged['flags'], sign = 'pressure'): Flagged => ({
  id,
  sign,
  name: `${id}/80`,
  flags,
});

test('what several readings have alike is said once, with which readings it holds for', () => {
  const alone = flag('too-soon', { seconds: 20 });
  const { ownOf, shared } = flagsInCommon([
    of('a', [GRADUATION]),
    of('b', [GRADUATION, alone]),
    of('c', []),
    of('p', [GRADUATION], 'pulse'),
  ]);
  expect(shared).toEqual([
    { sign: 'pressure', names: ['a/80', 'b/80'], values: 2, isOfAll: false, flags: [GRADUATION] },
  ]);
  expect(['a', 'b', 'c', 'p'].map(ownOf)).toEqual([[], [alone], [], [GRADUATION]]);
});

test('nothing is lost: each flag is said of each of its values, and no figure stands for another', () => {
  const fall = (mmHg: number) => flag('fast', { mmHg });
  const { ownOf, shared } = flagsInCommon([of('a', [fall(4)]), of('b', [fall(5)]), of('c', [fall(5)])]);
  expect(ownOf('a')).toEqual([fall(4)]);
  expect(shared.map(({ names, flags }) => [names, flags])).toEqual([[['b/80', 'c/80'], [fall(5)]]]);
});

test('what all have is said of all, and what they share together stands together', () => {
  const both = [GRADUATION, flag('not-timed')];
  const { shared } = flagsInCommon([of('a', both), of('b', both), of('c', both)]);
  expect(shared).toEqual([
    { sign: 'pressure', names: ['a/80', 'b/80', 'c/80'], values: 3, isOfAll: true, flags: both },
  ]);
});

test('two amendments that dispute one reading are one reading, and have nothing alike with another', () => {
  const claim = (id: string) => ({ ...of(id, [GRADUATION]), claimOf: 'a' });
  const alone = flagsInCommon([claim('b'), claim('c')]);
  expect(alone.shared).toEqual([]);
  expect(['b', 'c'].map(alone.ownOf)).toEqual([[GRADUATION], [GRADUATION]]);
  const { shared } = flagsInCommon([claim('b'), claim('c'), of('d', [GRADUATION])]);
  expect(shared).toMatchObject([{ names: ['b/80', 'c/80', 'd/80'], values: 2, isOfAll: true }]);
});

test('what is said alike is alike, whatever its figures were rounded from', () => {
  const fast = (mean: number) => flag('rate-fast', { ratePerSecond: mean, fastestMmHgPerSecond: 3 });
  const said = (one: { figures: Record<string, number> }) =>
    words.say.short(one.figures.ratePerSecond ?? 0, 1);
  const { shared } = inCommon(
    [of('a', [fast(4.02)]), of('b', [fast(3.99)]), of('c', [fast(4.3)])],
    said as never,
  );
  expect(shared.map(({ names }) => names)).toEqual([['a/80', 'b/80']]);
});
