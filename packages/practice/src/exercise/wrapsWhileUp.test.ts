import { type Action, PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { wrapsWhileUp } from './wrapsWhileUp.js';

const PUMPED: Action[] = [
  { tick: 400, kind: 'steady-rise', mmHgPerSecond: 20, toMmHg: 180 },
  { tick: 4000, kind: 'steady-fall', mmHgPerSecond: 3, toMmHg: 100 },
  { tick: 10_000, kind: 'quick-release' },
];
const found = (...done: Action[]) => {
  const actions = [...PUMPED, ...done].sort((one, other) => one.tick - other.tick);
  const visit = {
    scenario: scenarioOf('bad-hose') as Scenario,
    seed: 3,
    circumstances: { ...PROPER, isCuffLoose: true },
    instrument: { ...SOUND_INSTRUMENT, leakMmHgPerMinute: 12 },
  };
  return wrapsWhileUp({ ...visit, actions }).map(({ field, code, expected, figures, got }) => ({
    at: field,
    is: `${code} ${expected}`,
    mmHg: Math.round(figures.cuffMmHg ?? Number.NaN),
    got,
  }));
};

// The model's own rule (docs/practice.md): another cuff or gauge is taken, and a cuff wrapped anew, while it is empty. 20 mmHg a second
// from 2 s on are 180 mmHg after 11 s; a fall of 3 a second from 20 s on leaves 150 after 30 s.
test.each<[string, Action, string, number]>([
  ['another gauge', { tick: 3000, kind: 'gauge' }, '/actions/1/kind', 180],
  ['another cuff', { tick: 3000, kind: 'cuff', bladder: 'child' }, '/actions/1/kind', 180],
  [
    'wrapped more tightly',
    { tick: 6000, kind: 'arrange', isCuffLoose: false },
    '/actions/2/isCuffLoose',
    150,
  ],
  ['on the other arm', { tick: 6000, kind: 'arrange', arm: 'left' }, '/actions/2/arm', 150],
])('%s while the cuff is up is refused, at its place', (_, action, at, mmHg) => {
  expect(found(action)).toMatchObject([{ at, is: 'impossible cuff-empty', mmHg }]);
});

test.each<[string, Action]>([
  ['another gauge before it is pumped up', { tick: 100, kind: 'gauge' }],
  ['another cuff when it is empty again', { tick: 11_500, kind: 'cuff', bladder: 'child' }],
  ['wrapped when it is empty again', { tick: 11_500, kind: 'arrange', isCuffLoose: false, arm: 'left' }],
  ['as loose as it was, up', { tick: 3000, kind: 'arrange', isCuffLoose: true, arm: 'right' }],
  ['asked not to talk, up', { tick: 3000, kind: 'arrange', isTalking: false }],
])('%s is taken', (_, action) => {
  expect(found(action)).toEqual([]);
});

test('every one of several is refused, and nothing is emptied by one that is', () => {
  expect(
    found({ tick: 3000, kind: 'gauge' }, { tick: 6000, kind: 'cuff', bladder: 'child' }).map(({ at }) => at),
  ).toEqual(['/actions/1/kind', '/actions/3/kind']);
});
