import type { signIn as english } from '../../english/screens/signIn.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/screens/signIn`. */
export const signIn: Reworded<typeof english> = {
  title: 'Entrar',
  goOn: '¿Quién sigue?',
  name: 'Nombre con el que entra',
  phrase: 'Frase de contraseña',
  pin: 'PIN',
  enter: 'Entrar',
  open: 'Abrir',
  checking: 'Comprobando …',
  another: 'Entra otra persona',
  otherName: 'Otro nombre',
  backToPin: 'Volver a los nombres',
  forgotten:
    '¿Olvidada? Un titular de las cuentas de esta consulta puede dar una nueva primera frase. Nadie puede leer la antigua.',
  bothMissing: 'Escriba el nombre con el que entra y su frase de contraseña.',
  phraseMissing: 'Escriba la frase de contraseña.',
  pinMissing: 'Escriba el PIN.',
  wrongPhrase:
    'No son el nombre y la frase de contraseña de una misma cuenta. No se ha perdido nada: escríbalos de nuevo.',
  wrongPin: (f, say) =>
    `No es el PIN. Tras ${say.counted(f.wrongPinsAtMost, WRONG)} se pide la frase de contraseña.`,
  unreachable:
    'Ahora no se puede llegar al servidor, así que esto debe esperar. No se ha perdido nada de lo escrito en una ronda.',
  lockedAlone:
    'Nadie tocó este dispositivo durante un rato, así que se bloqueó. Se abre de nuevo en cuanto se llega al servidor; no se pierde nada de lo que se escribió o se firmó.',
  tooOften: (f) => `Demasiados intentos: ${f.text}.`,
  give: (f) => `Indique ${f.text}.`,
  notSame: 'No es lo mismo que arriba.',
  ownTitle: 'Elija su propia frase de contraseña',
  ownWhy: (f) =>
    `${f.name}: elija una frase de contraseña que solo usted sepa, en lugar de la primera, que otra persona puede conocer; entonces se abren los registros.`,
  firstPhrase: 'La primera frase de contraseña',
  anotherFirst: 'Una nueva primera frase de contraseña',
  newPhrase: 'Nueva frase de contraseña',
  phraseHint: (f, say) =>
    `${say.short(f.phraseAtLeast)} caracteres o más: cuatro o cinco palabras seguidas son fáciles de recordar y difíciles de adivinar.`,
  again: 'Lo mismo otra vez',
  keepPhrase: 'Guardar esta frase de contraseña',
  phraseKept: 'La nueva frase de contraseña está guardada; en otros dispositivos se pide.',
  phraseTitle: 'Cambiar la frase de contraseña',
  account: 'Mi cuenta',
  accounts: 'Cuentas',
  noAccounts: 'Aquí nadie tiene que entrar: puede actuar quien esté ante este equipo.',
  roles: (f) => `Lo que puede hacer: ${f.roles}.`,
  pinTitle: 'PIN',
  pinWhy: (f, say) =>
    `Con un PIN un dispositivo bloqueado se abre de nuevo en un momento, y dos personas pueden pasarse un mismo dispositivo. Solo funciona en dispositivos en los que dio su frase de contraseña, durante ${say.counted(f.wholeHours, HOURS)}.`,
  pinHas: 'Tiene un PIN. Uno nuevo ocupa su lugar.',
  newPin: 'Nuevo PIN',
  pinHint: (f, say) =>
    `De ${say.short(f.pinAtLeast)} a ${say.short(f.pinAtMost)} cifras; no una serie como 1234.`,
  keepPin: 'Guardar este PIN',
  pinKept: 'El PIN está guardado.',
  pinEnded:
    'Demasiados PIN equivocados, o hace demasiado tiempo: entre con la frase de contraseña. No se ha perdido nada de lo escrito.',
  somebody: 'otra persona',
  othersWaiting: (f, say) =>
    `${say.counted(f.rounds, { one: 'ronda firmada', other: 'rondas firmadas' })} por ${f.name} en este dispositivo, y en ningún registro hasta que ${f.name} entre aquí.`,
  noPinYet:
    'Sin un PIN se pide la frase de contraseña cada vez que este dispositivo se haya bloqueado: elija uno en «Mi cuenta».',
  handOver: 'Pasar a otra persona o bloquear',
  signOut: 'Salir',
  closedWaiting: (f, say) =>
    `${say.counted(f.rounds, { one: 'ronda firmada', other: 'rondas firmadas' })} por ${f.name} en este dispositivo, y en ningún registro: la cuenta de ${f.name} está cerrada. Nada de eso se borra; un propietario abre la cuenta de nuevo y ${f.name} entra aquí.`,
  closedWaitingHere: (f, say) =>
    `${say.counted(f.rounds, { one: 'ronda firmada', other: 'rondas firmadas' })} de una cuenta cerrada en este dispositivo, en ningún registro. Nada de eso se borra: espera a que un propietario abra esa cuenta de nuevo.`,
  lead: 'Quien registra aquí entra con su propio nombre. Una cuenta nunca se borra, porque los registros la nombran: se cierra.',
  add: 'Añadir una cuenta',
  who: 'Nombre, tal como lo dicen los registros',
  whoHint: 'Alguien cuyo nombre ya tienen los registros se elige de la lista.',
  newName: 'Un nombre nuevo',
  signInName: 'Nombre con el que entra',
  signInHint: 'Corto, sin espacios, como un nombre de pila.',
  mayDo: 'Lo que puede hacer',
  mayOwner: 'Titular: crea y cierra cuentas, elige las reglas, borra identidades',
  mayClinician: 'Profesional: toma y registra signos',
  maySupervisor: 'Supervisor/a: refrenda, imparte una clase, elige las reglas',
  mayLearner: 'Estudiante: toma signos que esperan a quien supervise',
  keep: 'Guardar la cuenta',
  kept: (f) =>
    `${f.name} ya puede entrar. Dígale de viva voz la primera frase de contraseña; elige otra enseguida.`,
  nameMissing: 'Indique un nombre.',
  signInMissing: 'Indique un nombre corto con el que entrar.',
  roleMissing: 'Marque al menos una.',
  isYou: 'usted',
  closedSince: (f) => `Cerrada el ${f.day}`,
  notYet: 'Aún no ha elegido una frase de contraseña propia',
  change: 'Cambiar',
  close: 'Cerrar la cuenta',
  reopen: 'Abrirla de nuevo',
  newFirst: 'Darla',
  signsAs: (f) => `entra como ${f.signIn}`,
  done: 'Cambiado.',
  cancel: 'Dejarlo',
};

const WRONG = { one: 'equivocado', other: 'equivocados' };
const HOURS = { one: 'hora', other: 'horas' };
