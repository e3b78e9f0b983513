import { expect, test } from 'vitest';
import { standingBeside } from './standingBeside.js';

const flag = (code: string) => ({ code, figures: {} });

test('that nothing was measured at the third minute is said once, by the answer that it leaves open or beside it', () => {
  const missed = [flag('third-minute-missed')];
  const open = {
    flags: [flag('initial-fall-not-seen')],
    why: [flag('third-minute-not-measured')],
    pulseRise: null,
  };
  expect(standingBeside(open, missed)).toEqual([...open.flags, ...open.why]);
  const fell = { flags: [flag('fall-on-standing')], why: [], pulseRise: null };
  expect(standingBeside(fell, missed)).toEqual([...fell.flags, ...missed]);
  expect(standingBeside(fell, [])).toEqual(fell.flags);
});

// Bedside handbook 3.14: the pulse is measured at each step; what its rise means has conditions of its own.
test('how the pulse changed stands before what is said of its rise, and once', () => {
  const change = { code: 'pulse-change', figures: { pulseRise: 22 } };
  const fell = { flags: [flag('fall-on-standing')], why: [flag('rhythm-not-known')], pulseRise: 22 };
  expect(standingBeside(fell, [])).toEqual([...fell.flags, change, ...fell.why]);
  const rose = { flags: [flag('rise-without-fall')], why: [], pulseRise: 32 };
  expect(standingBeside(rose, [])).toEqual(rose.flags);
});
