import {
  bladderFor,
  type Circumstances,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { debrief } from './debrief.js';
import { demonstrate } from './demonstrate.js';
import { resultRows } from './resultRows.js';

const quiet = scenarioOf('quiet-morning') as Scenario;
const GOOD_CUFF = { ...SOUND_INSTRUMENT, bladder: bladderFor(quiet.armCm) };

function measured(some: Partial<Circumstances>, seed: number) {
  const found = debrief(demonstrate(GOOD_OBSERVER, quiet, seed, { ...PROPER, ...some }, GOOD_CUFF));
  return { found, rows: resultRows(found) };
}

// Assessment handbook 1: the observer apart from the technique. Physiology handbook 12: nicotine +2.8 to +25 systolic, legs
// crossed +2.5 to +14.9.
describe('a good hand and ear with somebody who had smoked and sits with crossed legs', () => {
  const all = [1, 2, 3, 4, 5, 6].map((seed) => measured({ hadNicotine: true, hasLegsCrossed: true }, seed));

  test('reads what was to be heard as they were, to a mark', () => {
    for (const { rows } of all)
      for (const { parts } of rows) expect(Math.abs(parts?.ofReading ?? 99)).toBeLessThanOrEqual(2);
  });

  test('and the whole of what they are too high by is preparing', () => {
    for (const { rows } of all) {
      const [systolic] = rows;
      expect(systolic?.parts?.ofPreparing).toBeGreaterThanOrEqual(5);
      expect(systolic?.parts?.ofPreparing).toBeLessThanOrEqual(40);
      for (const { error, parts } of rows)
        expect((parts?.ofReading ?? 99) + (parts?.ofPreparing ?? 99)).toBe(error);
    }
  });
});

test('a hand that was too fast is none of preparing; nothing is parted where everything was prepared', () => {
  const hand = { ...GOOD_OBSERVER, hand: { ...GOOD_OBSERVER.hand, rateMmHgPerSecond: 9 } };
  const fast = debrief(demonstrate(hand, quiet, 1, PROPER, GOOD_CUFF));
  expect(fast.asTheyWere).toBeNull();
  const talking = debrief(demonstrate(hand, quiet, 1, { ...PROPER, isTalking: true }, GOOD_CUFF));
  const pressed = debrief(demonstrate(hand, quiet, 1, { ...PROPER, chestPiece: 'pressed-hard' }, GOOD_CUFF));
  expect(talking.asTheyWere).not.toBeNull();
  expect(pressed.asTheyWere).toBeNull();
});

test('in a loud place the first sound that was to be heard as it was came later, and that is nobody’s hand or ear', () => {
  const loud: Scenario = { ...quiet, noiseDbA: 100 };
  const found = debrief(demonstrate(GOOD_OBSERVER, loud, 1, PROPER, GOOD_CUFF));
  expect(found.asTheyWere?.systolic).toBeLessThan(found.had.systolic?.mmHg ?? 0);
});
