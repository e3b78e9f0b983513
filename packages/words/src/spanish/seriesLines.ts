import type { seriesLines as lines, seriesOptions as options } from '../english/seriesLines.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

const READINGS = { one: 'lectura', other: 'lecturas' };
const DAYS = { one: 'día', other: 'días' };
const ROWS = { one: 'fila', other: 'filas' };

function chance(share: number, say: Say): string {
  if (share < 0.01) return 'menos del 1 %';
  return share > 0.99 ? 'más del 99 %' : say.percent(share);
}

function lineOf(f: { lines: string; count: number }, say: Say): string {
  return `${say.form(f.count, { one: 'línea', other: 'líneas' })} ${f.lines}`;
}

/** On which side of a limit a reading counts. */
function reached({ side, limit }: { side: 'least' | 'over' | 'mixed'; limit: string }): string {
  if (side === 'over') return `por encima de ${limit}`;
  return side === 'mixed' ? `más allá de ${limit}` : `en ${limit} o más`;
}

/** The same of the limit of each reading's own period. */
function reachedOwn({ side }: { side: 'least' | 'over' | 'mixed' }): string {
  if (side === 'over') return 'por encima del límite de su propio período';
  if (side === 'mixed') return 'más allá del límite de su propio período';
  return 'en el límite de su propio período o por encima';
}

/** As in `english/seriesLines`. */
export const seriesLines: Reworded<typeof lines> = {
  actFirst: 'Primero',
  by: 'Según',
  readings: 'Lecturas',
  leftOut: 'Excluidas',
  mean: 'Media',
  morning: 'Mañana',
  evening: 'Tarde',
  dayToDay: 'De día a día',
  category: 'Categoría',
  result: 'Resultado',
  chance: 'Probabilidad',
  day: 'Día',
  night: 'Noche',
  whole: '24 horas',
  fall: 'Descenso nocturno',
  rise: 'Subida matinal',
  load: 'Carga',
  curve: 'Curva',
  pattern: 'Patrón',
  office: 'Con la consulta',
  usual: 'Nivel habitual',
  systolic: 'Sistólica',
  diastolic: 'Diastólica',
  assuming: 'Suponiendo',
  ruleSet: (f) => `${f.title} (${f.id}, versión ${f.version})`,
  linePressure: (f, say) => `${lineOf(f, say)}, ${f.pressure}: ${f.detail}`,
  lines: (f, say) => `${lineOf(f, say)}: ${f.detail}`,
  moreLines: (f, say) => `${say.counted(f.rows, ROWS)} más`,
  used: (f, say) =>
    `${say.short(f.used)} de ${say.counted(f.rows, READINGS)} en uso, en ${say.counted(f.days, DAYS)}`,
  lone: (f, say) =>
    `${say.form(f.readings, { one: 'Una lectura está', other: `${say.short(f.readings)} lecturas están` })} lejos de sus vecinas: ${f.parts.join('; ')}. Mire si se movió el brazo. Con ${say.form(f.readings, { one: 'ella', other: 'ellas' })} la media es ${f.with}, sin ${say.form(f.readings, { one: 'ella', other: 'ellas' })} ${f.without}; nada se ha dejado fuera por eso; de lo guardado se puede quitar a mano.`,
  loneMany: (f, say) =>
    `${say.form(f.readings, { one: 'Una lectura está', other: `${say.short(f.readings)} lecturas están` })} lejos de sus vecinas: demasiadas para un solo movimiento del brazo. Mire el registro y cómo se hizo; nada se ha dejado fuera por eso.`,
  loneOne: (f) => `${f.pressure} el ${f.day} a las ${f.at}, entre ${f.before} y ${f.after}`,
  ofAsked: (f, say) => `${say.short(f.came)} de las ${say.counted(f.asked, READINGS)} que se pidieron`,
  gapsBlank: (f, say) => `${say.form(f.count, { one: 'falta', other: 'faltan' })} ${f.gaps}`,
  gapShort: (f, say) => `${f.text} tiene ${say.short(f.came)} de ${say.short(f.asked)}`,
  'gap-morning': (f) => `la mañana del ${f.text}`,
  'gap-evening': (f) => `la tarde del ${f.text}`,
  'gap-day': (f) => `todo el ${f.text}`,
  'gap-days': (f) => `cada día del ${f.from} al ${f.until}`,
  kept: (f, say) => {
    const came = f.byHand === 0 ? 'que llegaron' : 'que llegaron de lo programado';
    const planned = `${say.short(f.kept)} de ${say.short(f.scheduled)} ${f.isPlanSaid ? 'programadas' : came}`;
    const byHand = `${say.short(f.byHand)} de inicio manual`;
    const parts = [
      ...(f.scheduled === 0 && f.byHand > 0 ? [] : [planned]),
      ...(f.byHand === 0 ? [] : [byHand]),
    ];
    return `${parts.join(' y ')} se conservan: ${say.short(f.day)} de día, ${say.short(f.night)} de noche`;
  },
  byDiary: 'día y noche según el diario',
  byClock: 'día y noche solo según el reloj',
  pressure: (f, say) => (f.pulse === null ? f.pressure : `${f.pressure}, pulso ${say.short(f.pulse, 0)}`),
  partMean: (f, say) => `${say.short(f.systolic)}/${say.short(f.diastolic)}`,
  notKnown: 'no se sabe',
  minusEvening: (f, say) => `mañana menos tarde ${say.short(f.systolic)}/${say.short(f.diastolic)}`,
  partsSd: (f) => `DE de las mañanas ${f.morning}, de las tardes ${f.evening}`,
  dailyMeans: (f) => `${f.means} (DE ${f.sd})`,
  categoryOf: (f) =>
    `${f.category}, según este conjunto de reglas: un nombre para estas lecturas, no para la persona`,
  noCategory: 'ninguna según este conjunto de reglas',
  isHigh: 'alta, según este conjunto de reglas: se dice de estas lecturas y nada más de la persona',
  isNotHigh: 'no alta, según este conjunto de reglas: se dice de estas lecturas y nada más de la persona',
  chanceOf: (f, say) =>
    `de que el nivel habitual esté en ${f.threshold} o más, bajo los supuestos indicados: sistólica ${f.systolic === null ? 'no se sabe' : chance(f.systolic, say)}, diastólica ${f.diastolic === null ? 'no se sabe' : chance(f.diastolic, say)} (${f.prior})`,
  chancesDiffer: (f) =>
    `Todas tratan del mismo nivel habitual. La primera cuenta también con ${[...(f.hasOffice ? ['las visitas a la consulta'] : []), ...(f.hasAge ? ['lo que se sabe de personas de esta edad y sexo'] : [])].join(' y ')}: guíese por ella si es cierto de esta persona. La última se guía solo por las lecturas. Ninguna cambia lo que dice arriba el conjunto de reglas.`,
  flatPrior: 'solo con estas lecturas',
  agePrior: 'con lo que se sabe de esta edad y sexo',
  officePrior: 'con las visitas a la consulta además',
  fallOf: (f, say) => `sistólica ${say.short(f.systolic, 1)} %, diastólica ${say.short(f.diastolic, 1)} %`,
  fallWithClass: (f) =>
    `${f.fall}: ${f.class}${f.diastolic === null ? '' : `; de la diastólica sola, ${f.diastolic}`}`,
  periodCategory: (f) => `${f.period} ${f.category}`,
  periodCategories: (f) =>
    `${f.categories}, según este conjunto de reglas: nombres para estas lecturas, no para la persona`,
  riseOf: (f) => `${f.name}: ${f.amount} (${f.definition})`,
  riseAmount: (f, say) => `${say.short(f.mmHg, 1)} mmHg`,
  riseRate: (f, say) => `${say.short(f.mmHg, 1)} mmHg/h`,
  riseNotKnown: 'no hay lecturas suficientes',
  riseAtEdge: 'La lectura más baja es la primera o la última del sueño: su media es de dos, no de tres.',
  officeTooFar: (f, say) =>
    `${say.counted(f.pressures, { one: 'presión no tomada', other: 'presiones no tomadas' })}, a más de ${say.counted(f.days, { one: 'día', other: 'días' })} de estas lecturas (una elección de este programa)`,
  target: 'Objetivo del tratamiento',
  targetUnder: (f, say) =>
    `por debajo de ${say.limit(f.systolic)}/${say.limit(f.diastolic)} mmHg ${f.fromYears === null ? `con menos de ${say.short(f.untilYears ?? 0)} años` : `desde los ${say.short(f.fromYears)} años`}`,
  targetSays: (f) =>
    `${f.guideline} busca en quien recibe tratamiento una media ${f.text}${f.isMet === null ? '' : f.isMet ? '; esta media está por debajo' : '; esta media no está por debajo'}. De memoria, sin cotejar con la guía; prevalecen su protocolo local y el objetivo de la persona, y dice lo que se busca, no lo que la persona tiene`,
  stiffness: 'Índice de rigidez',
  stiffnessOf: (f, say) =>
    `${say.number(f.index, 2)}, simétrico ${say.number(f.symmetric, 2)} (1 menos la pendiente de la diastólica sobre la sistólica, ${say.number(f.slope, 2)}; r ${say.number(f.r, 2)}). Cambia con la dispersión de las lecturas y con la bajada nocturna, un estudio con modelos halló que no mide bien la rigidez, y aquí no tiene límite`,
  stiffnessNone: (f, say) =>
    `No se da: hacen falta ${say.counted(f.readings, READINGS)} con ambas presiones y un r² de ${say.limit(f.r2)} o más entre ellas`,
  riseCaution: (f, say) =>
    `Estas subidas no tienen aquí límite: de un registro a otro de la misma persona cada una varía con una DE de unos ${say.short(f.sd)} mmHg, y las definiciones difieren en más de ${say.short(f.apart)}.`,
  loadOf: (f, say) =>
    `${f.period}: sistólica ${say.short(f.systolic, 0)} %, diastólica ${say.short(f.diastolic, 0)} % de las lecturas ${reached(f)}`,
  loadOfBoth: (f, say) => {
    const of = (name: string, percent: number | null) =>
      percent === null ? [] : [`${name} ${say.short(percent, 0)} %`];
    return `24 horas: ${[...of('sistólica', f.systolic), ...of('diastólica', f.diastolic)].join(', ')} de las lecturas de día y de noche, cada una ${reachedOwn(f)} (${f.day} de día, ${f.night} de noche), no en el de 24 horas; no entran las lecturas de ninguno de los dos períodos`;
  },
  derivedOf: (f, say) =>
    `${f.period} ${say.short(f.mean, 0)} (${f.sd === null ? '' : `DE ${say.number(f.sd, 1)}, `}de ${say.short(f.least, 0)} a ${say.short(f.most, 0)})`,
  groupHome: (f, say) =>
    `${say.counted(f.people, { one: 'persona', other: 'personas' })}, cada una por las medias de sus días en casa`,
  groupRecordings: (f, say) =>
    `${say.counted(f.people, { one: 'persona', other: 'personas' })}, cada una por las lecturas de 24 horas`,
  groupOf: (f, say) =>
    `la DE crece como la media elevada a ${say.number(f.x, 2)}, en torno a ${say.number(f.mean, 1)}; lo independiente de la media va con ella en ${say.number(f.correlation, 2)}`,
  noGroup: 'ninguna: hacen falta tres personas con medias distintas y lecturas que varíen',
  vimOf: (f) => `${f.component} media ${f.mean}, DE ${f.sd}, independiente de la media (VIM) ${f.vim}`,
  groupNote:
    'Una VIM dice algo solo junto a las del mismo grupo, y nada de una persona: guarde con ella potencia, tamaño y media del grupo.',
  curveOf: (f, say) =>
    `sistólica en torno a ${say.short(f.mesor)}, sube y baja ${say.short(f.amplitude)}, máxima a las ${f.peak}`,
  consistentWith: (f) =>
    `compatible con ${f.names}: lo que muestran estas lecturas, no lo que tiene la persona`,
  officeMinus: (f) => `consulta menos fuera de la consulta ${f.systolic}/${f.diastolic} mmHg`,
  usualOf: (f, say) =>
    `${say.short(f.mean)}, intervalo del 95 % de ${say.short(f.low, 0)} a ${say.short(f.high, 0)}`,
  usualChance: (f, say) =>
    `${chance(f.chance, say)} de que el nivel habitual esté en ${say.limit(f.threshold)} o más, bajo los supuestos indicados`,
  usualFlat: (f, say) => `${chance(f.chance, say)} sin lo que se sabe de una edad y sexo`,
  oneMoreDay: (f, say) =>
    `un día más como estos haría el intervalo ${say.short(f.mmHg, 1)} mmHg más estrecho`,
  settled: 'resuelto: cuatro a uno o más claro',
  settledAfter: (f, say) =>
    `${say.counted(f.days, { one: 'día más', other: 'días más' })} como estos lo ${say.form(f.days, { one: 'resolvería', other: 'resolverían' })}`,
  notSettled: 'más lecturas de la misma clase en cuatro semanas no lo resolverán',

  'time-not-there': (f, say) => `El reloj se saltó esta hora (${lineOf(f, say)}): se adelanta lo que saltó.`,
  'time-twice': (f, say) => `El reloj mostró esta hora dos veces (${lineOf(f, say)}): se toma la primera.`,
  'times-in-utc': () => 'Las horas están en UTC y no se dio zona: mañana, tarde, día y noche son los de UTC.',
  'from-kilopascal': () => 'Las presiones estaban en kPa y se muestran en mmHg.',
  'irregular-pulse': (f, say) =>
    `El aparato marcó un pulso irregular (${lineOf(f, say)}): lo que lee varía entonces más, y se aconsejan tres lecturas cada vez.`,
  'irregular-not-understood': (f, say) =>
    `No se entiende lo escrito en la columna del pulso irregular (${lineOf(f, say)}): se toma como marcado, y queda tal cual en la nota de su lectura.`,
  'marked-by-hand': (f, say) => `De inicio manual, fuera de lo programado (${lineOf(f, say)}).`,
  'start-not-understood': (f, say) =>
    `No se entiende lo escrito en la columna de cómo se inició una lectura (${lineOf(f, say)}): se toma como programada, y queda tal cual en la nota de su lectura.`,
  startedByHandMark: 'de inicio manual, fuera de lo programado',
  irregularReadings: (f, say) =>
    `El aparato marcó un pulso irregular en ${say.counted(f.readings, READINGS)}: lo que lee varía entonces más, y se aconsejan tres lecturas cada vez.`,
  irregularMark: 'pulso irregular, marcado por el aparato',
  clockSkipped: 'el reloj saltó esta hora: se adelantó',
  clockTwice: 'el reloj marcó esta hora dos veces: se tomó la primera',
  marksNotUsed: (f, say) =>
    `El día y la noche van por las horas de sueño escritas, no por las marcas de la tabla${f.differ === 0 ? ', que dicen lo mismo.' : `: ${say.short(f.differ)} de ${say.short(f.marked)} marcas dicen otra cosa.`}`,
  'lines-before-heading': (f, say) => `Antes de los encabezados, sin leer: ${lineOf(f, say)}.`,
};

export const seriesOptions: Reworded<typeof options> = {
  homeRules: 'el conjunto de reglas de una guía (ish-2020 si falta)',
  zone: 'la zona de las horas sin desfase: Europe/Lisbon',
  priorSex: 'con --age: lo que se sabe de antemano de esta edad y sexo',
  seriesPregnant: 'embarazo o las seis semanas siguientes: no se da categoría',
  dates: 'el orden de día, mes y año en fechas que se podrían leer de dos maneras',
  pressureUnit: 'la unidad de presiones que podrían ser kPa',
  columns: 'qué es cada columna, con comas: time,systolic,diastolic,pulse; - para una que no se lee',
  officeMean:
    'una presión de consulta con la que comparar y para las probabilidades: 148/92, 148/92x2 si es media de dos visitas, o cada una con su día (un día es una visita): 2026-11-01=148/92,2026-11-08=150/90',
  treated: 'si la persona recibe tratamiento para la presión alta',
  asleep: 'cuándo durmió la persona, según su diario: 23:00-07:00',
  nap: 'con --asleep: la siesta, que no cuenta ni como día ni como noche: 13:00-14:30',
  dayWindow: 'las horas del día según el reloj: 09:00-21:00',
  nightWindow: 'las horas de la noche según el reloj: 01:00-06:00',
  scheduled: 'cuántas lecturas estaba programado para tomar el registrador',
  asksStiffness: 'calcular también el índice de rigidez (depende de la dispersión y de la bajada nocturna)',
  allHours: 'usa también las lecturas posteriores a 24 horas desde la primera',
  usualOffice:
    'la media de las visitas a la consulta y cuántas: 148/92x2; o cada una con su día (un día es una visita): 2026-11-01=148/92,2026-11-08=150/90',
  usualHome: 'la media de las lecturas en casa y cuántas: 138/86x24',
  usualDays: 'en cuántos días se tomaron las lecturas en casa',
  usualAmbulatory: 'la media diurna de un registro de 24 horas',
  threshold: 'la presión por la que se pregunta: 135/85',
};
