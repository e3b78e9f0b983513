/** Counted nouns that several screens share with the command line. */
export const BEATS = { one: 'beat', other: 'beats' };
export const BREATHS = { one: 'breath', other: 'breaths' };
export const TAPS = { one: 'tap', other: 'taps' };
export const SECONDS = { one: 'second', other: 'seconds' };
export const ROUNDS = { one: 'round', other: 'rounds' };
export const EXERCISES = { one: 'exercise', other: 'exercises' };
export const ENTRIES = { one: 'entry', other: 'entries' };
export const WEEKS = { one: 'week', other: 'weeks' };
export const MINUTES = { one: 'minute', other: 'minutes' };
