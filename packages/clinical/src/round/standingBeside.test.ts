import { expect, test } from 'vitest';
import { standingBeside } from './standingBeside.js';

const flag = (code: string, figures = {}) => ({ code, figures });
const NONE = { flags: [], why: [], pulseRise: null, heartRateRatio: null };

test('that nothing was measured at the third minute is said once, by the answer that it leaves open or beside it', () => {
  const missed = [flag('third-minute-missed')];
  const open = { ...NONE, flags: [flag('initial-fall-not-seen')], why: [flag('third-minute-not-measured')] };
  expect(standingBeside(open, missed)).toEqual([...open.flags, ...open.why]);
  const fell = { ...NONE, flags: [flag('fall-on-standing')] };
  expect(standingBeside(fell, missed)).toEqual([...fell.flags, ...missed]);
  expect(standingBeside(fell, [])).toEqual(fell.flags);
});

// Bedside handbook 3.14: the pulse is measured at each step; what its rise means has conditions of its own.
test('how the pulse changed stands before what is made of its rise, once; why nothing is made of it is left out', () => {
  const change = { code: 'pulse-change', figures: { pulseRise: 22 } };
  const fell = { ...NONE, flags: [flag('fall-on-standing')], why: [flag('rhythm-not-known')], pulseRise: 22 };
  expect(standingBeside(fell, [])).toEqual([...fell.flags, change]);
  const low = { ...NONE, flags: [flag('heart-rate-ratio-low')], pulseRise: 4, heartRateRatio: 0.2 };
  expect(standingBeside(low, [])).toEqual([
    ...low.flags,
    { code: 'pulse-change', figures: { pulseRise: 4 } },
  ]);
  const rose = { ...NONE, flags: [flag('rise-without-fall')], pulseRise: 32 };
  expect(standingBeside(rose, [])).toEqual(rose.flags);
});

test('a fall that lasts is one fall: what was left of it stands with it', () => {
  const fell = { ...NONE, flags: [flag('fall-on-standing', { minutes: 1, systolicFall: 28 })] };
  const lasts = flag('fall-lasts', { minutes: 3, systolicFall: 22 });
  expect(standingBeside(fell, [lasts])).toEqual([
    flag('fall-on-standing', { minutes: 1, systolicFall: 28, lastMinutes: 3, lastSystolicFall: 22 }),
  ]);
  expect(standingBeside(NONE, [lasts])).toEqual([lasts]);
});

test('who felt unwell is said by the alert of it, and by the test where there is none', () => {
  const unwell = { ...NONE, flags: [flag('symptoms-on-standing')] };
  expect(standingBeside(unwell, [], ['unwell-upright'])).toEqual([]);
  expect(standingBeside(unwell, [], ['very-low-pressure'])).toEqual(unwell.flags);
});
