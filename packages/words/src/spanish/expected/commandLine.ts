import type { commandLine as english } from '../../english/expected/commandLine.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/expected/commandLine`. */
export const commandLine: Reworded<typeof english> = {
  command: (_f, say, choices) => `una orden: ${say.anyOf(choices)}`,
  'nearest-command': (_f, say, choices) => `una orden (la más parecida: ${say.anyOf(choices)})`,
  'nearest-option': (_f, say, choices) => `una opción que exista (la más parecida: ${say.anyOf(choices)})`,
  'value-after-it': () => 'un valor detrás',
  'no-value': () => 'ningún valor; está activa cuando aparece',
  'no-argument': () => 'nada más que opciones',
  'fewer-arguments': () => 'menos argumentos',
  'a-file': () => 'un fichero o carpeta, o - para la entrada estándar',
  'series-answer': () => 'una respuesta de evenfall home --json o ambulatory --json',
  'series-of-one-kind': () => 'respuestas solo de home, o solo de ambulatory',
  'json-text': () => 'un objeto JSON',
  'readable-file': () => 'un fichero o carpeta que exista y se pueda leer',
  'files-in-folder': () => 'al menos un fichero en la carpeta',
  'one-file': () => 'un fichero',
  'person-id': () => 'el id de una persona, como está en la dirección de su página',
  'a-scenario': () => 'el id de una persona simulada (--list las nombra) o un fichero con una',
  'nearest-scenario': (_f, say, choices) =>
    `el id de una persona simulada (la más parecida: ${say.anyOf(choices)}; --list las nombra) o un fichero con una`,
  'list-of-actions': () => 'una lista de acciones, 20000 como mucho',
  'tick-not-before': () => 'un tick que no sea anterior al de la acción precedente',
  'cuff-empty': (f, say) =>
    `que antes se desinfle el manguito (hay en él ${say.number(f.value('cuffMmHg'))} mmHg)`,
  'wav-file': () => 'un fichero cuyo nombre acabe en .wav',
  'new-file': () => 'un fichero que todavía no exista (--replace lo sobrescribe)',
  'one-series-to-draw': () => 'una sola serie: la página y la figura se hacen de un fichero cada vez',
  'file-of-its-own': () => 'otro fichero que el de --pdf',
  'pdf-beside': () => '--pdf junto a ello',
  'pdf-or-svg-beside': () => '--pdf o --svg junto a ello',
  'writable-file': () => 'un fichero en el que se pueda escribir',
  'with-lan': () => '--lan a su lado',
  'with-as-text': () => '--as text a su lado',
  'certificate-with-key': () => 'un certificado con su clave',
  'port-number': (f, say) => `un puerto de ${say.short(f.value('minimum'))} a ${f.value('maximum')}`,
};
