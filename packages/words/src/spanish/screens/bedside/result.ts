import type { result as english } from '../../../english/screens/bedside/result.js';
import type { Reworded } from '../../../reworded.js';

/** What the bedside says of it; the rest is in `../result.ts` and comes later. */
export const result: Reworded<typeof english> = {
  actNow: 'Actúe ya',
  actNowSays:
    'No espere a esta página. Después de firmar, diga en el registro a quién avisó y qué le respondieron.',
  ask: 'Pregunte ahora',
  askSays: '¿Tiene la persona algo de esto, de nueva aparición?',
  askPregnancy: '¿La persona está embarazada, o dio a luz en las últimas seis semanas?',
  notPregnant: 'No',
  isPregnant: 'Sí',
  saidPregnant: 'Embarazo, o parto en las últimas seis semanas: anótelo también entre los datos.',
  noneOfThese: 'Nada de esto',
  someOfThese: 'Guardar estos',
  asked: 'Preguntado: ningún signo de emergencia.',
  askedSome: (f) => `Preguntado: ${f.text}`,
  askAgain: 'Preguntar de nuevo',
};
