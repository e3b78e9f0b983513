import type { diary as english } from '../../english/screens/diary.js';
import type { Reworded } from '../../reworded.js';

const DAYS = { one: 'día', other: 'días' };
const READINGS = { one: 'lectura', other: 'lecturas' };
const READINGS_USED = { one: 'lectura usada', other: 'lecturas usadas' };

/** As in `english/screens/diary`. */
export const diary: Reworded<typeof english> = {
  section: 'Fuera del centro',
  none: 'Todavía no hay lecturas de casa ni de 24 horas.',
  begun: (f, say) =>
    f.readings === 0
      ? 'Empezado en este aparato, sin firmar'
      : `Empezado en este aparato, sin firmar: ${say.counted(f.readings, READINGS)}`,
  enter: 'Anotar o traer lecturas',
  home: 'En casa',
  ambulatory: 'Durante 24 horas',
  days: (f) => `del ${f.from} al ${f.until}`,
  mean: (f) => `media ${f.systolic}/${f.diastolic} mmHg`,
  noMean: 'sin media',
  onDays: (f, say) => `en ${say.counted(f.days, DAYS)}`,
  used: (f, say) => say.counted(f.used, READINGS_USED),
  leftOut: (f, say) => `${say.short(f.readings)} fuera`,
  refused: (f, say) =>
    `${say.counted(f.rows, { one: 'fila no se pudo leer', other: 'filas no se pudieron leer' })}`,
  pattern: (f) => `compatible con ${f.text}`,
  tooFew: 'demasiado pocas para las reglas',
  byRules: (f) => `según ${f.text}`,
  byHand: 'en parte decidido a mano',
  inError: 'Anotado por error',
  open: (f) => `Abrir: ${f.text}`,
  outTitle: 'Diarios entregados',
  out: (f, say) => `${say.counted(f.days, DAYS)} desde el ${f.from}`,
  dueOn: (f) => `se espera de vuelta el ${f.text}`,
  dueToday: 'por devolver hoy',
  dueSince: (f) => `se espera de vuelta desde el ${f.text}`,
  print: 'Ver e imprimir',
  readings: 'Anotar sus lecturas',
  notComing: 'No va a volver',
  reason: '¿Por qué no?',
  reasonMissing: 'Diga por qué en pocas palabras.',
  endNow: 'Guardar que no va a volver',
  handOut: 'Entregar un diario',
  handTitle: 'Entregar un diario',
  handLead: 'Los días y las lecturas son los que pide el protocolo del centro.',
  daysAsked: 'Días',
  readingsAsked: 'Lecturas cada mañana y cada noche',
  numberWrong: (f, say) => `Un número entero de ${say.short(f.least)} a ${say.short(f.most)}.`,
  language: 'Idioma del diario',
  from: 'Primer día',
  dueBack: 'Se espera de vuelta el',
  dayMissing: 'Indique un día.',
  dueWrong: 'No puede esperarse de vuelta antes de empezar.',
  handNow: 'Guardar y ver la página',
  pageTitle: 'Diario para imprimir',
  printNow: 'Imprimir el diario',
  noSuchDiary: 'No existe ese diario.',
};
