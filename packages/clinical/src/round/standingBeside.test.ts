import { expect, test } from 'vitest';
import { standingBeside } from './standingBeside.js';

const flag = (code: string) => ({ code, figures: {} });

test('that nothing was measured at the third minute is said once, by the answer that it leaves open or beside it', () => {
  const missed = [flag('third-minute-missed')];
  const open = { flags: [flag('initial-fall-not-seen')], why: [flag('third-minute-not-measured')] };
  expect(standingBeside(open, missed)).toEqual([...open.flags, ...open.why]);
  const fell = { flags: [flag('fall-on-standing')], why: [] };
  expect(standingBeside(fell, missed)).toEqual([...fell.flags, ...missed]);
  expect(standingBeside(fell, [])).toEqual(fell.flags);
});
