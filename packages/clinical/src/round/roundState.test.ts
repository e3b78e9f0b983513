import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RoundEvent, RoundValue } from './event.js';
import { PREPARATION } from './preparation.js';
import { hasNumber, isAnswered, roundState } from './roundState.js';
import { NOT_DONE_REASONS, ROUND_SIGNS } from './step.js';
import { PLACE, pulse, reading } from './testing.js';

const anyId = fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f');
const anyValue: fc.Arbitrary<RoundValue> = fc.oneof(
  fc
    .record({ id: anyId, perMinute: fc.option(fc.integer({ min: 20, max: 200 })) })
    .map((more) => pulse(more)),
  fc.record({ id: anyId, systolic: fc.integer({ min: 60, max: 240 }) }).map((more) => reading(more)),
  fc.record({ id: anyId, of: fc.constantFrom('temperature', 'pain', 'consciousness') }),
);
const anySign = fc.constantFrom(...ROUND_SIGNS);
const anyEvent: fc.Arbitrary<RoundEvent> = fc.oneof(
  fc.record({ what: fc.constant('prepared' as const), exceptions: fc.subarray([...PREPARATION]) }),
  fc.record({ what: fc.constant('placed' as const), place: fc.constant(PLACE) }),
  fc.record({
    what: fc.constant('estimated' as const),
    estimate: fc.record({ lostMmHg: fc.integer({ min: 60, max: 240 }) }).map((lost) => ({
      ...PLACE,
      ...lost,
      atSeconds: null,
    })),
  }),
  fc.record({ what: fc.constant('taken' as const), value: anyValue }),
  fc.record({ what: fc.constant('taken-out' as const), id: anyId }),
  fc.record({
    what: fc.constant('not-done' as const),
    sign: anySign,
    reason: fc.constantFrom(...NOT_DONE_REASONS),
  }),
  fc.record({ what: fc.constant('after-all' as const), sign: anySign }),
  fc.record({
    what: fc.constant('wanted' as const),
    wanted: fc.constantFrom('pain' as const, 'other-arm' as const, 'lying-and-standing' as const),
  }),
  fc.constant({ what: 'declined' as const }),
  fc.constant({ what: 'reviewed' as const }),
);

describe('any order of events', () => {
  test('loses nothing: every value taken stands, was taken out, or could not be placed', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 40 }), (events) => {
        const state = roundState(events);
        const taken = events.filter((event) => event.what === 'taken').map(({ value }) => value);
        const unplaced = state.unplaced.filter((event) => event.what === 'taken').map(({ value }) => value);
        const found = [...state.values, ...state.takenOut, ...unplaced];
        expect(found).toHaveLength(taken.length);
        expect(new Set(found)).toEqual(new Set(taken));
        const estimates = events.filter((event) => event.what === 'estimated');
        expect(state.estimates).toEqual(estimates.map(({ estimate }) => estimate));
      }),
    );
  });

  test('gives a valid round: an id stands once, and no sign has both a number and a reason for none', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 40 }), (events) => {
        const { values, takenOut, notDone } = roundState(events);
        const ids = [...values, ...takenOut].map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        for (const sign of ROUND_SIGNS) {
          if (notDone[sign] === undefined) continue;
          expect(values.filter((value) => value.of === sign && hasNumber(value))).toEqual([]);
        }
      }),
    );
  });

  test('after which the person declines leaves no sign unanswered (bedside handbook 7.1: a blank is not allowed)', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 30 }), (events) => {
        const state = roundState([...events, { what: 'declined' }]);
        expect(ROUND_SIGNS.filter((sign) => !isAnswered(state, sign))).toEqual([]);
      }),
    );
  });

  test('is reviewed only if nothing changed after the look', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 30 }), anyEvent, (events, last) => {
        const reviewed = roundState([...events, { what: 'reviewed' }]);
        expect(reviewed.isReviewed).toBe(true);
        const next = roundState([...events, { what: 'reviewed' }, last]);
        const isUnchanged = last.what === 'reviewed' || next.unplaced.length > reviewed.unplaced.length;
        expect(next.isReviewed).toBe(isUnchanged);
      }),
    );
  });
});

describe('one thing after another', () => {
  test('a value takes back that a sign was not done; a broken-off count does not', () => {
    const notDone: RoundEvent = { what: 'not-done', sign: 'pulse', reason: 'asleep' };
    const broken = roundState([notDone, { what: 'taken', value: pulse({ perMinute: null }) }]);
    expect(broken.notDone).toEqual({ pulse: 'asleep' });
    expect(isAnswered(broken, 'pulse')).toBe(true);
    const counted = roundState([notDone, { what: 'taken', value: pulse({ perMinute: 72 }) }]);
    expect(counted.notDone).toEqual({});
  });

  test('a sign not done after all gives up its values, which can still be read', () => {
    const value = reading({});
    const state = roundState([
      { what: 'taken', value },
      { what: 'not-done', sign: 'pressure', reason: 'arm-barred' },
    ]);
    expect(state).toMatchObject({ values: [], takenOut: [value], notDone: { pressure: 'arm-barred' } });
    const again = roundState([
      { what: 'not-done', sign: 'pressure', reason: 'declined' },
      { what: 'after-all', sign: 'pressure' },
    ]);
    expect(isAnswered(again, 'pressure')).toBe(false);
  });
});
