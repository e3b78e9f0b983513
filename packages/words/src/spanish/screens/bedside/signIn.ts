import type { signIn as english } from '../../../english/screens/bedside/signIn.js';
import type { Reworded } from '../../../reworded.js';

const WRONG = { one: 'equivocado', other: 'equivocados' };

/** What the bedside says of it; the rest is in `../signIn.ts` and comes later. */
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
  newPhrase: 'Nueva frase de contraseña',
  phraseHint: (f, say) =>
    `${say.short(f.phraseAtLeast)} caracteres o más: cuatro o cinco palabras seguidas son fáciles de recordar y difíciles de adivinar.`,
  again: 'Lo mismo otra vez',
  keepPhrase: 'Guardar esta frase de contraseña',
  account: 'Mi cuenta',
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
};
