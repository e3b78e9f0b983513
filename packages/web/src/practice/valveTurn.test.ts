import { PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { between, handOf, pressed, STEP_DEGREES, turned, WIDE_DEGREES, WIDEST_TURN } from './valveTurn.js';
import { Visit } from './visit.js';

/** mmHg/s over five seconds after a cuff at about 150 is opened so far. */
function fallAt(degrees: number): number {
  const visit = new Visit({
    scenario: scenarioOf('quiet-morning') as Scenario,
    seed: 5,
    circumstances: PROPER,
    instrument: SOUND_INSTRUMENT,
    actions: [{ tick: 0, kind: 'steady-rise', mmHgPerSecond: 30, toMmHg: 150 }],
    tick: 0,
  });
  visit.moveTo(6);
  visit.act({ kind: 'valve', degrees }, 6);
  visit.moveTo(7);
  const before = visit.snapshot().cuffMmHg;
  visit.moveTo(12);
  return (before - visit.snapshot().cuffMmHg) / 5;
}

// Decision of this project: a finger on a screen feels no screw take hold, so the first degree it turns is one that lets air out.
test('the first degree that is turned lets air out, a few notches let down as it is taught', () => {
  expect(fallAt(0)).toBe(0);
  expect(fallAt(turned(0, 1))).toBeGreaterThan(0.25);
  // 2 to 3 mmHg a second (bedside handbook 3.4), reached within ten presses of a key.
  const rates = Array.from({ length: 10 }, (_, at) => fallAt(turned(0, (at + 1) * STEP_DEGREES)));
  expect(rates.some((rate) => rate >= 2 && rate <= 3)).toBe(true);
});

test('turned back as far as it was opened it is shut, and further than wide it does not go', () => {
  expect(turned(turned(0, 12), -12)).toBe(0);
  expect(turned(turned(0, 12), -30)).toBe(0);
  expect(turned(0, -5)).toBe(0);
  expect(turned(100, 500)).toBe(WIDE_DEGREES);
  expect(handOf(WIDE_DEGREES)).toBe(WIDEST_TURN);
  // A visit of an earlier program may stand where the screw is loose.
  expect(handOf(11)).toBe(0);
  expect(handOf(turned(11, 3))).toBe(3);
});

// After all air was let out the screw stands wide open: a hand that is to pump again shuts it in one go.
test('one press shuts a screw that stands wide open; of any other it is one step', () => {
  expect(pressed(WIDE_DEGREES, -STEP_DEGREES)).toBe(0);
  expect(pressed(turned(0, 30), -STEP_DEGREES)).toBe(turned(0, 27));
  expect(pressed(WIDE_DEGREES, STEP_DEGREES)).toBe(WIDE_DEGREES);
});

test('a hand goes the shorter way round', () => {
  expect(between(170, -170)).toBe(20);
  expect(between(-170, 170)).toBe(-20);
  expect(between(0, 1)).toBe(1);
});
