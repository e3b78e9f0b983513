import type { rest as english } from '../../english/screens/rest.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';
import { MINUTES, SECONDS } from './nouns.js';

/** As in `english/screens/rest`. */
export const rest: Reworded<typeof english> = {
  start: (f, say) => `Se sienta ahora: empezar ${long(f.seconds, say)} de reposo`,
  restsNow: 'El reposo ha empezado. Entretanto: las preguntas, el brazo, el pulso y las respiraciones.',
  before: 'Ya había reposado',
  notBegun: 'No se empezó ningún reposo.',
  notKnown: 'No se sabe si reposó antes.',
  wasBefore: 'Había reposado antes, no por este reloj.',
  left: (f, say) =>
    `En reposo: ${f.minutes === 1 ? 'queda' : 'quedan'} más o menos ${say.counted(f.minutes, MINUTES)}`,
  lastMinute: 'En reposo: queda menos de un minuto',
  says: 'La persona reposa con tranquilidad. El manguito se infla cuando acabe el reposo.',
  meanwhile: 'Entretanto',
  back: 'Volver a la presión',
  again: 'Empezarlo de nuevo',
  skip: 'No esperar …',
  why: '¿Por qué no esperar?',
  skipNow: 'No esperar, por este motivo',
  urgent: 'es urgente',
  'already-rested': 'ya había reposado antes',
  declined: 'la persona no quiere esperar',
  'no-time': 'no hay tiempo',
  other: 'Otro motivo, en pocas palabras',
  whole: (f, say) => `Reposó ${long(f.neededSeconds, say)}, por el reloj.`,
  short: (f, say) => `Reposó ${long(f.seconds, say)} de ${long(f.neededSeconds, say)}.`,
  skipped: (f, say) =>
    `No se esperó al reposo tras ${long(f.seconds, say)} de ${long(f.neededSeconds, say)}: ${f.text}.`,
};

/** As it is said: whole minutes, seconds, or both. */
function long(seconds: number, say: Say): string {
  const minutes = Math.floor(seconds / 60);
  const rest = Math.floor(seconds) % 60;
  if (minutes === 0) return say.counted(rest, SECONDS);
  const whole = say.counted(minutes, MINUTES);
  return rest === 0 ? whole : `${whole} y ${say.counted(rest, SECONDS)}`;
}
