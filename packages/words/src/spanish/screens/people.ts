import type { people as english } from '../../english/screens/people.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';
import { ROUNDS } from './nouns.js';

const HOUR = 60;
const DAY = 1440;

/** So many minutes, in hours and days where they are many. */
export function span(minutes: number, say: Say): string {
  if (minutes < HOUR) return say.counted(minutes, { one: 'minuto', other: 'minutos' });
  if (minutes < DAY) return say.counted(Math.floor(minutes / HOUR), { one: 'hora', other: 'horas' });
  return say.counted(Math.floor(minutes / DAY), { one: 'día', other: 'días' });
}

/** As in `english/screens/people`. */
export const people: Reworded<typeof english> = {
  title: 'Personas',
  actNow: (f, say) => `Actúe ya: ${say.counted(f.alerts, { one: 'alerta', other: 'alertas' })} sin cerrar`,
  actNowOf: (f, say) =>
    f.others === 0
      ? `Actúe ya: ${f.text}, sin cerrar`
      : `Actúe ya: ${f.text} y ${say.counted(f.others, { one: 'alerta más', other: 'alertas más' })}, sin cerrar`,
  begunAlarm: (f, say) =>
    `Actúe ya: ${f.numbers === '' ? '' : `${f.numbers}, `}${f.text}${f.others === 0 ? '' : ` y ${say.counted(f.others, { one: 'alerta más', other: 'alertas más' })}`}; tomada, sin firmar`,
  begunSevere: (f) => `${f.numbers}, ${f.text}; tomada, sin firmar`,
  begunUnasked: 'sin responder lo que pregunta',
  recheckBy: (f) => `Mire de nuevo la presión antes de ${f.text}`,
  recheckFrom: (f) => `Mire de nuevo la presión desde ${f.text}`,
  recheckLate: (f) => `Con retraso: había que mirar de nuevo la presión antes de ${f.text}`,
  toCountersign: (f, say) => `${say.counted(f.rounds, ROUNDS)} por refrendar`,
  toCountersignTitle: 'Por refrendar',
  toCountersignLead: 'Abra una ronda para ver cómo se tomó, y refrendarla o no.',
  toCountersignNone: 'Ninguna ronda de estudiante espera a quien supervise.',
  cannotRing: 'Una página cerrada no puede avisar: mire aquí por su cuenta.',
  dueTitle: 'Para actuar y mirar de nuevo',
  dueAhead: (f, say) => `dentro de ${span(f.minutes, say)}, desde ${f.text}`,
  dueNow: (f, say) =>
    `ahora: ${f.minutes === 1 ? 'queda' : 'quedan'} ${span(f.minutes, say)}, hasta ${f.text}`,
  dueSince: (f, say) =>
    f.minutes === 0 ? `toca desde ${f.text}` : `toca desde ${f.text} (${span(f.minutes, say)})`,
  dueLate: (f, say) =>
    f.minutes === 0 ? `con retraso desde ${f.text}` : `con retraso desde ${f.text} (${span(f.minutes, say)})`,
  dueTake: 'Tomarla ahora',
  dueGoOn: 'Seguir con ella',
  dueSaid: (f) => `Para mirar de nuevo ahora: ${f.names}`,
  add: 'Añadir una persona',
  none: 'Todavía no hay nadie aquí.',
  noneHint: 'Añada a la primera persona, y un minuto después se puede registrar un pulso.',
  whoMeasures: '¿Quién mide?',
  measuring: 'Mide:',
  change: 'Cambiar quién mide',
  choose: 'Elija un nombre',
  setsLost: (f) =>
    `Escrito y sin firmar: ${f.text}. Quien mida después empieza con el teclado en blanco: firme antes, o se pierde.`,
  setsWait: (f) =>
    `Escrito y sin firmar: ${f.text}. Espera aquí solo a usted, y nadie más lo ve: firme antes, o vuelva después.`,
  letWait: 'Dejarlo en espera',
  loseSets: 'Cambiar, y perderlo',
  roundsStay: (f, say) =>
    `Sin firmar: ${say.counted(f.rounds, { one: 'ronda empezada', other: 'rondas empezadas' })}${f.names === '' ? '' : ` (${f.names})`}. Lo medido sigue siendo de ${f.text}: nadie más continúa ni firma.`,
  somebodyElse: 'otra persona',
  othersRound: (f) =>
    `Empezada por ${f.name}, ${f.text}, y sin firmar. Lo que midió una persona no lo continúa ni lo firma otra.`,
  othersRoundWays: (f) =>
    `Para seguir con ella o firmarla se elige abajo a ${f.text}. Para medir de nuevo con otro nombre, antes se firma o se abandona.`,
  claim: (f) => `Todo lo midió ${f.text} …`,
  claimSure: (f) =>
    `¿Todo lo de esta ronda lo midió ${f.name}, y el nombre ${f.text} en el dispositivo era erróneo? Lo que midió otra persona no se firma como propio; lo de quien aprende sigue siendo preliminar.`,
  claimNow: 'Sí, el nombre era erróneo',
  giveUpRound: 'Abandonar esta ronda …',
  giveUpRoundSure: (f) => `Entonces se pierde todo lo que tomó ${f.text} en esta ronda.`,
  giveUpRoundNow: 'Abandonarla',
  addAgent: 'Añadir un nombre',
  agentName: 'Nombre de quien mide',
  agentHint: 'Se guarda en este dispositivo hasta que elija otro.',
  keepName: 'Guardar este nombre',
  born: (f) => `nac. ${f.text}`,
  number: (f) => `n.º ${f.text}`,
  erased: 'Identidad borrada',
  meanOf: (f, say) => `media de ${say.short(f.readings)}`,
  nothingYet: 'ninguna ronda registrada todavía',
  onlyAway: (f) => `lecturas de fuera hasta el ${f.text}; aún ninguna ronda`,
  diaryBegun: 'diario empezado, sin firmar',
  mayBeOld: 'Esta lista puede ser antigua: está como se recibió la última vez.',
  keptOnly:
    'Solo figuran las personas con una ronda o lecturas empezadas o en espera en este dispositivo. Lo que se ve de ellas puede ser antiguo.',
  noneKept:
    'En este dispositivo no se guarda ninguna lista de personas. Con quien ya se empezó antes, una ronda o lecturas, se puede seguir sin el servidor.',
  draft: 'ronda empezada, sin firmar',
  waiting: 'firmada, a la espera del servidor',
  contested: 'enmendado dos veces, las enmiendas no concuerdan',
  byHand: 'fijado a mano',
  preliminary: 'preliminar, sin refrendar',
  find: 'Buscar a una persona',
  noneFound: 'Nadie de aquí coincide con eso.',
};
