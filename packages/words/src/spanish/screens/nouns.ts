/** As in `english/screens/nouns`. */
export const BEATS = { one: 'latido', other: 'latidos' };
export const BREATHS = { one: 'respiración', other: 'respiraciones' };
export const TAPS = { one: 'toque', other: 'toques' };
export const SECONDS = { one: 'segundo', other: 'segundos' };
export const ROUNDS = { one: 'ronda', other: 'rondas' };
export const EXERCISES = { one: 'ejercicio', other: 'ejercicios' };
export const ENTRIES = { one: 'entrada', other: 'entradas' };
export const WEEKS = { one: 'semana', other: 'semanas' };
export const MINUTES = { one: 'minuto', other: 'minutos' };
