import type { files as english } from '../../english/expected/files.js';
import type { Reworded } from '../../reworded.js';

export const files: Reworded<typeof english> = {
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
  'fhir-bundle': () => 'un bundle FHIR (JSON), o una tabla escrita por evenfall export (CSV)',
  'fhir-resource': () => 'un recurso con su tipo',
  'vital-sign-code': () =>
    'un código LOINC de presión, pulso, respiraciones, temperatura, saturación, peso o talla',
  'systolic-component': () => 'un componente con una presión sistólica',
  quantity: () => 'una cantidad con su valor y su unidad',
  'one-of-each': () => 'una sistólica y como mucho una diastólica, para que esté claro cuál es la presión',
  'what-it-corrects': () =>
    'un historial de la fuente que diga qué medición corrige esto: se guarda junto a las que se llaman igual, de las horas que llegaron',
  'not-corrected': () =>
    'un historial de la fuente que diga si esto se corrigió: se guarda junto a una corrección posterior que se llama igual, de la hora que llegó',
  'no-modifier': () => 'una Observation cuyo significado nada cambie: este programa no conoce la extensión',
  'no-comparator': () => 'un número, no más ni menos que uno',
  'one-effective': () => 'un solo tiempo: un momento o un periodo',
  'one-subject': () =>
    'la misma persona en cada recurso: un fichero de varias personas no es el registro de nadie',
  'person-of-bundle': () => 'la persona de la que es el fichero, o ningún --person',
  'book-of-care-or-practice': () =>
    'un fichero de un solo libro; lo que una clase midió entre sí no se lleva a ninguna parte',
  'identity-in-bundle': () =>
    'quién es la persona, pues todavía no está aquí: escriba el fichero con --with-identity',
  'number-as-written': () =>
    'el número de la persona como se escribió, protegido como texto: una hoja de cálculo le quita los ceros a uno sin proteger. Traiga el fichero FHIR de esta persona, o nombre a una persona que ya esté aquí',
  'same-birth-date': () => 'un fichero de la misma persona: la fecha de nacimiento que contiene es otra',
  'no-test-data': () => 'datos de personas reales: lo marcado como datos de prueba no pasa a ningún registro',
  'template-field': () => 'un campo de la lista',
  'closed-brace': (f, say) => `una } tras la { del signo ${say.short(f.value('at'))}`,
  'closed-bracket': (f, say) => `un ] tras el [ del signo ${say.short(f.value('at'))}`,
  'opened-before': () => 'una { o un [ antes, o el signo dos veces',
  'no-part-in-part': () => 'un ] antes de otro [, o el signo dos veces',
  'closed-quote': () => 'unas comillas cerradas',
  'heading-of-chart': () => 'los encabezados de una tabla escrita por evenfall export --as csv',
  'schema-of-chart': (f, say) => `evenfall-chart-${say.short(f.value('newest'))} o anterior`,
  'cells-as-headings': (f, say) => `${say.short(f.value('wanted'))} celdas, tantas como encabezados hay`,
};
