import type { plan as english } from '../../english/screens/plan.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';

const PEOPLE = { one: 'persona simulada', other: 'personas simuladas' };

/** Un número con su error de Monte Carlo. */
function withError(value: number, error: number | null, unit: string, say: Say): string {
  const decimals = error !== null && error < 0.05 ? 2 : 1;
  const said = `${say.number(value, decimals)}${unit}`.replace('-', '−');
  return error === null ? said : `${said} (± ${say.number(error, 2)})`;
}

/** Una diferencia y su error de Monte Carlo. */
type Apart = { amount: number; error: number };
/** Cuánto difieren y hacia qué lado, con su error detrás. */
function apartBy({ amount, error }: Apart, lower: string, higher: string, say: Say): string {
  const size = say.number(Math.abs(amount), error < 0.05 ? 2 : 1);
  return `${size} ${amount < 0 ? lower : higher} (± ${say.number(error, 2)})`;
}

/** As in `english/screens/plan`. */
export const plan: Reworded<typeof english> = {
  title: 'En qué se equivoca una manera de medir',
  lead: 'Dos maneras de medir se prueban en las mismas personas simuladas: niveles habituales como en una encuesta de adultos de los Estados Unidos (la media de tres lecturas de una visita: lo que una visita hace de por sí está en ellos), cada una con los altibajos de visitas reales. Lo que sale es la respuesta de un modelo, con cuánto la pudo mover el azar.',
  first: 'Primera manera',
  second: 'Segunda manera',
  fieldOf: (f) => `${f.label}: ${f.way}`,
  groupBefore: 'Antes de la lectura',
  groupCounting: 'Pulso y respiraciones',
  groupCuff: 'Manguito e inflado',
  groupReading: 'Desinflado y lectura',
  groupVisit: 'Lecturas, visitas, categoría',
  groupHome: 'En casa',
  apartIn: (f, say) => `${say.number(f.fields)} sin coincidir`,
  copyFirst: 'Hacer la segunda manera igual que la primera',
  apart: 'La primera junto a la segunda',
  what: 'Qué',
  people: 'Personas',
  seed: 'Semilla',
  seedHint: 'La misma semilla da las mismas personas.',
  seedWrong: 'Un número entero de 0 a 4294967295.',
  peopleHint: 'Más personas tardan más y dejan menos al azar.',
  differ: 'En qué difieren las dos maneras',
  differIn: (f) => `${f.field}: primera ${f.first}, segunda ${f.second}`,
  same: 'Las dos maneras son ahora iguales: no saldrá ninguna diferencia.',
  wrong: 'No se empezó nada: algo de arriba no es como puede ser, y se dice en su campo.',
  run: 'Probar las dos',
  cancel: 'Parar',
  running: (f, say) => `${say.number(f.percent)} % hecho`,
  cancelled: 'Parado. No se calculó nada.',
  failed: 'No se pudo calcular en este dispositivo.',
  asTextbook: 'como dice el manual',
  asRule: 'como pide la regla',
  yes: 'sí',
  no: 'se omite',
  homeNone: 'no se mide en casa',

  rule: 'Lecturas y su media según',
  readings: 'Lecturas en una visita',
  visits: 'Visitas',
  restMinutes: 'Reposo antes (min)',
  measuredBy: 'Quién mide',
  'by-known': 'alguien conocido',
  'by-nurse': 'enfermería',
  'by-doctor': 'medicina',
  pulseWindowSeconds: 'El pulso se cuenta durante (s)',
  breathsWindowSeconds: 'Las respiraciones se cuentan durante (s)',
  notCounted: 'no se cuentan',
  countClock: 'El reloj de un recuento empieza',
  'clock-any': 'en cualquier momento',
  'clock-beat': 'en un latido o una respiración',
  countFirst: 'El primero se llama',
  'calls-1': 'uno',
  'calls-0': 'cero',
  mostPerBeatMmHg: 'No más rápido que (mmHg por latido)',
  noSuchCare: 'sin ese cuidado',
  thresholdDb: 'Oye peor de lo habitual en (dB)',
  gapSeconds: 'Entre dos lecturas (s)',
  faults: 'Lo que se hace mal antes de inflar',
  faultsSay:
    'Cada cosa como parte de los observadores, de 0 a 1; el manguito equivocado es el de adulto en todo brazo, el brazo bajo una mano en el regazo. Quite una solo en la primera manera para ver qué se ganaría al enseñarla.',
  nobody: 'nadie',
  cuff: 'Manguito elegido según',
  'adult-for-all': 'el de adulto para todos',
  palpatesFirst: 'Se palpa antes el pulso',
  marginMmHg: 'Se infla por encima de donde se fue (mmHg)',
  peakMmHg: 'Se infla hasta, sin palpar (mmHg)',
  rateMmHgPerSecond: 'Se desinfla (mmHg/s)',
  reactionSeconds: 'La aguja se lee después de (s)',
  tenShare: 'Lecturas redondeadas a diez (0 a 1)',
  guideline: 'Categoría según',
  'home/days': 'Días en casa',
  'home/readingsPerDay': 'Lecturas al día en casa',
  'home/droppedDays': 'Días que se omiten en casa',

  results: 'Lo que salió',
  ofPeople: (f, say) => `SIMULADO: ${say.counted(f.people, PEOPLE)}.`,
  errorsSay:
    'Tras cada número va su error de Monte Carlo: un error estándar de este estudio. Con cuatro veces más personas queda en la mitad.',
  pairedSay: (f) =>
    `${f.apart}, ${f.isSure ? 'más de lo que explica el azar solo' : 'lo que el azar solo puede explicar'}. Primera manera ${f.first}, segunda manera ${f.second}.`,
  systolicApart: (f, say) =>
    `Sistólica: ${apartBy(f, 'mmHg más baja con la primera', 'mmHg más alta con la primera', say)}`,
  diastolicApart: (f, say) =>
    `Diastólica: ${apartBy(f, 'mmHg más baja con la primera', 'mmHg más alta con la primera', say)}`,
  wrongApart: (f, say) =>
    `Personas en una categoría equivocada: ${apartBy(f, 'puntos porcentuales menos con la primera', 'puntos porcentuales más con la primera', say)}`,
  minutesApart: (f, say) =>
    `Tiempo de clínica por persona: ${apartBy(f, 'minutos menos con la primera', 'minutos más con la primera', say)}`,
  biasSystolic: 'Sistólica demasiado alta (+) o baja (−)',
  biasDiastolic: 'Diastólica demasiado alta (+) o baja (−)',
  sdSystolic: 'Sistólica: DE del error',
  sdDiastolic: 'Diastólica: DE del error',
  within5: 'Sistólica a no más de 5 mmHg',
  within10: 'Sistólica a no más de 10 mmHg',
  within15: 'Sistólica a no más de 15 mmHg',
  up: 'Categoría demasiado alta',
  down: 'Categoría demasiado baja',
  minutes: 'Minutos de clínica por persona',
  readingsEach: 'Lecturas por persona',
  without: 'Sin ningún número',
  minutesText: (f, say) => withError(f.amount, f.error, ' min', say),
  mmHgText: (f, say) => withError(f.amount, f.error, ' mmHg', say),
  shareText: (f, say) => withError(f.amount, f.error, ' %', say),
  'counts-pulse': 'Recuentos del pulso, por minuto',
  'counts-breaths': 'Recuentos de respiraciones, por minuto',
  'pulse-all': 'Todas las contadas: una de cada cuatro',
  'pulse-regular': 'Un pulso regular de 60 o más',
  'pulse-slow': 'Un pulso regular de menos de 60',
  'pulse-irregular': 'Irregular, también por latidos adelantados',
  'breaths-all': 'Todas las contadas: una de cada cuatro',
  'breaths-regular': 'Respiración regular de 12 o más',
  'breaths-slow': 'Respiración regular de menos de 12',
  'breaths-irregular': 'Respiración que va y viene',
  countText: (f, say) =>
    `${f.bias < 0 ? '−' : '+'}${say.number(Math.abs(f.bias), 1)} (± ${say.number(f.error, 2)}), DE ${say.number(f.sd, 1)}; a no más de 4: ${say.percent(f.within4)}; n = ${say.number(f.people)}`,
  countNobody: 'muy pocas personas',
  countPair: (f, say) =>
    `En las mismas personas la primera manera se equivoca en ${say.number(Math.abs(f.mean), 2)} por minuto ${f.mean < 0 ? 'menos' : 'más'} que la segunda (± ${say.number(f.error, 2)})${f.isSure ? '' : ', lo que el azar solo puede explicar'}.`,
  number: (f, say) => say.number(f.amount, 1),
  estimateSays: (f) => `${f.way}, ${f.label}: ${f.text}.`,
  figure: 'En qué se equivocan las dos maneras',
  figureKey:
    'Círculo lleno: primera manera. Cuadrado hueco: segunda manera. La línea de cada uno: dónde está el valor de infinitas personas, en 19 estudios de 20.',
  table: 'Estos números en una tabla',
  isOld: 'Algo se cambió arriba desde entonces: estos resultados son de lo que se pidió antes.',
  limits:
    'Esto es un modelo de personas, no personas: no conoce a ningún paciente, y dice qué manera queda más cerca del nivel habitual, no cuál es la adecuada para un lugar.',
};
