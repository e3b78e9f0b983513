import type { signIn as english } from '../../english/screens/signIn.js';
import type { Reworded } from '../../reworded.js';

const HOURS = { one: 'hora', other: 'horas' };

/** As in `english/screens/signIn`. */
export const signIn: Reworded<typeof english> = {
  anotherFirst: 'Una nueva primera frase de contraseña',
  phraseKept: 'La nueva frase de contraseña está guardada; en otros dispositivos se pide.',
  phraseTitle: 'Cambiar la frase de contraseña',
  accounts: 'Cuentas',
  noAccounts: 'Aquí nadie tiene que entrar: puede actuar quien esté ante este equipo.',
  firstAccount:
    'La primera cuenta se hace en este equipo, en un terminal en la carpeta del programa. Pide una frase de contraseña; desde entonces todos entran, y un propietario añade aquí a los demás.',
  firstAccountOf:
    'Con su propio nombre, y con --demo, --data o --account si este registro se inició con ellos.',
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
