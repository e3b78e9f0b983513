import type { away as english } from '../../english/screens/away.js';
import type { Reworded } from '../../reworded.js';

const READINGS = { one: 'lectura', other: 'lecturas' };
const ROWS = { one: 'fila', other: 'filas' };
/** La segunda lectura de una toma, y las siguientes. */
const PLACES = ['segunda', 'tercera', 'cuarta'];
const DAYS = { one: 'día', other: 'días' };

function changeOf(
  f: { change: string; low: string; high: string; holdsNone: boolean },
  when: string,
): string {
  const verdict = f.holdsNone
    ? 'Que nada cambiara queda dentro de eso.'
    : 'Que nada cambiara queda fuera de eso.';
  return `Si ambas medias varían así, el cambio sistólico${when} de ${f.change} mmHg queda entre ${f.low} y ${f.high} en 95 de 100. ${verdict}`;
}

/** As in `english/screens/away`. */
export const away: Reworded<typeof english> = {
  newTitle: 'Lecturas de fuera de la consulta',
  what: '¿Qué ha vuelto?',
  home: 'Lecturas en casa',
  ambulatory: 'Un registro de 24 horas',
  how: '¿Cómo se introduce?',
  typed: 'Tecleado del papel',
  pasted: 'Pegado',
  file: 'Un archivo',
  diary: 'El diario que ha vuelto',
  noDiary: 'Ninguno de los entregados',
  diaryFrom: (f, say) => `desde ${f.text}, ${say.counted(f.days, DAYS)}`,
  readings: 'Las lecturas',
  gridHint:
    'Teclee solo los dígitos: pasan solos al número siguiente y se detienen en uno que no puede ser. Intro y las flechas se mueven, Retroceso en un lugar vacío va hacia atrás. Una lectura entera como 142/88 74 se puede teclear o pegar en cualquier sitio, también varias líneas. Lo que queda en blanco no se guarda.',
  dangerAt: (f) => `${f.text}:`,
  dangerBelow: 'Actuar primero: qué hacer está más abajo',
  otherWayRound: 'El segundo número es mayor que el primero. ¿Al revés?',
  itIs: (f) => `Es ${f.text}`,
  digitMissing: (f, say) =>
    `${say.short(f.typed)} está lejos de los demás, que son de unos ${say.number(f.usual)}. ¿Falta una cifra o se tecleó dos veces?`,
  typeAgain: 'Teclearlo otra vez',
  firstDay: 'Primer día',
  firstDayMissing: 'Indique el primer día de la hoja: los demás días se siguen de él.',
  days: 'Días',
  morningAbout: 'Mañanas hacia las',
  eveningAbout: 'Noches hacia las',
  byClockOf: (f) => `Según el reloj de ${f.text}.`,
  day: (f, say) => (f.text === '' ? `Día ${say.short(f.day)}` : `Día ${say.short(f.day)}, ${f.text}`),
  morning: 'Mañana',
  evening: 'Noche',
  other: 'Otras horas',
  about: 'hacia',
  at: 'a las',
  timeOf: (f) => `Hora, ${f.day}, ${f.part}`,
  systolic: 'Sistólica',
  diastolic: 'Diastólica',
  pulse: 'Pulso',
  cell: (f, say) => `${f.cell}, ${f.day}, ${f.part}, lectura ${say.short(f.reading)}`,
  paste: 'Líneas de una hoja de cálculo o de un mensaje',
  pasteHint:
    'Con encabezados o sin ellos: una hora y 142/88 74 en cada línea, o una columna para cada número. No se guarda nada antes de firmar.',
  pasteUntimed: 'Las líneas sin hora van en «Tecleado del papel»: péguelas en su primer lugar.',
  chooseFile: 'Archivo',
  otherFile: 'Otro archivo',
  fileHint:
    'Una tabla de texto (CSV), con comas, puntos y coma o tabuladores, o un paquete FHIR. Se queda en este dispositivo hasta que se firma.',
  tooLarge: (f, say) =>
    `Este archivo pasa de ${say.short(f.megabytes)} MB, mucho más que las lecturas de una persona. No se ha tomado nada de él.`,
  ofRecording: 'Lo que el registrador no dice',
  asleepFrom: 'Sueño desde las',
  asleepTo: 'Hasta las',
  napFrom: 'Siesta desde',
  napTo: 'Siesta hasta',
  napAlone: 'La siesta se dice junto a las horas de la noche: diga también esas.',
  napWithin: 'La siesta cae dentro de las horas de la noche: revise las horas.',
  asleepUnknown: 'No se sabe a qué horas durmió',
  asleepHint: (f) =>
    `Según el diario de la propia persona. Si no se saben, el día y la noche se distinguen por las marcas de la tabla o, si no, por la hora: la noche va entonces de ${f.from} a ${f.to} según el reloj, durmiera cuando durmiera la persona. Se pueden corregir después de firmar.`,
  putSleepRight: 'Corregir las horas de sueño',
  sleepSame: 'Son las horas que ya constan.',
  'sleepNot-waits':
    'Sus horas de sueño las corrige quien la firmó, o cualquiera una vez refrendada por un supervisor: quien la cambia ya no puede refrendarla.',
  'sleepNot-others': 'Sus horas de sueño las corrige un profesional: quien aprende solo cambia lo que firmó.',
  sleepWasPutRight: (f) =>
    `Horas de sueño corregidas por ${f.who}, ${f.at}: ${f.after}; antes, ${f.before}. Motivo: «${f.why}».`,
  sleepSaid: (f) => `durmió ${f.night}${f.nap === null ? '' : `, siesta ${f.nap}`}`,
  sleepNotKnown: 'no se sabían',
  nightByClockYet:
    'Hasta que se diga cuándo durmió la persona, la noche son unas horas del reloj: si hay suficientes lecturas y qué da la noche puede cambiar con ello.',
  sayAsleep: 'Diga cuándo durmió la persona, o que no se sabe.',
  scheduled: 'Lecturas programadas',
  scheduledWrong: 'El número de lecturas programadas es un número entero, o queda en blanco.',
  questions: 'Lo que hay que decir primero',
  questionsSay:
    'La tabla sola no dice cómo se ha de leer todo. No se adivina nada: no se usa nada antes de que usted lo diga.',
  askDates: (f, say) => `La fila ${say.short(f.line)} dice «${f.text}». ¿En qué orden están las fechas?`,
  dmy: 'día, mes, año',
  mdy: 'mes, día, año',
  ymd: 'año, mes, día',
  askUnit: (f, say) => `La fila ${say.short(f.line)} dice «${f.text}». ¿En qué unidad están las presiones?`,
  askZone: (f, say) => `La fila ${say.short(f.line)} dice «${f.text}». ¿En qué zona horaria estaba su reloj?`,
  zoneHint:
    'La zona por su nombre, como Europe/Lisbon. Está puesta la de este dispositivo; cámbiela si la persona estaba en otro lugar.',
  zoneWrong: 'No hay ninguna zona con ese nombre. Escríbala como Europe/Lisbon.',
  zoneIs: 'Usar esta zona',
  askSwapped: (f, say) =>
    `En la mayoría de las filas la sistólica es menor que la diastólica, primero en la fila ${say.short(f.line)}: las dos columnas parecen cambiadas.`,
  swap: 'Cambiarlas',
  asTheyStand: 'Están bien como están',
  columns: 'Qué es cada columna',
  columnsMissing: (f, say) => `No se encontró columna para ${say.allOf(f.parts)}: diga cuál es.`,
  columnsRemembered: 'Como alguien lo indicó en este dispositivo para una tabla con los mismos encabezados.',
  column: (f, say) =>
    f.text === '' ? `Columna ${say.short(f.column)}` : `Columna ${say.short(f.column)}: ${f.text}`,
  notRead: 'no se lee',
  asRead: (f, say) =>
    f.shown < f.readings
      ? `Las ${say.short(f.shown)} primeras de ${say.counted(f.readings, READINGS)}, como se leyeron`
      : `${say.counted(f.readings, READINGS)}, como se ${f.readings === 1 ? 'leyó' : 'leyeron'}`,
  columnTaken: (f) => `${f.text} (${f.role})`,
  alsoTaken: (f) => `Se toma además: ${f.text}.`,
  columnsNotRead: (f) => `No se lee: ${f.text}.`,
  'column-time': 'fecha y hora',
  'column-date': 'fecha',
  'column-clock': 'hora del día',
  'column-systolic': 'sistólica',
  'column-diastolic': 'diastólica',
  'column-pulse': 'pulso',
  'column-pressure': 'las dos presiones juntas',
  'column-note': 'nota',
  'column-asleep': 'si dormía o no',
  'column-arm': 'qué brazo',
  'column-device': 'aparato',
  'column-site': 'dónde estaba el manguito',
  'column-irregular': 'pulso irregular o no',
  'column-started': 'de inicio manual o automático',
  'column-part': 'mañana o noche',
  afterQuestions: 'Lo que resulta aparece aquí cuando se responden las preguntas de arriba.',
  refused: 'Filas que no se pueden usar como están',
  refusedCount: (f, say) =>
    f.rows === 0
      ? 'Todas las filas se pueden usar'
      : `${say.counted(f.rows, ROWS)} que no se ${say.form(f.rows, { one: 'puede', other: 'pueden' })} usar como ${say.form(f.rows, { one: 'está', other: 'están' })}`,
  refusedHint:
    'Corríjala aquí según el papel, o déjela: lo que se deja se guarda en la lista como estaba, y nunca en una media.',
  refusedInGrid:
    'Lo que está mal aparece junto a la casilla. Lo que se deja así se guarda como estaba, y nunca en una media.',
  line: (f, say) => `Fila ${say.short(f.line)}`,
  gridRow: (f, say) => `Día ${say.short(f.day)}, ${f.part}, lectura ${say.short(f.reading)}`,
  inColumn: (f, say) => (f.column === 0 ? `${f.text}` : `${f.text} (columna ${say.short(f.column)})`),
  expectedCame: (f) => `se esperaba ${f.expected}; vino ${f.came}`,
  mend: (f, say) => `La fila ${say.short(f.line)} como debe ser`,
  readAgain: (f, say) => `Leer otra vez la fila ${say.short(f.line)}`,
  mended: (f, say) => `La fila ${say.short(f.line)} se corrigió y se usa. Decía:`,
  unmend: (f, say) => `La fila ${say.short(f.line)} como vino`,
  comesTo: 'Lo que resulta',
  already: (f, say) =>
    `${say.counted(f.readings, READINGS)} ya ${say.form(f.readings, { one: 'está', other: 'están' })} en el registro y no se ${say.form(f.readings, { one: 'guarda', other: 'guardan' })} otra vez.`,
  continues: (f, say) =>
    `${say.form(f.readings, { one: 'Esta lectura sigue', other: 'Estas lecturas siguen' })} a la serie del ${f.from} al ${f.until}, que está en el registro.`,
  joinsNothing: (f, say) =>
    `La serie del ${f.from} al ${f.until}, a la que ${say.form(f.readings, { one: 'sigue esta lectura', other: 'siguen estas lecturas' })}, es de quien aprende y espera ser refrendada: hasta entonces nadie más le añade nada. Refréndela antes, o deje ${say.form(f.readings, { one: 'esta', other: 'estas' })} aparte, como una serie propia.`,
  keptApart: (f, say) =>
    `${say.form(f.readings, { one: 'Esta lectura queda', other: 'Estas lecturas quedan' })} aparte de la serie del ${f.from} al ${f.until}, a la que ${say.form(f.readings, { one: 'seguiría', other: 'seguirían' })}: ${f.why}.`,
  keptApartPutRight: 'Si no es así, corrija lo que se dijo aquí.',
  'apart-treated': 'allí se dijo otra cosa de si se toma medicación',
  'apart-diary': 'allí se dio otro diario',
  'apart-device': 'allí se nombró otro aparato',
  'apart-site': 'allí el manguito estaba en otro lugar (muñeca o brazo)',
  'apart-too-many': 'juntas serían demasiadas lecturas para una serie',
  'joins-add': 'Añadir a esa serie: se calcula de nuevo con todas sus lecturas',
  'joins-apart': 'Dejar aparte, como una serie propia',
  sayJoins: 'Indique si se añade a la serie a la que sigue o se deja aparte.',
  moreDays: 'Más días de las mismas lecturas.',
  addedTo: (f, say) =>
    `${say.counted(f.readings, { one: 'lectura más añadida', other: 'lecturas más añadidas' })} por ${f.who}, ${f.at}.`,
  nothingNew: 'Todas sus lecturas están ya en el registro: no añade nada.',
  noReading: 'No hay en ello ninguna lectura que se pueda usar.',
  stillToCome: (f) =>
    `Una lectura del ${f.text} está todavía por venir: compruebe que el primer día, el diario y las fechas son correctos.`,
  tooMany: (f, say) => `Una serie tiene como mucho ${say.counted(f.most, READINGS)}.`,
  before: 'Antes de firmar',
  whichArm: '¿En qué brazo?',
  whichDevice: '¿Con qué aparato y manguito?',
  whichHint: 'Se dice una vez para todo: una lectura que nombra su brazo o su aparato los conserva.',
  treated: '¿Tomaba entonces la persona medicamentos para la presión?',
  'treated-yes': 'Sí',
  'treated-no': 'No, ninguno',
  'treated-unknown': 'No se sabe',
  features: '¿Tiene la persona ahora alguno de los signos de peligro?',
  'features-notAsked': 'No se preguntó: no se puede contactar con la persona',
  'features-none': 'Se preguntó: ninguno',
  'features-some': 'Se preguntó: sí, estos',
  note: 'Nota',
  noteTooLong: 'La nota es demasiado larga junto a la que la serie ya tiene.',
  noteOver: (f, say) =>
    `La serie que estos días continúan ya tiene una nota, y las dos se guardan como una de ${say.short(f.most)} caracteres como máximo: sobran ${say.counted(f.over, { one: 'carácter', other: 'caracteres' })}. Acorte esta o guarde estos días como una serie aparte.`,
  armsUnread: (f) =>
    `${f.count === 1 ? 'Línea' : 'Líneas'} ${f.lines}: lo que ahí se dice del brazo no nombra ni el izquierdo ni el derecho, así que ${f.count === 1 ? 'esta lectura se guarda' : 'estas lecturas se guardan'} sin brazo, se diga lo que se diga abajo para todas.`,
  notesCut: (f, say) =>
    `${f.count === 1 ? 'Línea' : 'Líneas'} ${f.lines}: de una nota se guardan los primeros ${say.short(f.most)} caracteres. Conserve el archivo para el resto.`,
  notFinished: (f) => `«${f.text}» no está terminado: escriba el resto, o bórrelo.`,
  notFinishedRow: (f) =>
    `«${f.text}» no está terminado: escriba el otro número, o borre la fila. Si toca en otra parte se guarda como está, a la vista: un solo número de la presión como lectura sin el otro, un pulso solo como fila rechazada.`,
  sign: 'Firmar',
  signHint: 'Lo que se firma entra en el registro como vino, también las filas rechazadas.',
  startAgain: 'Descartarlo y empezar de nuevo …',
  startAgainSure: '¿Descartar todas las lecturas de esta página?',
  actFirst: 'Actuar primero',
  actFirstClosed: 'Actuar primero: cerrado',
  whereFrom: 'De dónde viene este límite',
  whatWasToDo: 'Qué había que hacer',
  tellAndClose: 'Avisar a alguien y cerrarlo',
  nothingLeftOut: 'No se dejó nada fuera.',
  leftOut: (f, say) => `Fuera: ${say.short(f.readings)}`,
  whatLeftOut: 'Lo que se dejó fuera',
  readingsAt: (f, say) =>
    `${say.counted(f.readings, READINGS)}: ${f.parts.join('; ')}${f.readings > f.parts.length ? ' …' : ''}`,
  refusedRows: (f, say) =>
    `${say.counted(f.rows, ROWS)} no se ${say.form(f.rows, { one: 'pudo', other: 'pudieron' })} leer y se ${say.form(f.rows, { one: 'guarda como estaba', other: 'guardan como estaban' })}.`,
  refusedSaid: 'Las filas que no se pudieron leer, guardadas como estaban.',
  meanOf: (f, say) => `mmHg, la media de ${say.short(f.used)} de ${say.counted(f.readings, READINGS)}`,
  wholeMeanOf: (f, say) =>
    `mmHg, la media de ${say.short(f.used)} de ${say.counted(f.readings, READINGS)} en 24 horas`,
  dayNote: 'Medicinas, síntomas',
  dayNoteOf: (f) => `Medicinas, síntomas, ${f.text}`,
  dayNoteAlone:
    'Aún no hay lectura de este día: la nota se guarda con la primera o, si no hay ninguna, con todo el diario.',
  pulseIs: (f, say) => `pulso ${say.number(f.pulse)}`,
  categoryIs: (f) => `Categoría: ${f.text}.`,
  patternIs: (f) => `Patrón: ${f.text}.`,
  high: 'Está en el límite de estas reglas o por encima.',
  notHigh: 'Está por debajo del límite de estas reglas.',
  dayNight: (f) => `De día ${f.day}, de noche ${f.night}.`,
  byRules: (f) => `Según ${f.text}.`,
  noRules: 'Aquí no se eligió ningún protocolo: solo medias, y ningún límite.',
  seriesTitle: 'Lecturas de fuera de la consulta',
  homeTitle: (f) => (f.from === f.until ? `En casa, ${f.from}` : `En casa, del ${f.from} al ${f.until}`),
  recordingTitle: (f) => `En 24 horas, desde el ${f.from}`,
  withoutChart:
    'No se pudo obtener el registro de esta persona. Se pueden anotar y firmar lecturas; esperan en este dispositivo. Lo que solo dice el registro (un embarazo, un tratamiento, un diario entregado, una serie anterior) no se tiene en cuenta: léalo antes donde importe.',
  nobodyKnown:
    'Mientras no se llegue al servidor, este dispositivo no sabe quién es. Lo que anote queda aquí; fírmelo cuando arriba figure el nombre.',
  withoutRules:
    'Este dispositivo aún no conoce las reglas de este lugar. Lo que anote queda aquí; fírmelo cuando se haya llegado al servidor.',
  noSuchSeries: 'No hay tal serie en este registro.',
  preliminary: 'Preliminar: la trajo alguien que aprende, y ningún supervisor la ha firmado todavía.',
  inError: 'Esta serie se introdujo por error: no cuenta para nada.',
  broughtIn: (f) => `Introducido por ${f.who}, ${f.at}.`,
  figureScrolls: 'Esto es más ancho que la pantalla: deslícelo hacia un lado para ver el resto →',
  timeAbout: (f) => `hacia ${f.text}`,
  laterReading: (f, say) => `${f.text}, ${PLACES[f.place - 2] ?? `${say.short(f.place)}.ª`} lectura`,
  morningMinusEvening: 'Mañana menos noche',
  sd: 'DE de las lecturas',
  howSure: '¿Cuánta seguridad hay?',
  chanceLead:
    'La probabilidad de que el nivel habitual esté en un límite o por encima, con los supuestos que se indican. Es una probabilidad de dónde está el nivel, nunca de una enfermedad, y la categoría de arriba vale diga lo que diga.',
  withOffice: (f, say) =>
    `también con ${say.counted(f.visits, { one: 'visita', other: 'visitas' })} a la consulta`,
  atOrAbove: 'Nivel habitual de al menos',
  componentAt: (f, say) => `${f.component} ${say.limit(f.mmHg)}`,
  chance: (f, say) =>
    f.share < 0.01 ? 'menos del 1 %' : f.share > 0.99 ? 'más del 99 %' : say.percent(f.share),
  usualIs: (f, say) =>
    `${f.component}: nivel habitual de unos ${say.number(f.mean)}, intervalo del 95 % de ${say.number(f.low)} a ${say.number(f.high)}.`,
  settled: (f, say) => `Frente a ${say.limit(f.mmHg)}, ya está claro: cuatro a uno o más.`,
  notSettled: (f, say) => `Frente a ${say.limit(f.mmHg)}, más lecturas de la misma clase no lo resolverán.`,
  settledAfter: (f, say) =>
    `Frente a ${say.limit(f.mmHg)}, ${say.counted(f.days, { one: 'día más como estos lo resolvería', other: 'días más como estos lo resolverían' })}.`,
  assumptions: 'Lo que esto supone',
  officeTitle: 'Junto a la consulta',
  officeWas: (f, say) =>
    f.visits === 1
      ? `Consulta ${f.each}`
      : `Consulta ${f.pressure}, media de ${say.counted(f.visits, { one: 'visita', other: 'visitas' })}: ${f.each}`,
  officeVisit: (f, say) =>
    `${f.pressure} el ${f.at}${f.rounds === 1 ? '' : ` (${say.counted(f.rounds, { one: 'ronda', other: 'rondas' })})`}`,
  officeWithin: (f, say) =>
    `Se toman las rondas de la consulta firmadas a no más de ${say.counted(f.days, { one: 'día', other: 'días' })} de estas lecturas que llegan a una media de dos lecturas o más, lo que es una elección de este programa; las rondas de un mismo día son una visita.`,
  officeLeft: (f) => `No se toman, aunque están igual de cerca: ${f.text}.`,
  officeNone: (f, say) =>
    `Ninguna presión de la consulta está junto a estas lecturas. No se toman, aunque distan de ellas como mucho ${say.counted(f.days, DAYS)}: ${f.text}.`,
  'officeLeft-no-mean': (f, say) =>
    `${say.counted(f.rounds, { one: 'ronda', other: 'rondas' })} de una sola lectura, o con demasiado pocas para su protocolo`,
  'officeLeft-disputed': (f, say) =>
    `${say.counted(f.rounds, { one: 'ronda', other: 'rondas' })} con enmiendas que no coinciden`,
  'officeLeft-not-countersigned': (f, say) =>
    `${say.counted(f.rounds, { one: 'ronda', other: 'rondas' })} de alguien en formación que nadie refrendó`,
  together: (f) => `En conjunto, ${f.text}.`,
  dayByDay: 'Día a día',
  dayColumn: 'Día',
  dayMean: 'Media del día',
  dayLeftOut: 'fuera',
  dayToDay: (f, say) =>
    `De un día a otro: DE de ${say.counted(f.days, { one: 'media diaria', other: 'medias diarias' })} ${say.number(f.systolic, 1)}/${say.number(f.diastolic, 1)}.`,
  extremes: (f) =>
    `La más alta ${f.highest}, la más baja ${f.lowest}: se muestran, y la categoría no va por ellas.`,
  over24: 'mmHg en 24 horas',
  valid: 'Bastan para guiarse por ellas.',
  notValid: 'No bastan para guiarse por ellas.',
  quality: (f, say) => {
    const came = `De lo que llegó${f.byHand === 0 ? '' : ' de lo programado'}, sin decir cuánto se programó`;
    const planned = `${f.isPlanSaid ? 'De lo programado' : came} (${say.counted(f.scheduled, READINGS)}) se usan ${say.short(f.kept)}${f.percent === null ? '' : ` (${say.number(f.percent)} %)`}; ${say.short(f.edited)} apartadas, ${say.short(f.failed)} fallidas`;
    const byHand = `${say.short(f.byHand)} de inicio manual, ${say.short(f.byHandUsed)} en uso`;
    const parts =
      f.scheduled === 0 && f.byHand > 0
        ? [`${byHand}, ninguna programada`]
        : [planned, ...(f.byHand === 0 ? [] : [`además, ${byHand}`])];
    return `${parts.join('; ')}${f.refused === 0 ? '' : `, ${say.counted(f.refused, ROWS)} sin poder leerse`}; ${say.short(f.day)} de día, ${say.short(f.night)} de noche${f.gap === null ? '' : `; hueco más largo ${say.short(f.gap)} h`}.`;
  },
  meanColumn: 'Media',
  limitColumn: 'Alta desde',
  sdColumn: 'DE',
  leastColumn: 'Mínima',
  mostColumn: 'Máxima',
  loadColumn: 'Carga, %',
  meanArterial: 'Arterial media',
  pulsePressure: 'Presión de pulso',
  askStiffness: 'Calcular también el índice de rigidez',
  count: (f, say) => say.counted(f.readings, READINGS),
  area: (f, say) => `área por encima ${say.number(f.systolic, 1)}/${say.number(f.diastolic, 1)} mmHg h`,
  variation: 'Cómo varía',
  weightedSd: 'DE, día y noche según sus horas (mmHg)',
  cvPercent: 'DE como porcentaje de la media',
  arv: 'De lectura a lectura (mmHg)',
  arvTimeWeighted: 'De lectura a lectura, según el tiempo (mmHg)',
  arvWithoutGaps: (f, say) => `De lectura a lectura, sin huecos de más de ${say.short(f.hours)} h (mmHg)`,
  arvDay: 'De lectura a lectura, de día (mmHg)',
  arvNight: 'De lectura a lectura, de noche (mmHg)',
  rmssd: 'De lectura a lectura, media cuadrática (RMSSD)',
  sdAboutTrend: 'DE en torno a una recta en el tiempo',
  populationSd: 'DE con divisor n, no n − 1',
  range: 'Máxima menos mínima',
  overMean: 'Máxima menos media',
  underMean: 'Media menos mínima',
  rises: 'Cada subida matinal',
  otherRises: 'Según las demás definiciones',
  riseColumn: 'Subida',
  curve: 'Una curva ajustada',
  curveSays:
    'Una onda suave de 24 horas, sola y con otra de 12 horas: describe el registro y no juzga nada. ± es el error estándar.',
  mesor: 'Nivel',
  amplitude: 'Sube y baja',
  peak: 'Máximo a las',
  'curve-one': 'una onda',
  'curve-two': 'dos ondas',
  asItStood: 'Como estaba',
  besideTitle: 'Junto a otra serie',
  besideWhich: 'Antes y después: ¿qué otra?',
  besideNone: 'ninguna',
  besideUnlike: 'No son de la misma clase, o una tiene muy pocas lecturas: compárelas con cuidado.',
  besideReadings: 'Lecturas en la media',
  besideDropped: (f, say) =>
    `${say.counted(f.readings, READINGS)} ${say.form(f.readings, { one: 'excluida', other: 'excluidas' })}`,
  besideOpen: (f) => `${f.text}: queda algo ante lo que actuar; vea primero su propia página.`,
  besidePreliminary: (f) => `${f.text}: de quien aprende, y nadie cualificado la ha refrendado.`,
  besidePdf: 'Guardar ambas como PDF',
  besideHere: 'Antes y después: dos series, una junto a otra',
  besideCount: (f, say) => `${say.counted(f.readings, READINGS)} en ${say.counted(f.days, DAYS)}`,
  changeHome: (f, say) =>
    `¿Qué seguridad tiene el cambio? En un estudio publicado, dos medias sistólicas en casa de una misma persona, con un año entre ellas, diferían con una DE de ${say.number(f.sd, 1)} mmHg. ${changeOf(f, '')} De la diastólica no se encontró tal cifra. Qué más cambió además de la medicación no se sabe aquí.`,
  changeAwake: (f) =>
    `¿Qué seguridad tiene el cambio? Según estudios publicados, la media sistólica despierta de una misma persona, registrada otra vez en un mes, quedaba entre ${f.least} y ${f.most} mmHg de la primera en 95 de 100. ${changeOf(f, ' de día')} Para las medias de 24 horas y de la noche, y para la diastólica, no se encontró tal cifra. Qué más cambió además de la medicación no se sabe aquí.`,
  laterMinusEarlier: 'La posterior menos la anterior',
  allReadings: 'Todas las lecturas',
  byHand: 'A mano',
  allTyped: 'Todas las lecturas se teclearon del papel.',
  takenOut: (f) => `Quitada a mano: ${f.text}`,
  putBack: (f) => `Puesta otra vez a mano: ${f.text}`,
  putRight: (f) => `corregida antes de firmar; decía: ${f.text}`,
  wasTyped: 'tecleada del papel',
  atWrist: 'en la muñeca',
  wasAsleep: 'durmiendo',
  takeOut: 'Quitar',
  putItBack: 'Volver a poner',
  'forGood-duplicate': 'No se puede reponer: contaría dos veces.',
  'forGood-failed': 'No se puede reponer: no tiene números.',
  'forGood-wrist': 'No se puede reponer: muñeca y brazo nunca están en una misma media.',
  'forGood-after-24-hours': 'No se puede reponer: un registro se juzga por sus primeras 24 horas.',
  takeOutOf: (f) => `Quitar ${f.text}`,
  putBackOf: (f) => `Volver a poner ${f.text}`,
  byHandHint:
    'Quite una lectura o vuelva a ponerla y vea cómo se mueve la media. No se guarda nada antes de dar un motivo.',
  moves: (f, say) => `La media pasa de ${f.before} a ${f.after}, de ${say.counted(f.used, READINGS)}.`,
  reason: '¿Por qué?',
  reasonMissing: 'Diga por qué en pocas palabras.',
  keepDecision: (f, say) => `Guardar esto para ${say.counted(f.readings, READINGS)}`,
  undo: 'Dejarlo como estaba',
  leavingTitle: (f, say) => `Lo probado en ${say.counted(f.readings, READINGS)} aún no se ha guardado`,
  leavingSays:
    'Si sale ahora de esta página, es como si no se hubiera probado nada: la media queda como estaba. Para guardarlo, diga por qué y toque Guardar.',
  leavingStay: 'Quedarse en esta página',
  leavingGo: 'Salir sin guardarlo',
  asTable: 'Lo mismo en una tabla',
  howTaken: 'Cómo se tomaron',
  readOut: 'A lo largo del dibujo',
  readOutHint: 'Recorra el dibujo o la línea: se escribe lo que hay allí.',
  savePdf: 'Guardar como PDF',
  print: 'Imprimir',
};
