import { expect, test } from 'vitest';
import { type Flagged, flagsInCommon } from './flagsInCommon.js';

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
    { sign: 'pressure', names: ['a/80', 'b/80'], isOfAll: false, flags: [GRADUATION] },
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
  expect(shared).toEqual([{ sign: 'pressure', names: ['a/80', 'b/80', 'c/80'], isOfAll: true, flags: both }]);
});
