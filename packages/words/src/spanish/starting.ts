import type { starting as english } from '../english/starting.js';
import type { Reworded } from '../reworded.js';

/** As in `english/starting`. */
export const starting: Reworded<typeof english> = {
  'account-needed': (n) =>
    `Esta es la cuenta root del equipo, y el registro de una consulta nunca pertenece a root: diga de quién es con ${n.type ?? '--account NOMBRE'}, o defina ${n.variable ?? 'EVENFALL_ACCOUNT'}. La demostración no lo necesita (--demo).`,
  'account-unknown': (n) => `No hay ninguna cuenta llamada ${n.got} en este equipo.`,
  'account-is-root': (n) =>
    `El registro de una consulta nunca pertenece a ${n.got}: indique una cuenta corriente.`,
  'account-other': (n) =>
    `Solo root puede actuar por otra cuenta: esta es ${n.expected}, y se indicó ${n.got}.`,
  'folder-unreachable': (n) =>
    `La cuenta ${n.account} no puede entrar en ${n.blocked}: permítaselo, o indique otra carpeta con --data.`,
  'lan-owner-needed': () =>
    'Más allá de este equipo Evenfall no se abre a nadie antes de que haya una cuenta de titular: créela con evenfall account add --name "..." --sign-in NOMBRE --role owner y vuelva a empezar.',
  'lan-no-folder': () =>
    'Con DATABASE_URL no hay carpeta para un certificado propio de Evenfall: indique uno con --certificate y --key.',
  'lan-no-address': () =>
    'Este equipo no tiene dirección en ninguna red: conéctelo, o indique una de sus direcciones con --host.',
  'host-unknown': (n) => `Este equipo no tiene la dirección ${n.got}: omita --host, o indique una que tenga.`,
  'certificate-unreadable': (n) => `El certificado o su clave no se pueden usar: ${n.reason}`,
  'folder-owner': (n) => `La carpeta pertenece a otra cuenta (${n.owner ?? n.ownerId}): solo esa la abre.`,
  'folder-not-ours': (n) =>
    `La carpeta ${n.got ?? ''} no está vacía y no contiene ningún registro de Evenfall: indique otra.`,
  'no-record': (n) =>
    `No hay ningún registro de Evenfall en ${n.folder ?? n.got}: revise el nombre de la carpeta (--data), o cree uno allí: evenfall serve --data ${n.folder ?? n.got}. Aún no se creó nada.`,
  'folder-other-purpose': () =>
    'Las personas inventadas y una consulta real nunca comparten carpeta: omita --demo, o indique otra carpeta.',
  'folder-damaged': (n) =>
    `Falta una parte del registro en ${n.got ?? 'la carpeta'}: restaure la copia de seguridad más reciente en una carpeta nueva.`,
  'folder-in-use': (n) =>
    n.address === undefined
      ? `Otro proceso (${n.pid ?? 'desconocido'}) tiene esta carpeta.`
      : `Evenfall ya está en marcha: ${n.address} (proceso ${n.pid}).`,
  'folder-other-major': (n) =>
    `El registro lo escribió PostgreSQL ${n.folderMajor}, y este es ${n.binariesMajor}: haga una copia con el programa antiguo (EVENFALL_PG_BIN) y restáurela en una carpeta nueva.`,
  'folder-unwritable': (n) => `No se puede escribir en la carpeta ${n.got ?? ''} (${n.reason}).`,
  'socket-folder-taken': (n) =>
    `La carpeta para sockets ${n.got ?? ''} existe y pertenece a otra cuenta: elimínela.`,
  'binaries-missing': () =>
    'Evenfall no trae PostgreSQL para este tipo de equipo: indique uno con EVENFALL_PG_BIN, o un servidor con DATABASE_URL.',
  'binaries-unreachable': (n) =>
    `La cuenta ${n.account} no puede ejecutar PostgreSQL desde ${n.got ?? 'su carpeta'}.`,
  'binaries-unusable': (n) => `PostgreSQL no arranca aquí: ${n.log ?? n.reason ?? n.got}`,
  'binaries-too-old': (n) => `Se necesita PostgreSQL ${n.oldestMajor} o más nuevo: ${n.got}.`,
  'create-failed': (n) => `PostgreSQL no pudo crear su carpeta: ${n.log}`,
  'start-failed': (n) => `PostgreSQL se detuvo al arrancar: ${n.log}`,
  'start-too-slow': (n) => `PostgreSQL no respondió a tiempo: ${n.log}`,
  'server-unreachable': (n) => `El PostgreSQL de DATABASE_URL no responde (${n.reason}).`,
  'server-refused': (n) => `El PostgreSQL de DATABASE_URL rechaza esta cuenta o base de datos (${n.reason}).`,
  'server-too-old': (n) =>
    `El PostgreSQL de DATABASE_URL es demasiado antiguo: se necesita ${n.expected} y este es ${n.got}.`,
  'server-not-utf8': (n) => `La base de datos de DATABASE_URL debe ser UTF8; es ${n.got}.`,
  'pages-missing': () =>
    'No se construyó la aplicación del navegador: npm start la construye (o npm run build).',
  'port-in-use': (n) => `Otro programa escucha en el puerto ${n.port}: indique uno libre con --port.`,
  'site-other-purpose': () =>
    'Las personas inventadas y una consulta real nunca comparten registro: omita --demo, o indique otra carpeta o base de datos.',
};
