import type { equipment as english } from '../../../english/screens/bedside/equipment.js';
import type { Reworded } from '../../../reworded.js';

/** What the bedside says of it; the rest is in `../equipment.ts` and comes later. */
export const equipment: Reworded<typeof english> = {
  link: 'Material',
  good: (f) => `En orden; siguiente: ${f.due}, hasta el ${f.day}`,
  due: (f) => `Toca comprobar: ${f.text}`,
  failed: (f) => `Fuera de uso: falló ${f.text}`,
  checkGood: (f) => `bien el ${f.last}, vale hasta el ${f.due}`,
  checkOverdue: (f) => `con retraso desde el ${f.due}, bien por última vez el ${f.last}`,
  checkDisturbed: (f) => `toca de nuevo: se cayó después de estar bien el ${f.last}`,
  checkNever: 'todavía sin hacer',
  checkFailed: 'falló, y desde entonces no estuvo bien',
  endedOn: (f) => `ya no está aquí desde el ${f.text}`,
  readHigh: (f, say) => `${say.short(f.byMmHg, 1)} mmHg de más en ${say.short(f.atMmHg)}`,
  readLow: (f, say) => `${say.short(f.byMmHg, 1)} mmHg de menos en ${say.short(f.atMmHg)}`,
  readRight: 'sin diferencia',
  loses: (f, say) => `pierde ${say.short(f.perMinute, 1)} mmHg por minuto`,
  resultGood: 'Bien',
  resultFailed: 'Falló',
  resultIncomplete: 'Se leyó demasiado poco para darlo por bueno',
  resultNone: 'Toca repetir todas las comprobaciones',
  which: 'Manómetro',
  notSaid: 'sin indicar',
  choiceFailed: (f) => `${f.name}, fuera de uso`,
  choiceDue: (f) => `${f.name}, revisión pendiente`,
  whichIs: (f) => `manómetro: ${f.text}`,
  beware: (f) => `${f.name} — ${f.text}`,
  bewareFailed: 'Tome otro manómetro: lo que marca este puede ser erróneo.',
  bewareDue: 'Se puede usar, según su protocolo local; la lectura conserva qué manómetro fue.',
};
