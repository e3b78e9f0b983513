import type { classBook as english } from '../../english/screens/class.js';
import type { Reworded } from '../../reworded.js';
import { ROUNDS } from './nouns.js';

const PEOPLE = { one: 'persona', other: 'personas' };

/** As in `english/screens/class`. */
export const classBook: Reworded<typeof english> = {
  title: 'Clase',
  lead: 'Aquí los estudiantes se miden unos a otros, con seudónimos y en ningún registro. Lo medido se borra cuando termina la sesión.',
  open: 'Sesiones abiertas',
  none: 'No hay ninguna sesión abierta.',
  since: (f) => `desde ${f.text}`,
  sinceBy: (f) => `desde ${f.text}, empezada por ${f.who}`,
  until: (f) => `hasta ${f.text}`,
  holds: (f, say) => `${say.counted(f.persons, PEOPLE)}, ${say.counted(f.rounds, ROUNDS)}`,
  overdue: (f) => `Pasada de hora: termínela ya. Si nadie lo hace, todo lo suyo se borra solo el ${f.text}.`,
  begin: 'Empezar una sesión',
  name: '¿Cómo se llama?',
  nameHint: 'Un grupo o un día. Sin nombres de personas.',
  endsBy: 'Termina a más tardar',
  endsByHint: 'Un día como máximo. Se termina a mano, también antes.',
  beginNow: 'Empezar',
  nameMissing: 'Escriba cómo se llama la sesión.',
  nameLong: 'Como máximo 200 caracteres.',
  endsByWrong: 'Elija una hora que esté por venir, dentro de 24 horas.',
  teacherFirst: 'Elija quién dirige la clase, arriba en «¿Quién mide?».',
  noSuchSession: 'No hay abierta ninguna sesión así. De una terminada ya no queda nada aquí.',
  people: 'Personas de esta sesión',
  nobody: 'Todavía no se mide a nadie en ella.',
  add: 'Añadir a alguien que se deja medir',
  pseudonymHint: 'Nunca un nombre. Tome el ave, o cualquier palabra que se pueda llamar en un aula.',
  age: 'Edad en años, si quiere',
  ageHint: 'Algunos límites dependen de ella. En blanco, no se sabe.',
  addNow: 'Añadir con este seudónimo',
  pseudonymMissing: 'Escriba un seudónimo.',
  pseudonymLong: 'Como máximo 40 caracteres.',
  pseudonymTaken: 'Alguien de esta sesión tiene ese seudónimo. Elija otro.',
  ageWrong: 'Años enteros, de 0 a 125, o nada.',
  toSession: 'La sesión',
  noRounds: 'Todavía ninguna ronda.',
  nothing: 'No se guarda nada de esta persona.',
  withdraw: 'Sacar a esta persona …',
  withdrawSure: (f) =>
    `¿Borrar todo lo de ${f.text}? No necesita motivo, nada dice que se hizo y no se puede deshacer.`,
  withdrawNow: 'Borrar todo lo suyo',
  end: 'Terminar la sesión …',
  endTitle: 'Terminar esta sesión',
  endWhat:
    'Todo lo suyo se borra para siempre: personas, seudónimos y cada número. Ni siquiera queda que hubo una sesión. No se puede deshacer.',
  endKeep: 'Conserve los datos de alguien solo si ambos están de acuerdo, cada uno por voluntad propia:',
  teacherAgrees: 'el docente está de acuerdo',
  subjectAgrees: 'esta persona está de acuerdo',
  oneAgrees: 'Solo uno de los dos está de acuerdo, así que se borra.',
  unsent: (f, say) =>
    `${say.counted(f.rounds, ROUNDS)} en este dispositivo, con firma y sin guardar aún por el servidor: también se ${f.rounds === 1 ? 'borra' : 'borran'}.`,
  endNow: 'Borrarlo todo y terminar',
  endNowKeeping: (f, say) => `Conservar ${say.counted(f.persons, PEOPLE)}, borrar el resto y terminar`,
  ended: (f, say) =>
    `La sesión ha terminado. ${f.gone === 0 ? 'No había datos de nadie que borrar' : `Se borró todo lo de ${say.counted(f.gone, PEOPLE)}`}${f.kept === 0 ? '' : `; lo de ${say.counted(f.kept, PEOPLE)} se conservó por acuerdo`}.`,
  endedBefore:
    'La sesión ya se había terminado. Lo que este dispositivo aún tenía de ella se ha borrado; lo conservado por acuerdo está abajo.',
  kept: 'Conservado por acuerdo',
  keptSays: 'De sesiones terminadas. Quien sea puede retirarlo en cualquier momento.',
  birds:
    'Garza, Chorlito, Lúgano, Correlimos, Zarapito, Avoceta, Avetoro, Mirlo acuático, Fulmar, Alcatraz, Aguja, Somormujo, Avefría, Trepador, Águila pescadora, Petrel, Bisbita, Colirrojo, Alcaudón, Alondra, Agachadiza, Vuelvepiedras, Lavandera, Collalba, Zarapito trinador, Escribano, Camachuelo, Piquituerto, Acentor, Zorzal real, Azor, Martín pescador, Polla de agua, Ostrero, Frailecillo, Andarríos, Agateador, Ampelis, Gaviota tridáctila, Reyezuelo',
};
