import type { account as english } from '../../english/expected/account.js';
import type { Reworded } from '../../reworded.js';

const MINUTES = { one: 'minuto', other: 'minutos' };

/** As in `english/expected/account`. */
export const account: Reworded<typeof english> = {
  'what-with-account': () => 'qué hacer con una cuenta',
  'roles-of-account': (_f, say, choices) => `uno o más de ${say.allOf(choices)}, separados por comas`,
  'account-here': () => 'el nombre con el que alguien entra aquí',
  'pass-phrase-line': () => 'una frase de contraseña, escrita o como primera línea de la entrada estándar',
  'pass-phrase-twice': () => 'la misma frase de contraseña dos veces',
  'sign-in-name': () => 'letras, cifras, puntos, guiones y guiones bajos, sin espacios',
  'each-role-once': () => 'cada función una sola vez',
  'pass-phrase-long': (f, say) =>
    `una frase de contraseña de ${say.short(f.value('minimum'))} a ${say.short(f.value('maximum'))} caracteres: unas palabras seguidas sirven`,
  'pass-phrase-own': () =>
    'una frase de contraseña que no sea un nombre, la anterior, un número ni unos pocos signos repetidos',
  'pin-digits': (f, say) =>
    `un PIN de ${say.short(f.value('minimum'))} a ${say.short(f.value('maximum'))} cifras`,
  'pin-no-row': () => 'un PIN que no sea una cifra repetida ni una serie como 1234',
  'right-pin': () => 'el PIN de esta cuenta',
  'right-pass-phrase': () => 'el nombre y la frase de contraseña de una misma cuenta',
  'pass-phrase-again': () => 'entrar con la frase de contraseña: el PIN ya no abre nada aquí',
  'try-later': (f, say) =>
    `otro intento dentro de ${say.counted(f.value('minutes'), MINUTES)}: hubo demasiados`,
  'an-owner-first': () => 'primero un titular: alguien debe poder crear y cerrar cuentas',
  'an-owner-left': () => 'primero otro titular: alguien debe poder crear y cerrar cuentas',
  'new-sign-in-name': () => 'un nombre para entrar que nadie más tenga',
  'agent-without-account': () => 'alguien que todavía no tenga cuenta',
  'agent-signed-in': () => 'quien ha entrado: nadie registra en nombre de otra persona',
  'kind-of-role': (_f, say, choices) => `una cuenta con la función ${say.anyOf(choices)}`,
  'role-of-account': (_f, say, choices) => `una cuenta con la función ${say.anyOf(choices)}`,
  'own-entry-of-learner': () =>
    'una entrada propia: un estudiante no corrige nada que registrara otra persona',
  'preliminary-of-learner': () =>
    'preliminar: la ronda de un estudiante con un paciente espera a un supervisor',
};
