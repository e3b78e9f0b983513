import type { bring as english } from '../../english/screens/bring.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/screens/bring`. */
export const bring: Reworded<typeof english> = {
  title: 'Incorporar un fichero',
  hint: 'Un paquete FHIR R4 o una tabla (CSV) como la que se descarga aquí. Primero se muestra qué añadiría y qué se rechaza; nada se guarda antes de que usted lo diga.',
  choose: 'Fichero',
  drop: 'o suéltelo aquí',
  most: (f, say) => `Como máximo ${say.short(f.megabytes, 1)} MB.`,
  tooLarge: (f, say) =>
    `Este fichero tiene ${say.number(f.megabytes, 1)} MB; se admiten como máximo ${say.short(f.most, 1)} MB de una vez. No se guardó nada de él. \`evenfall import\` en la propia máquina admite ficheros mayores.`,
  unreadable: 'El navegador no pudo leer este fichero. No se guardó nada de él.',
  reading: (f) => `Se está leyendo ${f.text}`,
  fileIs: (f) => `Fichero: ${f.text}`,
  refusedWhole: 'No se puede admitir nada de este fichero, y no se guardó nada',
  wouldAdd: (f, say) => `Se añadirían ${say.counted(f.values, ENTRIES)}`,
  wereAdded: (f, say) => `Se añadieron ${say.counted(f.values, ENTRIES)}`,
  nothingNew: 'Este fichero no añade nada',
  already: (f, say) => `${say.counted(f.values, ENTRIES)} de él ya estaban aquí.`,
  others: (f, say) =>
    `${say.counted(f.values, ENTRIES)} sin número: firmas, datos, correcciones y similares.`,
  more: (f, say) => `${say.short(f.values)} más`,
  takenBack: 'la fuente lo retiró: marcado como registrado por error',
  changes: 'enmienda lo que la fuente dijo antes',
  refused: (f, say) => `Rechazado: ${say.short(f.values)}`,
  refusedHint: 'Lo rechazado no se guarda; el fichero no cambia. Corríjalo allí y vuelva a incorporarlo.',
  line: 'Fila',
  column: 'Columna',
  place: 'Lugar en el fichero',
  expected: 'Se esperaba',
  came: 'Vino',
  nothingCame: 'nada',
  passedOver: (f) => `Se pasan por alto, pues no tienen ningún valor que incorporar: ${f.text}.`,
  older: (f, say) =>
    `Se ${say.form(f.values, { one: 'deja como está', other: 'dejan como están' })}: ${say.counted(f.values, { one: 'valor', other: 'valores' })} de un fichero más antiguo. Lo que la misma fuente dijo después ya consta.`,
  byOrder: (f, say) =>
    `${say.counted(f.values, { one: 'valor cambia', other: 'valores cambian' })} lo que la misma fuente dijo antes, y nada indica cuál se dijo después: de estos queda el fichero que se trae en último lugar. Compruébelos en la ficha.`,
  unclear: (f, say) => `Se guardan junto a otros que se llaman igual: ${say.short(f.values)}`,
  unclearHint:
    'La fuente llama igual a varias mediciones, y no se sabe cuál de ellas corrige una corrección. Ninguna se sustituye: compárelas en el registro y marque allí lo que esté mal.',
  keep: (f, say) => `Guardar ${say.counted(f.values, ENTRIES)}`,
  another: 'Otro fichero',
  kept: 'El fichero se incorporó',
  seeChart: 'Verlo en el registro',
  notKept: 'No se guardó nada: el fichero sigue aquí, inténtelo de nuevo.',
};

const ENTRIES = { one: 'entrada', other: 'entradas' };
