import type { Estimate, RoundEvent, RoundValue, Wanted } from './event.js';
import type { Preparation } from './preparation.js';
import type { ReadingPlace } from './roundReading.js';
import { type NotDoneReason, ROUND_SIGNS, type RoundSign } from './step.js';

/**
 * Where a round stands. Nothing that happened is lost: a value stands, or was taken out, and what could not be
 * applied (an id that is there already, or is not there) is in `unplaced`.
 */
export type RoundState = {
  /** What was not as it should be; null until somebody looked. */
  readonly exceptions: readonly Preparation[] | null;
  /** Where the cuff was last put. */
  readonly place: ReadingPlace | null;
  readonly estimates: readonly Estimate[];
  /** What was asked for beyond the protocol, each once. */
  readonly wanted: readonly Wanted[];
  /** In the order in which they came. */
  readonly values: readonly RoundValue[];
  readonly takenOut: readonly RoundValue[];
  readonly notDone: Readonly<Partial<Record<RoundSign, NotDoneReason>>>;
  /** Whether all of it was looked through since the last change. */
  readonly isReviewed: boolean;
  readonly unplaced: readonly RoundEvent[];
};

export const EMPTY_ROUND: RoundState = {
  exceptions: null,
  place: null,
  estimates: [],
  wanted: [],
  values: [],
  takenOut: [],
  notDone: {},
  isReviewed: false,
  unplaced: [],
};

/** Whether a value says something: a rate that was broken off does not. */
export function hasNumber(value: RoundValue): boolean {
  return !('perMinute' in value) || value.perMinute !== null;
}

/** The values of one sign that stand. */
export function valuesOf(state: RoundState, sign: RoundSign): readonly RoundValue[] {
  return state.values.filter(({ of }) => of === sign);
}

/** Whether a sign is answered: with a number, or with a reason for having none. */
export function isAnswered(state: RoundState, sign: RoundSign): boolean {
  return state.notDone[sign] !== undefined || valuesOf(state, sign).some(hasNumber);
}

/**
 * The state after some events, in the order given. Any order is valid.
 *
 * Errors: none; what cannot be applied is kept in `unplaced`.
 */
export function roundState(events: readonly RoundEvent[]): RoundState {
  return events.reduce(after, EMPTY_ROUND);
}

/** The state after one more event. Whatever changes the round asks for another look before it is signed. */
export function after(state: RoundState, event: RoundEvent): RoundState {
  const changed: RoundState = { ...state, isReviewed: false };
  switch (event.what) {
    case 'prepared':
      return { ...changed, exceptions: event.exceptions };
    case 'placed':
      return { ...changed, place: event.place };
    case 'estimated':
      return { ...changed, estimates: [...state.estimates, event.estimate] };
    case 'taken':
      return taken(state, event);
    case 'wanted':
      return { ...changed, wanted: [...new Set([...state.wanted, event.wanted])] };
    case 'taken-out': {
      const value = state.values.find(({ id }) => id === event.id);
      if (value === undefined) return unplaced(state, event);
      const values = state.values.filter((one) => one !== value);
      return { ...changed, values, takenOut: [...state.takenOut, value] };
    }
    case 'not-done': {
      const isGivenUp = (value: RoundValue) => value.of === event.sign && hasNumber(value);
      return {
        ...changed,
        values: state.values.filter((value) => !isGivenUp(value)),
        takenOut: [...state.takenOut, ...state.values.filter(isGivenUp)],
        notDone: { ...state.notDone, [event.sign]: event.reason },
      };
    }
    case 'after-all':
      return state.notDone[event.sign] === undefined
        ? unplaced(state, event)
        : { ...changed, notDone: without(state.notDone, event.sign) };
    case 'declined': {
      const open = ROUND_SIGNS.filter((sign) => !isAnswered(state, sign));
      const declined = Object.fromEntries(open.map((sign) => [sign, 'declined' as const]));
      return { ...changed, notDone: { ...state.notDone, ...declined } };
    }
    case 'reviewed':
      return { ...state, isReviewed: true };
  }
}

function taken(state: RoundState, event: Extract<RoundEvent, { what: 'taken' }>): RoundState {
  const { value } = event;
  if ([...state.values, ...state.takenOut].some(({ id }) => id === value.id)) return unplaced(state, event);
  const notDone = hasNumber(value) ? without(state.notDone, value.of) : state.notDone;
  return { ...state, values: [...state.values, value], notDone, isReviewed: false };
}

function unplaced(state: RoundState, event: RoundEvent): RoundState {
  return { ...state, unplaced: [...state.unplaced, event] };
}

function without(notDone: RoundState['notDone'], sign: RoundSign): RoundState['notDone'] {
  const { [sign]: _answered, ...others } = notDone;
  return others;
}
