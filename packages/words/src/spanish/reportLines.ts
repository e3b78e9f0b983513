import type { reportLines as lines, reportOptions as options } from '../english/reportLines.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

const READINGS = { one: 'lectura', other: 'lecturas' };
const DAYS = { one: 'día', other: 'días' };

function chance(share: number, say: Say): string {
  if (share < 0.01) return 'menos del 1 %';
  return share > 0.99 ? 'más del 99 %' : say.percent(share);
}

/** As in `english/reportLines`. */
export const reportLines: Reworded<typeof lines> = {
  mmHgAxis: 'Presión, mmHg',
  pulseAxis: 'Pulso, /min',
  noReadings: 'Ninguna lectura que dibujar',
  dayNumber: (f, say) => `Día ${say.short(f.day)}`,
  limit: (f, say) => `límite ${say.limit(f.limit)}`,
  mean: (f) => `media ${f.mean}`,
  extended: (f, say) =>
    `La escala se amplía a ${say.short(f.low)}-${say.short(f.high)} para que quepan los datos.`,
  readingAt: (f, say) =>
    f.pulse === null
      ? `${f.when}: ${f.pressure} mmHg.`
      : `${f.when}: ${f.pressure} mmHg, pulso ${say.short(f.pulse)}.`,
  notUsed: (f) => `Excluida. ${f.why}`,
  ofPeriod: (f) => `Contada en: ${f.period}.`,

  homeFigure: 'Lecturas en casa, día a día',
  homeKey:
    'Punta abajo: sistólica. Punta arriba: diastólica. Unidas: de una misma toma; huecas y grises: excluidas.',
  homeSays: (f, say) =>
    `${say.short(f.used)} de ${say.counted(f.all, READINGS)} usadas, en ${say.counted(f.days, DAYS)}; ${say.short(f.left)} excluidas.`,
  meanSays: (f) => `La media es ${f.mean} mmHg.`,
  limitSays: (f) =>
    f.limit === null
      ? 'El conjunto de reglas no da límite.'
      : `El límite del conjunto de reglas es ${f.limit} mmHg.`,
  homeTable: 'Por día, mmHg; entre paréntesis: excluidas',
  day: 'Día',
  morning: 'Mañana',
  evening: 'Tarde',
  other: 'Otras horas',
  dayMean: 'Media del día',

  recordingFigure: 'Presión y pulso durante 24 horas',
  recordingKey:
    'Punta abajo: sistólica. Punta arriba: diastólica. Gruesas: medias de la hora. Rayas: límites. Huecas y grises: excluidas.',
  recordingCross: 'Cruces: mediciones fallidas.',
  recordingSays: (f, say) =>
    `${say.short(f.kept)} de ${say.counted(f.all, READINGS)} conservadas: ${say.short(f.day)} de día, ${say.short(f.night)} de noche; ${say.short(f.edited)} excluidas.`,
  recordingMeans: (f) =>
    `Medias en mmHg: 24 horas ${f.whole ?? 'no se sabe'}, día ${f.day ?? 'no se sabe'}, noche ${f.night ?? 'no se sabe'}.`,
  recordingLimits: (f) => `Límites en mmHg: día ${f.day ?? 'ninguno'}, noche ${f.night ?? 'ninguno'}.`,
  asleep: 'durmiendo',
  nap: 'siesta',
  nightByClock: 'noche por el reloj',
  clockChange: 'cambio de hora',
  clockChangedBefore: (f, say) => `El reloj se cambió antes de las lecturas del ${say.allOf(f.parts)}.`,
  nOfHour: 'n',
  hourTable: 'Medias de cada hora del reloj',
  hour: 'Hora desde',
  n: 'n',
  systolic: 'Sistólica',
  diastolic: 'Diastólica',
  pulse: 'Pulso',

  chanceFigure: (f) => `Dónde está el nivel habitual: ${f.component}`,
  chanceSays: (f, say) =>
    `${f.component}, ${f.scale}: lo más probable ${say.short(f.mean)} mmHg, intervalo del 95 % ${say.short(f.low, 0)} a ${say.short(f.high, 0)}; la parte rayada, en ${say.limit(f.threshold)} o más, es ${chance(f.chance, say)}, con los supuestos indicados.${f.prior === null ? '' : ` A rayas: lo que se sabe de antemano de esta edad y sexo, alrededor de ${say.short(f.prior)}.`}`,
  scaleHome: 'como se mide en casa',
  scaleOffice: 'como se mide en la consulta',
  usualMean: (f, say) =>
    `Lo más probable ${say.short(f.mean)} mmHg, intervalo del 95 % ${say.short(f.low, 0)} a ${say.short(f.high, 0)}.`,
  overThreshold: (f, say) =>
    `${chance(f.chance, say)} en ${say.limit(f.threshold)} mmHg o más, con los supuestos indicados.`,
  priorMean: (f, say) => `De antemano, por edad y sexo: ${say.short(f.mean)} mmHg, DE ${say.short(f.sd)}.`,
  thresholdChance: (f, say) => `${chance(f.chance, say)} en ${say.limit(f.threshold)} o más`,
  usualAxis: (f) => `${f.component}: nivel habitual, mmHg`,
  priorKey: 'A rayas: lo sabido de antemano de esta edad y sexo',
  curve: 'Curva',
  meanMmHg: 'Media, mmHg',
  sdMmHg: 'DE, mmHg',
  afterwards: 'con estas lecturas',
  beforehand: 'de antemano, por edad y sexo',

  besidePage: 'Presión arterial antes y después',
  homePage: 'Presión arterial en casa',
  recordingPage: 'Presión arterial durante 24 horas',
  invented: 'INVENTADO: no hay ninguna persona detrás de estos números',
  name: 'Nombre',
  born: 'Nacimiento',
  personNumber: 'Número',
  signed: 'Firmado',
  device: 'Aparato y manguito',
  arm: 'Brazo',
  medicineTaken: 'Tomaba para la presión entonces',
  medicineNone: 'Ninguna para la presión entonces',
  reasonWas: (f) => `Motivo: ${f.text}`,
  medicines: 'Medicinas y horas',
  measuredOn: 'Medido',
  fromTo: (f) => (f.from === f.to ? `${f.from}` : `${f.from} a ${f.to}`),
  zoneOf: (f) => `${f.dates} (${f.zone})`,
  madeAt: (f) => `Hecho ${f.at} con ${f.program}`,
  page: (f, say) => `Página ${say.short(f.page)} de ${say.short(f.of)}`,
  quality: 'Calidad',
  ruleSet: 'Conjunto de reglas',
  result: 'Resultado',
  cautions: 'Léase con ello',
  qualityHome: (f, say) =>
    `${say.short(f.used)} de ${say.counted(f.all, READINGS)} usadas, en ${say.counted(f.days, DAYS)}; ${say.short(f.left)} excluidas, ${say.short(f.refused)} no se pudieron leer.`,
  enough: 'Suficiente para este conjunto de reglas.',
  notEnough: 'No es suficiente para este conjunto de reglas.',
  qualityRecording: (f, say) => {
    const byHand = `${say.short(f.byHand)} de inicio manual, ${say.short(f.byHandUsed)} en uso`;
    if (f.scheduled === 0 && f.byHand > 0) return `${byHand}, ninguna programada.`;
    const came = `recibidas${f.byHand === 0 ? '' : ' de lo programado'} (no se dijo cuántas se programaron)`;
    return `${say.short(f.scheduled)} ${f.isPlanSaid ? 'programadas' : came}, ${say.short(f.kept)} válidas${f.percent === null ? '' : ` (${say.short(f.percent)} %)`}, ${say.short(f.edited)} excluidas, ${say.short(f.failed)} fallidas${f.byHand === 0 ? '' : `; además, ${byHand}`}.`;
  },
  awakeAsleep: (f, say) =>
    `${say.short(f.day)} de día, ${say.short(f.night)} de noche${f.gap === null ? '' : `; intervalo más largo sin lectura ${say.short(f.gap)} h`}.`,
  meansTable: 'Medias, mmHg y por minuto',
  periodTable: 'Cada período, mmHg y por minuto',
  mean1: 'Media',
  sd: 'DE',
  least: 'Mínima',
  most: 'Máxima',
  all: 'Todo lo usado',
  minus: 'Mañana menos tarde',
  limitColumn: 'Límite',
  period: 'Período',
  load: 'Carga, %',
  loadBeside: 'Carga: porcentaje de lecturas del lado del límite del período que dice su signo.',
  pulsePressure: 'Presión de pulso',
  meanArterial: 'Arterial media',
  extremes: (f) => `Lectura más alta ${f.high}, más baja ${f.low}; ninguna de las dos decide el nombre.`,
  wristSeen: (f, say) =>
    `Algunas lecturas se tomaron en la muñeca; están marcadas en la lista. Una muñeca por debajo del corazón da de más, por encima da de menos: unos ${say.short(f.perCm, 1)} mmHg por cada cm.`,
  list: 'Todas las lecturas',
  number: 'N.º',
  when: 'Cuándo',
  status: 'Estado',
  row: 'Línea',
  refusedList: 'Filas que no se pudieron leer',
  why: 'Por qué',
  wrist: 'muñeca',
  nameOnly: 'Es un nombre para estas lecturas según un conjunto de reglas, no para la persona.',
  nothing: 'no se leyó nada',
  leftOutOf: (f) => `Excluidas, n.º ${f.numbers}: ${f.detail}`,
  refusedRows: (f, say) =>
    `${say.form(f.rows, { one: 'No se pudo leer una fila', other: `No se pudieron leer ${say.short(f.rows)} filas` })}: véase la última lista.`,
  noCategory: 'Según este conjunto de reglas no se da ningún nombre a estas lecturas.',
  category: (f) => `Según este conjunto de reglas: ${f.category}.`,
  highBy: 'Según este conjunto de reglas: alta.',
  notHighBy: 'Según este conjunto de reglas: no alta.',
  unrounded: 'Con decimales',
  sdOfDays: 'DE de las medias diarias',
  sdOfMornings: 'DE de las mañanas',
  sdOfEvenings: 'DE de las tardes',
  betweenPeriods: 'entre día y noche',
  neitherByDiary: 'ni día ni noche',
  windows: (f) =>
    f.day !== null
      ? `${f.by}: día ${f.day}, noche ${f.night}`
      : `${f.by}: dormido ${f.night}${f.nap === null ? '' : `; siesta ${f.nap}, en ninguna de las dos medias`}`,
  limitOf: (f, say) => `${say.limit(f.limit)} ${f.period}`,
  wholeBy: (f) =>
    `Lo que vale por 24 horas es ${f.by}; la media simple de las lecturas es ${f.plain}. Todo lo demás es de las lecturas.`,
  chanceTable: 'Probabilidad de dónde está el nivel habitual, con los supuestos indicados',
  atOrAbove: 'En o por encima, mmHg',
  chanceColumn: (f) => `${f.component}, ${f.from}`,
  chanceShort: (f, say) => (f.chance === null ? '-' : chance(f.chance, say)),
  actOn: (f) => `${f.pressures}: ${f.detail}`,
  andMore: (f, say) => `${say.short(f.readings)} más`,
  atLine: (f, say) => `línea ${say.short(f.line)}`,
  line: (f) => `${f.label}: ${f.text}.`,
};

export const reportOptions: Reworded<typeof options> = {
  pdf: 'escribir además la página en PDF, con la lista de todas las lecturas',
  svg: 'escribir además la figura en SVG',
  paper: 'la hoja del PDF (a4 si falta)',
  replaceFile: 'sustituir un fichero que ya existe',
  invented: 'los números son inventados: cada página lo dice',
};
