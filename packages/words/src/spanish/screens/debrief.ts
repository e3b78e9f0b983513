import type { debrief as english } from '../../english/screens/debrief.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';
import { debriefFaults } from './debriefFaults.js';

const EXERCISES = { one: 'ejercicio', other: 'ejercicios' };
const READINGS = { one: 'lectura', other: 'lecturas' };
const SOUNDS = { one: 'ruido', other: 'ruidos' };

/** Si una diferencia es más que nada tal como se muestra. */
function isAny(mmHg: number): boolean {
  return Math.abs(mmHg) >= 0.05;
}

/** Una diferencia con su signo y un decimal. */
function signed(mmHg: number, say: Say, decimals = 1): string {
  const size = Math.abs(mmHg);
  if (size < 0.5 / 10 ** decimals) return say.number(0, decimals);
  return `${mmHg > 0 ? '+' : '−'}${say.number(size, decimals)}`;
}

/** As in `english/screens/debrief`. */
export const debrief: Reworded<typeof english> = {
  feltNoFinger:
    'Ningún dedo estaba en la muñeca mientras bajaba el manguito: este número no se palpó. Por palpación es la presión a la que el pulso vuelve bajo los dedos.',
  feltNothing: 'El pulso no había vuelto bajo los dedos: este número no se palpó.',
  feltAt: (f, say) =>
    `El primer pulso que los dedos podían palpar volvió con ${say.number(Math.round(f.mmHg))} mmHg en el manguito.`,
  title: 'Repaso',
  titleOf: (f) => `Repaso: ${f.name}`,
  missing: 'No hay aquí ningún ejercicio con este identificador.',
  unreadable: 'Este ejercicio lo guardó un programa más nuevo y este no puede reproducirlo.',
  otherModel: (f, say) =>
    `Esto se practicó con el modelo ${say.number(f.model)} de la persona simulada. Este programa tiene el modelo ${say.number(f.now)}, en el que latidos y ruidos caen en otro lugar, así que ya no se puede juzgar.`,
  wroteSays: (f) => `Usted escribió ${f.text} mmHg.`,
  listTitle: 'Ejercicios hasta ahora',
  listBack: 'Todos los ejercicios',
  older: 'Anteriores',
  noneJudged: 'Este programa no puede valorar ninguno: se hicieron con un modelo anterior de las personas.',
  listNone: 'Todavía no se ha guardado ningún ejercicio.',
  listOf: 'De quién son los ejercicios',
  made: (f) => `${f.name}, ${f.when}`,
  openOne: 'Abrir',
  by: (f) => `De ${f.name}, ${f.when}`,
  invented: 'Una persona inventada',

  judgedByVersion: 'Juzgado por el protocolo que regía cuando se guardó:',
  judgedByNone:
    'Juzgado por las reglas generales: cuando se guardó no se había elegido aquí ningún protocolo.',
  judgedByNow:
    'Se guardó antes de que se guardara con él el protocolo de su día: se juzga por lo que rige aquí ahora.',
  judgedByNotHere:
    'El protocolo con el que se guardó no está entre los de este lugar: se juzga por lo que rige aquí ahora.',
  judgedByNotReached:
    'El protocolo con el que se guardó no se pudo obtener: se juzga por lo que rige aquí ahora, hasta que se pueda.',

  round: 'Sus lecturas como toma completa',
  roundBy: (f) => `Promediadas por la regla del protocolo: ${f.rule}.`,
  roundByGeneral: (f) =>
    `No se había elegido ningún protocolo, así que se promedian por la regla general: ${f.rule}.`,
  roundReading: (f, say) => `Lectura ${say.number(f.number)}`,
  roundColumn: 'Lectura',
  roundWrote: 'Usted escribió',
  roundHad: 'Se podía obtener',
  roundTruth: 'Verdadero de media',
  roundAverage: 'Promedio',
  isAveraged: 'en el promedio',
  'notAveraged-rule': 'no entra en el promedio por esta regla',
  'notAveraged-other-arm': 'no entra en el promedio: el otro brazo',
  'notAveraged-other-posture': 'no entra en el promedio: otra postura',
  'notAveraged-other-site': 'no entra en el promedio: otro lugar',
  'notAveraged-no-diastolic': 'no entra en el promedio: sin diastólica',
  'notAveraged-standing': 'no entra en el promedio: de pie',
  'notAveraged-laid-down': 'fuera de la media: después de acostarla por cómo estaba de pie',
  averageOf: (f, say) => `de ${say.form(f.count, { one: 'la lectura', other: 'las lecturas' })} ${f.numbers}`,
  acceptedBoth: 'sí',
  acceptedOne: (f) => `solo la ${f.part}`,
  averageOff: (f, say) =>
    `Su promedio está a ${signed(f.systolic, say)}/${signed(f.diastolic, say)} mmHg de lo mejor que se podía obtener en las mismas lecturas.`,
  averageYes: (f, say) => `Aceptado: los dos números a no más de ${say.short(f.withinMmHg)} mmHg.`,
  averageOne: (f, say) =>
    `Aceptado a medias: la ${f.part} a no más de ${say.short(f.withinMmHg)} mmHg; la ${f.other}, no.`,
  averageNot: (f, say) => `Todavía no aceptado: los dos números a más de ${say.short(f.withinMmHg)} mmHg.`,
  averageNothing: 'En una de estas lecturas no se podía obtener nada, así que el promedio no se juzga.',
  averageTruth: (f, say) =>
    `De lo verdadero de media está a ${signed(f.systolic, say)}/${signed(f.diastolic, say)} mmHg.`,
  averageNone: 'Por esta regla no hay promedio de estas lecturas.',
  roundNeeds: 'Lo que pide la regla',
  roundWhich: 'Mirar una lectura',

  reading: 'Su lectura',
  number: 'Número',
  wrote: 'Usted escribió',
  truth: 'Verdadero de media',
  had: 'Se podía obtener',
  error: 'Lo suyo menos eso',
  asTheyWere: 'Se podía oír tal como estaba todo',
  ofReading: 'Lo suyo menos eso: mano, oído y ojo',
  hadPrepared: 'Se podía obtener con todo preparado según el manual',
  ofPreparing: 'Tal como estaba todo menos eso: la preparación',
  errorInAll: 'Lo suyo menos eso: las dos partes juntas',
  asTheyWereHint:
    'Se podía oír tal como estaba todo: lo que habrían escrito en ese mismo momento la mano, el oído y el ojo del manual con la persona, el manguito, el manómetro y el lugar tal como usted los dejó.',
  readRightSays: (f, say) =>
    `La ${f.part} la leyó bien: tal como estaba todo se podía oír ${say.number(f.asTheyWere)}. Lo que no se preparó la hizo ${say.number(Math.abs(f.ofPreparing))} mmHg demasiado ${f.ofPreparing > 0 ? 'alta' : 'baja'}: con todo preparado según el manual, se podía obtener ${say.number(f.had)}.`,
  cancelledSays: (f, say) =>
    `La ${f.part} queda cerca por suerte: mano, oído y ojo la movieron ${signed(f.ofReading, say, 0)} mmHg, lo que no se preparó ${signed(f.ofPreparing, say, 0)}.`,
  bothPartsSays: (f, say) =>
    `De la ${f.part}, ${signed(f.ofReading, say, 0)} mmHg son de mano, oído y ojo, y ${signed(f.ofPreparing, say, 0)} de lo que no se preparó.`,
  accepted: 'Aceptado',
  isAccepted: 'sí',
  isFar: 'bien leída, pero lejos de la verdadera de media',
  isNotAccepted: 'todavía no',
  notWritten: 'sin escribir',
  truthHint:
    'Se podía obtener: lo que habrían escrito en ese mismo momento la mano del manual y un ojo en la aguja, con los mismos latidos y con la persona, el manguito y el lugar preparados según el manual, a la marca más cercana. Por eso se le juzga. Verdadero de media: lo que habría oído un oyente perfecto en el minuto alrededor de su lectura, con la persona preparada según el manual.',
  spreadSays: (f) =>
    `Tanto varía el propio corazón: veinte desinflados según el manual, empezados a no más de cinco segundos del suyo, habrían dado ${f.text}.`,
  spreadOf: (f, say) => `${f.part} de ${say.number(f.lowMmHg)} a ${say.number(f.highMmHg)}`,
  systolic: 'sistólica',
  diastolic: 'diastólica',
  wristRow: 'pulso en la muñeca',
  heartRow: 'latidos del corazón',
  deficitRow: 'latidos que no llegan',
  muffledRow: 'diastólica, al apagarse',
  muffledPart: 'diastólica en la que se apagaron los ruidos',
  muffledHint:
    'Los ruidos siguieron mucho más abajo; por eso la diastólica es el número en el que se apagaron. También lo que costó cada falta se calcula para ese número.',
  goneOnSays:
    'Los ruidos siguieron muy por debajo de la diastólica y no se podía oír que se apagaran: aquí el último ruido dice poco. Repita con la campana apoyada con suavidad, y diga junto al número que los ruidos siguieron.',
  bothAccepted: (f, say) =>
    `Aceptado: los dos números están a no más de ${say.short(f.withinMmHg)} mmHg de lo que se podía obtener en ese momento.`,
  oneAccepted: (f, say) =>
    `Aceptado a medias: la ${f.part} está a no más de ${say.short(f.withinMmHg)} mmHg de lo que se podía obtener en ese momento; la ${f.other}, no.`,
  oneAlone: (f, say) =>
    `Aceptado: la ${f.part} está a no más de ${say.short(f.withinMmHg)} mmHg de lo que se podía obtener en ese momento; no se escribió la ${f.other}.`,
  oneAloneNot: (f, say) =>
    `Todavía no aceptado: la ${f.part} está a más de ${say.short(f.withinMmHg)} mmHg de lo que se podía obtener en ese momento; no se escribió la ${f.other}.`,
  noneAccepted: (f, say) =>
    `Todavía no aceptado: los dos números están a más de ${say.short(f.withinMmHg)} mmHg de lo que se podía obtener en ese momento.`,
  eachAccepted: (f, say) =>
    `Aceptado: la ${f.part} está a no más de ${say.short(f.withinMmHg)} mmHg de lo que se podía obtener en ese momento.`,
  eachNot: (f, say) =>
    `Todavía no aceptado: la ${f.part} está a más de ${say.short(f.withinMmHg)} mmHg de lo que se podía obtener en ese momento.`,
  eachFar: (f, say) =>
    `Leída como se podía oír, y aun así no es la de esta persona: la ${f.part} está ${say.number(Math.abs(f.mmHg))} mmHg por ${f.mmHg > 0 ? 'encima' : 'debajo'} de la verdadera de media.`,
  'within-irregular': (f, say) =>
    `El límite es de ${say.short(f.withinMmHg)} mmHg en esta persona, y no los ${say.short(f.usualMmHg)} de costumbre: no hay dos latidos iguales, así que un solo desinflado dice menos.`,
  'within-faint': (f, say) =>
    `El límite es de ${say.short(f.withinMmHg)} mmHg en esta persona, y no los ${say.short(f.usualMmHg)} de costumbre: los ruidos son tan débiles, o van y vienen tanto con la respiración, que nadie encuentra mejor dónde empiezan y acaban.`,
  'within-own': (f, say) =>
    `El límite es de ${say.short(f.withinMmHg)} mmHg en esta persona, y no los ${say.short(f.usualMmHg)} de costumbre: lo eligió quien describió a esta persona.`,
  chanceSays: (f, say) =>
    `La ${f.part} que se podía obtener estaba ${say.number(Math.abs(f.mmHg))} mmHg por ${f.mmHg > 0 ? 'encima' : 'debajo'} de la verdadera de media: los latidos difieren por sí mismos, y eso no es su mano. Una segunda lectura lo muestra.`,
  chanceBreathSays: (f, say) =>
    `La sistólica que se podía obtener estaba ${say.number(Math.abs(f.mmHg))} mmHg por ${f.mmHg > 0 ? 'encima' : 'debajo'} de la verdadera de media: con cada inspiración cae mucho, y un manguito que baja a la velocidad habitual la encuentra o no. Desinfle mucho más despacio, y diga dónde vienen los primeros ruidos y dónde vienen con cada latido.`,
  feelSays: (f, say) =>
    `Por palpación se podían obtener ${say.number(Math.abs(f.mmHg))} mmHg ${f.mmHg > 0 ? 'más' : 'menos'} que de oído: el dedo nota el pulso un poco después del primer ruido.`,
  luckSays: (f, say) =>
    `La ${f.part} que escribió queda cerca de la verdadera de media, pero por suerte: en ese momento se podía obtener ${say.number(f.mmHg)}.`,
  unmeasured:
    'No aceptado, sean cuales sean los números: no se midió nada. No se infló ni desinfló ningún manguito del que pudieran venir.',
  unheard:
    'No aceptado, sean cuales sean los números: en este desinflado no había nada que oír de lo que pudieran venir.',
  unfelt:
    'No aceptado, sea cual sea el número: en este desinflado no volvió bajo un dedo ningún pulso del que pudiera venir.',
  noReading: 'No se escribió ninguna presión.',
  nothingAtAll: 'No se escribió nada, así que no hay nada que juzgar.',
  flagSeen: (f) => `Usted dijo que aquí algo no puede esperar. Así es: ${f.part}.`,
  flagMissed: (f) =>
    `Aquí algo no podía esperar, y no se dijo: ${f.part}. Actúe ante un signo así antes que nada, según el procedimiento de su lugar.`,
  flagUnknowable: (f) =>
    `Aquí se podía encontrar ${f.part}, que hay que avisar enseguida. Con el número que escribió nadie podía saberlo: primero va la lectura.`,
  flagNoneSaid:
    'Usted dijo que aquí algo no puede esperar. Esta persona se hizo sin un signo así; preguntar una vez de más no es una falta.',
  flagNoneNeeded: 'Usted dijo que aquí no hay nada que avisar enseguida. Así es.',
  flagNotAsked: (f) => `Aquí algo no puede esperar: ${f.part}.`,
  'severe-pressure': 'una presión grave',
  'severe-in-pregnancy': 'una presión grave en el embarazo',
  shock: 'un patrón compatible con choque',
  paradox: 'una sistólica que baja mucho con cada inspiración',
  'pressure-with-slow-pulse': 'una presión alta con pulso lento y respiración desigual',
  'slow-breathing': 'una respiración muy lenta',
  'fast-breathing': 'una respiración profunda y rápida',
  'very-slow-pulse': 'un pulso muy lento',
  'very-fast-pulse': 'un pulso muy rápido',
  'fever-with-fast-pulse': 'fiebre con pulso rápido',

  oneThing: 'Una cosa que hacer de otro modo',
  oneThingSays: (f, say) => {
    const moved = [
      ...(f.systolic === null ? [] : [{ whose: 'su sistólica', mmHg: f.systolic, back: f.systolicBack }]),
      ...(f.diastolic === null ? [] : [{ whose: 'su diastólica', mmHg: f.diastolic, back: f.diastolicBack }]),
    ];
    const any = moved.filter(({ mmHg }) => isAny(mmHg));
    if (any.length === 0) return `${f.instead} ${f.fault}: esta vez no movió ningún número.`;
    return `${f.instead} ${f.fault}: eso movió ${any.map(({ whose, mmHg, back }) => `${whose} ${signed(mmHg, say)} mmHg${back === null ? '' : ` (todo lo demás junto la devolvió ${signed(back, say)})`}`).join(' y ')}.`;
  },
  oneThingWhy: (f) => `${f.instead} ${f.what}.`,
  lessonSays: (f) => `${f.text} Para enseñar eso está esta persona.`,
  lessonUnwell: (f) =>
    `Mientras llega la ayuda, según su procedimiento local: ${f.text} A quien se avisa, eso pregunta después.`,
  gapWas: (f, say) =>
    `Los ruidos empezaron en ${say.number(f.firstMmHg)}, callaron por debajo de ${say.number(f.topMmHg)} y volvieron en ${say.number(f.backMmHg)} mmHg.`,
  gapFelt: (f, say) =>
    `Usted había notado el pulso hasta ${say.number(f.mmHg)} mmHg: un primer ruido muy por debajo es motivo para escuchar otra vez.`,
  'nothing-excused':
    'Lo que movió esta lectura no había tiempo de corregirlo: con quien no puede esperar, primero es la ayuda. Nada más de lo que se encontró la habría movido más de lo que muestra un manómetro.',
  'nothing-unexplained':
    'Esta lectura se desvía, y ninguna cosa de las que se hicieron dice por qué. Mire abajo lo que movió sus números y tómela otra vez.',
  'nothing-small': 'Nada de lo que se hizo mal movió esta lectura más de lo que muestra un manómetro.',
  'nothing-none': 'En esta lectura nada se hizo mal, hasta donde se puede saber.',
  sameAgain: 'Hágalo otra vez igual.',
  reportsMore: 'Lo demás que un buen observador informa de esta persona está al final.',

  costs: 'Lo que movió sus números',
  costsHint:
    'Cuánto más alto (más) o más bajo (menos) hizo su número cada una de estas cosas. Se obtiene reproduciendo la misma visita con cada una corregida; lo que varias hacen juntas se reparte con justicia entre ellas.',
  fault: 'Qué',
  systolicCost: 'Su sistólica, mmHg',
  diastolicCost: 'Su diastólica, mmHg',
  instead: 'En su lugar',
  cost: (f, say) => (f.mmHg === null ? 'sin número' : signed(f.mmHg, say)),
  noNumber:
    'Sin número: con algunas de estas faltas no quedaba nada que oír, y su costo no se puede repartir.',
  noNumberUnmeasured:
    'Sin número: no se midió nada, así que no hay lectura de la que una parte se deba a nada de esto.',
  noNumberUnheard:
    'Sin número: no se oyó nada, así que no hay lectura de la que una parte se deba a nada de esto.',
  noNumberUnfelt:
    'Sin número: no se palpó nada, así que no hay lectura de la que una parte se deba a nada de esto.',
  left: 'el resto',
  leftHint: 'no es falta de nadie: una reacción corriente, el redondeo y los latidos que tocaron',
  leftUnknown: 'no se sabe: los ruidos no se marcaron a tiempo',
  leftFirstUnknown:
    'sistólica: no se sabe, se escribió sin marca; diastólica: no es falta de nadie, una reacción corriente, el redondeo y los latidos que tocaron',
  leftLastUnknown:
    'sistólica: no es falta de nadie, una reacción corriente, el redondeo y los latidos que tocaron; diastólica: no se sabe, se escribió sin marca',
  total: 'lo suyo menos lo que se podía obtener',
  costsSum:
    'Cada línea es la media de veinte desinflados empezados a no más de cinco segundos del suyo; el resto es lo que este tuvo de distinto.',
  noFaults: 'Nada que se hiciera mal los movió.',
  letDownSays: (f, say) =>
    `${say.number(f.mmHgPerSecond, 1)} mmHg por segundo desde donde empiezan los ruidos hasta donde acaban, ${say.number(f.seconds)} s en total`,
  letDownHeld: (f, say) =>
    `pasados ${say.number(f.afterSeconds)} s la sangre se acumula en el brazo: los ruidos se debilitan y el último llega en un número más alto`,

  ...debriefFaults,

  noGapHere:
    'En esta persona nada se había quedado en silencio. Junto a la persona nadie puede saberlo, y por eso se pide otra lectura desde más arriba.',

  figure: 'El desinflado, tal como fue',
  figureKey:
    'Línea que baja: presión en el manguito. Cada trazo es un ruido, tan alto como fue de fuerte: círculo lleno fase I, círculo hueco II, cuadrado lleno III, cuadrado hueco IV; un punto hueco pequeño es demasiado débil para un oído normal. Triángulos: sus números, hacia abajo la sistólica, hacia arriba la diastólica. A trazos: lo verdadero de media.',
  figureSays: (f, say) =>
    `${say.counted(f.sounds, SOUNDS)} que oye un oído normal, el primero a ${say.number(f.first)} mmHg en el manguito, el último a ${say.number(f.last)}.`,
  figureSilent: 'Ningún ruido que oiga un oído normal.',
  referenceSays: (f, say) => `Lo verdadero: ${say.number(f.systolic)}/${say.number(f.diastolic)} mmHg.`,
  gapSays: (f, say) => `Silencio entre ${say.number(f.topMmHg)} y ${say.number(f.bottomMmHg)} mmHg.`,
  markedSays: (f, say) => `Usted marcó: ${f.what} ${say.number(f.mmHg)} mmHg.`,
  soundSays: (f, say) =>
    `${f.seconds} s: ruido de la fase ${f.phase}, ${say.number(f.cuff)} mmHg en el manguito, ${f.isAudible ? `${say.number(f.db)} dB por encima de lo que apenas oye un oído normal` : 'demasiado débil para un oído normal'}.`,
  momentSays: (f, say) =>
    f.seconds === null
      ? `Su ${f.what}: ${say.number(f.mmHg)} mmHg, sin hora.`
      : `${f.seconds} s: su ${f.what}, ${say.number(f.mmHg)} mmHg.`,
  momentShort: (f, say) => `${f.what} ${say.number(f.mmHg)}`,
  'first sound': 'primer ruido',
  muffled: 'apagado',
  'last sound': 'último ruido',
  'pulse back': 'vuelta del pulso',
  cuffAxis: 'En el manguito, mmHg',
  secondsAxis: 'Segundos desde que el manguito empezó a bajar',
  truthShort: (f, say) => `verdad ${say.number(f.mmHg)}`,
  raisedSays: 'El brazo se levantó antes de inflar: el silencio es más corto por ello.',
  gapShort: 'silencio',
  pulseStrip: 'pulso en el brazo, sin escala',
  tableCaption: 'Cada ruido y cada marca, en orden de tiempo',
  table: 'Cada ruido en una tabla',
  tableSeconds: 'Segundos',
  tableCuff: 'Manguito, mmHg',
  tableWhat: 'Qué',
  tableLoud: 'Fuerza, dB',
  phase: (f) => `ruido, fase ${f.phase}`,
  tooFaint: 'demasiado débil',
  yourMark: (f) => `su ${f.what}`,

  ledger: 'De dónde vino la diferencia',
  ledgerHint:
    'Otra manera de repartir la misma diferencia, para quien la quiera: de lo verdadero de media a lo que escribió, tal como fue este único desinflado. Sus números son otros que los de la tabla de arriba, que son la media de veinte desinflados y parten de lo que se podía obtener; para lo que hay que hacer de otro modo, guíese por aquella tabla.',
  ledgerFold: 'La misma diferencia paso a paso, en este único desinflado',
  ledgerNoNumber:
    'La tabla de arriba no tiene número donde esto tiene pasos: en este único desinflado se oyó algo, y en algunos de los veinte de alrededor, con las mismas faltas, nada.',
  ledgerFigure: (f) => `De lo verdadero a lo que usted escribió: ${f.component}`,
  ledgerSays: (f, say) =>
    `${f.component}: lo verdadero ${say.number(f.truth, 1)}, escrito ${say.number(f.entered)}, diferencia ${signed(f.error, say)} mmHg.`,
  stepSays: (f, say) => `${f.label}: ${signed(f.mmHg, say)} mmHg.`,
  stepColumn: 'Paso',
  mmHgColumn: 'mmHg',
  truthRow: 'lo verdadero',
  enteredRow: 'usted escribió',
  signed: (f, say) => signed(f.mmHg, say),
  signedWhole: (f, say) => signed(f.mmHg, say, 0),
  'part-physiology': 'este latido, no el usual',
  'part-sampling': 'dónde estaba el manguito',
  'part-sampling-low': 'manguito inflado demasiado poco',
  'part-misheard': 'se tomó otro ruido',
  'part-gap': 'se tomó el ruido tras el silencio',
  'part-imagined': 'se marcó donde no había ruido',
  'part-lag': 'aguja leída después',
  'part-gauge': 'manómetro y manguito',
  'part-digit': 'escrito junto a la aguja',
  'part-unsplit': 'oído, ojo y pluma',
  'effect-sitting-down': 'aún sin reposo',
  'effect-first-reading': 'primera vez inflado',
  'effect-white-coat': 'quién midió',
  'effect-standing-up': 'de pie',
  'effect-other-arm': 'el otro brazo',
  'effect-talking': 'hablar',
  'effect-legs-crossed': 'piernas cruzadas',
  'effect-back-unsupported': 'espalda sin apoyo',
  'effect-full-bladder': 'vejiga llena',
  'effect-caffeine': 'café o té',
  'effect-nicotine': 'fumar',
  'effect-cold': 'frío',
  'effect-arm-muscles': 'brazo sin apoyo',
  'effect-arm-height': 'altura del manguito',
  'effect-cuff-size': 'tamaño del manguito',
  'effect-cuff-loose': 'manguito flojo',
  'effect-tight-sleeve': 'manga apretada',
  'effect-pressed-hard': 'campana apretada',
  'effect-under-cuff': 'campana bajo manguito',
  'effect-congestion': 'sangre retenida',

  replay: 'Oírlo otra vez',
  replayHint: 'Con auriculares o un buen altavoz; empiece bajo. Lleva también el ruido del lugar.',
  replayFrom: 'Desde dónde del desinflado',
  replayAt: (f, say) => `${f.seconds} s, ${say.number(f.mmHg)} mmHg en el manguito`,
  replayPlay: 'Oír',
  replayStop: 'Parar',
  replayFirst: 'Justo antes del primer ruido',
  replayMark: (f) => `Justo antes de su ${f.what}`,
  loudness: 'Volumen',
  loudnessSays: (f, say) => say.percent(f.share),
  tooLoud: 'Está alto. Bájelo antes de ponerse los auriculares.',

  others: 'Pulso y respiración',
  pulseSays: (f, say) =>
    Math.round(f.truth) === Math.round(f.felt)
      ? `Pulso: usted escribió ${say.rate(f.entered)} por minuto; en el minuto alrededor había ${say.number(f.truth)}.`
      : `Pulso: usted escribió ${say.rate(f.entered)} por minuto; en el minuto alrededor el corazón latió ${say.number(f.truth)} veces, ${say.number(f.felt)} de ellas palpables en la muñeca.`,
  deficitSays: (f, say) =>
    `Latidos que no llegan: ${say.number(f.entered)} por minuto según sus números, ${say.number(f.truth)} en verdad. Una sola persona cuenta uno tras otro, y ya por eso pueden diferir.`,
  bedsideSays: 'Lo que se dice de este desinflado al pie de la cama',
  shown: 'Los ruidos se mostraron en la pantalla, no se oyeron: esto no dice nada del oído.',
  aidNoSound: 'En este aparato no había sonido, así que esto no dice nada del oído.',
  aidLoudspeaker:
    'Se oyó por un altavoz en lugar de auriculares: los ruidos débiles pueden haberse perdido, así que esto dice poco del oído.',
  aidHelped: 'Se oyó con un audífono o un estetoscopio amplificado: es una adaptación y no una falta.',

  artery: 'Lo que el manguito no puede ver',
  arterySays: (f, say) =>
    `Dentro de la arteria la presión era de ${say.number(f.systolic)}/${say.number(f.diastolic)} mmHg de media. Ningún manguito muestra eso, y su lectura no se compara con ello. En 74 estudios con 3.073 personas la sistólica con manguito quedó 5,7 mmHg más baja y la diastólica 5,5 mmHg más alta que en la arteria, de media; donde las arterias son muy rígidas no son raras diferencias de 30 a 50.`,

  errorsFigure: 'Diferencias a lo largo del tiempo',
  errorsTable: 'Estas diferencias en una tabla',
  errorsKey:
    'Lo suyo menos lo que se podía obtener en ese momento. Punta abajo: sistólica. Punta arriba: diastólica. Por encima de la línea: escrito demasiado alto. Banda gris: aceptado; una marca hueca queda fuera. Una cruz: no se escribió nada.',
  errorsSays: (f, say) => `${say.counted(f.exercises, EXERCISES)}, en el orden en que se hicieron.`,
  errorSays: (f, say) =>
    f.systolic === null && f.diastolic === null
      ? `${f.name}: nada escrito.`
      : `${f.name}: sistólica ${f.systolic === null ? 'sin escribir' : signed(f.systolic, say)}, diastólica ${f.diastolic === null ? 'sin escribir' : signed(f.diastolic, say)} mmHg; aceptado a no más de ${say.short(f.withinMmHg)}.`,
  errorAxis: 'Lo suyo menos lo posible, mmHg',
  exerciseColumn: 'Ejercicio',
  systolicError: 'Sistólica, mmHg',
  diastolicError: 'Diastólica, mmHg',
  bandColumn: 'Aceptado',
  band: (f, say) =>
    f.isAccepted === null
      ? 'nada escrito'
      : `${f.isAccepted ? 'sí' : 'no'}, límite ${say.short(f.withinMmHg)} mmHg`,
  errorOfAverage: (f, say) => `promedio de ${say.counted(f.readings, READINGS)},`,
  errorOfLast: (f, say) => `última de ${say.counted(f.readings, READINGS)},`,
  errorNumber: (f, say) => say.number(f.number),
  errorShort: (f, say) =>
    `desvío ${f.systolic === null ? '–' : signed(f.systolic, say, 0)}/${f.diastolic === null ? '–' : signed(f.diastolic, say, 0)}`,
};
