import type { record as english } from '../../english/expected/record.js';
import type { Reworded } from '../../reworded.js';

const CHARACTERS = { one: 'carácter', other: 'caracteres' };

/** As in `english/expected/record`. */
export const record: Reworded<typeof english> = {
  choice: (_f, say, choices) => say.anyOf(choices),
  string: () => 'texto',
  number: () => 'un número',
  int: () => 'un número entero',
  boolean: () => 'true o false',
  array: () => 'una lista',
  object: () => 'un objeto con campos con nombre',
  uuid: () => 'un id hecho por un cliente (UUID)',
  datetime: () => 'una fecha y hora con segundos y desfase, como 2025-03-01T08:30:00+01:00',
  date: () => 'una fecha, como 1950-12-31',
  'at-least-string': (f, say) => `texto de al menos ${say.counted(f.value('minimum'), CHARACTERS)}`,
  'at-most-string': (f, say) => `texto de como máximo ${say.counted(f.value('maximum'), CHARACTERS)}`,
  'at-least-array': (f, say) => `una lista de al menos ${say.short(f.value('minimum'))}`,
  'at-most-array': (f, say) => `una lista de como máximo ${say.short(f.value('maximum'))}`,
  'at-least-number': (f, say) => `como mínimo ${say.short(f.value('minimum'), 3)}`,
  'at-most-number': (f, say) => `como máximo ${say.short(f.value('maximum'), 3)}`,
  'second-identifier': () => 'un segundo identificador: una fecha de nacimiento o un número',
  person: () => 'la persona de la que trata',
  round: () => 'la ronda a la que pertenece',
  'frame-known': (f, say) =>
    `un número de marco hasta ${say.short(f.value('newest'))}, el más nuevo que lee este programa`,
  'schema-known': (f, say) =>
    `un número de esquema hasta ${say.short(f.value('newest'))}, el más nuevo que lee este programa`,
  'no-rate-over-void': () => 'nada: un recuento interrumpido no tiene frecuencia, tampoco a mano',
  'each-sign-once': () => 'cada signo una vez, tomado o no hecho',
  'entry-of-round': () => 'una entrada de esta persona, esta ronda y este signo',
  'entry-or-amendment': () => 'una entrada o lo que la enmienda, no ambas',
  'own-entry': () => 'una entrada de quien firma: lo que tomó un supervisor está en su propia ronda',
  'own-round': () => 'otra ronda de esta persona que el supervisor haya firmado, no como estudiante',
  'fact-of-person': () => 'un dato que se conozca de esta persona',
  'signing-of-round': () => 'la firma de esta ronda',
  'signed-round': () => 'una ronda firmada de esta persona',
  'another-agent': () => 'alguien distinto de quien firmó',
  'no-learner': () => 'alguien cuya ronda más reciente no sea de estudiante',
  'not-before-from': () => 'un día no anterior al primero',
  'text-for-other': () => 'unas palabras para el motivo «otro»',
  'one-of-the-shapes': () => 'una de las formas que puede tener este campo',
  'not-ahead': (f, say) =>
    `una hora como máximo ${say.short(f.value('hoursAhead'))} h por delante del reloj del servidor`,
  'body-at-most': (f, say) => `como máximo ${say.short(f.value('maximumBytes'))} bytes de una vez`,
  'kind-with-own-route': () => 'un tipo de entrada que se guarde por esta vía',
  'keepable-text': () => 'texto sin signos de control que no se puedan escribir',
  'same-content': () => 'el mismo contenido que lo guardado con este id',
  'new-id': () => 'un id que todavía no se use',
  'person-in-book': () => 'una persona de este libro',
  'agent-here': () => 'un agente conocido aquí',
  'entry-in-book': () => 'una entrada de este libro',
  'another-entry': () => 'otra entrada que no sea ella misma',
  'same-person': () => 'la misma persona',
  'same-round': () => 'la ronda de la firma que enmienda',
  'same-sign': () => 'una entrada del mismo signo',
  'entry-in-error': () => 'la entrada que se hizo por error',
  'identifiers-of-identity': (_f, say, choices) =>
    `los identificadores que tiene la persona: ${say.allOf(choices)}`,
  'value-of-evidence': () => 'el valor que da su evidencia',
  'levels-at-most': (f, say) => `como máximo ${say.short(f.value('maximum'))} niveles de anidamiento`,
  'identity-not-erased': () => 'una persona cuya identidad no se haya borrado',
  'json-line': () => 'una línea de JSON',
  trailer: () => 'la última línea de una copia de seguridad completa',
  'trailer-last': () => 'nada tras la última línea de una copia de seguridad',
  'whole-record': () => 'una copia de seguridad en la que todo lo nombrado esté, una vez',
  'empty-record': () =>
    'un registro que todavía no contenga nada: restaure en una carpeta o base de datos nueva',
  'header-first': () => 'primero la línea de cabecera',
  'header-once': () => 'una sola línea de cabecera',
  'backup-version-known': (f, say) =>
    `una copia de seguridad de la versión ${say.short(f.value('newest'))} o anterior`,
  'same-purpose': () =>
    'una copia de seguridad de la misma finalidad: las personas inventadas quedan aparte de las reales',
  'hash-of-lines': () =>
    'la suma de comprobación de las líneas de arriba: este fichero se cambió después de escribirse, así que use otra copia',
  'count-of-lines': () =>
    'tantas líneas como se escribieron: este fichero se cambió después de escribirse, así que use otra copia',
  'gauge-here': () => 'un manómetro de este centro',
  'equipment-here': () => 'un manómetro o manguito de este centro',
  'gauge-reference': () => 'con qué se comparó el manómetro',
  'gauge-points': () => 'al menos una presión, de ambos manómetros',
  'gauge-between': (f, say) => `de ${say.short(f.value('minimum'))} a ${say.short(f.value('maximum'))} mmHg`,
  'fhir-bundle': () => 'un bundle FHIR (JSON), o una tabla escrita por evenfall export (CSV)',
  'fhir-resource': () => 'un recurso con su tipo',
  'vital-sign-code': () =>
    'un código LOINC de presión, pulso, respiraciones, temperatura, saturación, peso o talla',
  'systolic-component': () => 'un componente con una presión sistólica',
  quantity: () => 'una cantidad con su valor y su unidad',
  'no-comparator': () => 'un número, no más ni menos que uno',
  'one-effective': () => 'un solo tiempo: un momento o un periodo',
  'one-subject': () =>
    'la misma persona en cada recurso: un fichero de varias personas no es el registro de nadie',
  'person-of-bundle': () => 'la persona de la que es el fichero, o ningún --person',
  'book-of-care-or-practice': () =>
    'un fichero de un solo libro; lo que una clase midió entre sí no se lleva a ninguna parte',
  'identity-in-bundle': () =>
    'quién es la persona, pues todavía no está aquí: escriba el fichero con --with-identity',
  'same-birth-date': () => 'un fichero de la misma persona: la fecha de nacimiento que contiene es otra',
  'no-test-data': () => 'datos de personas reales: lo marcado como datos de prueba no pasa a ningún registro',
};
