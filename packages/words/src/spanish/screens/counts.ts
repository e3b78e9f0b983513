import type { counts as english } from '../../english/screens/counts.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';
import { TAPS } from './nouns.js';

/** Una diferencia con su signo, entera. */
function signed(perMinute: number, say: Say): string {
  const size = Math.round(Math.abs(perMinute));
  return size === 0 ? say.number(0) : `${perMinute > 0 ? '+' : '−'}${say.number(size)}`;
}

/** As in `english/screens/counts`. */
export const counts: Reworded<typeof english> = {
  'title-pulse': 'Su pulso',
  'title-apex': 'Su recuento en el ápex',
  'title-breaths': 'Sus respiraciones',
  'name-pulse': 'pulso',
  'name-apex': 'en el ápex',
  'name-breaths': 'respiraciones',
  yes: (f, say) =>
    `Aceptado: usted escribió ${say.rate(f.written)} por minuto; un recuento perfecto de los mismos ${say.number(f.windowSeconds)} s da ${say.number(f.had)}.`,
  not: (f, say) =>
    `Todavía no aceptado: usted escribió ${say.rate(f.written)} por minuto; un recuento perfecto de los mismos ${say.number(f.windowSeconds)} s da ${say.number(f.had)}.`,
  yesBare: (f, say) =>
    `Aceptado: usted escribió ${say.rate(f.written)} por minuto, sin recuento guardado; en el minuto alrededor había ${say.number(f.truth)}.`,
  notBare: (f, say) =>
    `Todavía no aceptado: usted escribió ${say.rate(f.written)} por minuto, sin recuento guardado; en el minuto alrededor había ${say.number(f.truth)}.`,
  yesTaps: (f, say) =>
    `Aceptado, solo la frecuencia: usted escribió ${say.rate(f.written)} por minuto; un toque por cada uno da ${say.number(f.had)}.`,
  notTaps: (f, say) =>
    `Todavía no aceptado: usted escribió ${say.rate(f.written)} por minuto; un toque por cada uno da ${say.number(f.had)}.`,
  tapped: (f, say) =>
    `${say.counted(f.taps, TAPS)}; del primero al último había ${say.number(f.there)} que tocar. ${f.missed === 0 ? 'Ninguno se dejó pasar' : `${say.number(f.missed)} sin toque`}; ${f.extra === 0 ? 'no sobró ningún toque' : `toques de más: ${say.number(f.extra)}`}.`,
  tapsNextMissed:
    'La próxima vez: toque con cada uno según llega, sean los que sean; si dejó pasar uno, empiece de nuevo.',
  tapsNextExtra: 'La próxima vez: un toque por cada uno, y el dedo fuera enseguida.',
  counted: (f, say) =>
    `En sus ${say.number(f.windowSeconds)} s contó ${say.number(f.n)}; había ${say.number(f.there)}.`,
  allows: (f, say) =>
    `En una ventana de ${say.number(f.windowSeconds)} s uno más o menos son ${say.short(f.stepPerMinute)} por minuto; se acepta una diferencia de hasta ${say.short(f.withinPerMinute)} por minuto.`,
  truth: (f, say) => `En el minuto alrededor había ${say.number(f.truth)}.`,
  chance: (f, say) =>
    `En el minuto alrededor había ${say.number(f.truth)}: eso no lo podía dar esta ventana, por bien que contara.`,
  luck: (f, say) =>
    `Lo que escribió está cerca de lo verdadero en el minuto alrededor, ${say.number(f.truth)}, pero por suerte.`,
  'grave-pulse':
    'Tan lejos de la frecuencia verdadera, más de una décima parte, que alguien podría sufrir daño: en una evaluación, un fallo crítico.',
  'grave-breaths':
    'Tan lejos de la frecuencia verdadera, más de 4 por minuto, que alguien podría sufrir daño: en una evaluación, un fallo crítico.',
  better: (f, say) => `Para esta persona habría sido mejor una ventana de ${say.number(f.neededSeconds)} s:`,
  enough: 'Para esta persona esa ventana bastaba.',
  'rhythm-regular-regular': 'Usted anotó que era regular. Así era.',
  'rhythm-irregular-irregular': 'Usted anotó que era irregular. Así era.',
  'rhythm-regular-irregular': 'Usted lo anotó como regular. Era irregular.',
  'rhythm-irregular-regular': 'Usted lo anotó como irregular. Era regular.',
  'rhythm-none-regular': 'Del ritmo no anotó nada; era regular.',
  'rhythm-none-irregular': 'Era irregular, y usted no lo anotó.',
  'rhythm-hidden':
    'En esta ventana venía con regularidad, y sin embargo esta persona es irregular: una ventana más larga lo muestra.',
  strengthRight: (f) => `Usted anotó su fuerza como ${f.strength}. Así era.`,
  strengthWrong: (f) => `Usted anotó su fuerza como ${f.strength}. Era ${f.was}.`,
  strengthNone: (f) => `Era ${f.was}, y usted no anotó su fuerza.`,
  weak: 'débil',
  normal: 'normal',
  strong: 'fuerte',
  oneThing: 'La próxima vez',

  'figure-pulse': 'Su ventana sobre los latidos en la muñeca',
  'figure-apex': 'Su ventana sobre los latidos del corazón',
  'figure-breaths': 'Su ventana sobre las respiraciones',
  figureSays: (f, say) =>
    `Una ventana de ${say.number(f.windowSeconds)} s con ${say.number(f.there)} dentro; se contaron ${say.number(f.n)}.`,
  tapsKey:
    'Cada raya es uno, en el segundo en que vino; debajo, su toque. Una cruz: sin toque; una flecha abierta: uno de más.',
  youCounted: (f, say) => `contó ${say.number(f.n)}`,
  noTap: 'sin toque',
  tap: (f, say) => `Su toque ${say.number(f.number)}, a los ${f.seconds} s`,
  tapExtra: (f, say) => `Su toque ${say.number(f.number)}, a los ${f.seconds} s: uno de más`,
  axisTaps: 's desde su primer toque',
  tableYours: 'Suyo',
  tableTap: (f, say) => `toque ${say.number(f.number)}`,
  tableExtra: (f, say) => `toque ${say.number(f.number)}, uno de más`,
  figureKey:
    'Cada trazo es uno, en el segundo en que vino; el tramo sombreado es la ventana. Los trazos dentro de ella están numerados desde el primero; la flecha señala dónde se habría llegado a su número.',
  'strokeIn-pulse': (f, say) => `Latido ${say.number(f.number)} de la ventana, a los ${f.seconds} s`,
  'strokeIn-apex': (f, say) => `Latido ${say.number(f.number)} de la ventana, a los ${f.seconds} s`,
  'strokeIn-breaths': (f, say) => `Respiración ${say.number(f.number)} de la ventana, a los ${f.seconds} s`,
  strokeOut: (f) => `Fuera de la ventana, a los ${f.seconds} s`,
  axis: 's desde el comienzo de la ventana',
  table: 'Los trazos en números',
  tableNumber: 'En la ventana',
  tableSeconds: 's desde su comienzo',

  errorsFigure: 'Cuánto se acercaron los recuentos, con el tiempo',
  errorsKey:
    'Lo escrito menos lo que da un recuento perfecto de la misma ventana. Círculo: pulso; cuadrado: respiraciones; lleno: aceptado, abierto: todavía no.',
  errorAxis: 'por minuto de más',
  errorSays: (f) => `${f.name}: ${f.text}.`,
  errorOf: (f, say) => `${f.what} ${signed(f.perMinute, say)} por minuto`,
  signed: (f, say) => signed(f.perMinute, say),
  columnPulse: 'Pulso, por minuto',
  columnApex: 'En el ápex, por minuto',
  columnBreaths: 'Respiraciones, por minuto',
  wrote: (f, say) => `${f.what} ${say.rate(f.written)}`,
  off: (f) => `desvío ${f.text}`,

  'title-temperature': 'Temperatura',
  takeTemperature: 'Tomar la temperatura',
  thermometerShows: (f, say) =>
    `El termómetro ${f.place === 'ear' ? 'en el oído' : 'bajo la lengua'} marca ${say.temperature(f.celsius)}.`,
  temperatureWrong: (f, say) =>
    `Un número de ${say.temperatureLimit(f.minimum)} a ${say.temperatureLimit(f.maximum)} con un decimal como máximo.`,
  writeTemperature: 'Anotarla',
  putThermometerAway: 'Guardar el termómetro',
  celsius: (f, say) => say.temperature(f.celsius),
  temperatureWritten: (f, say) => `temperatura ${say.temperature(f.celsius)}`,
  temperatureYes: (f, say) =>
    `Aceptada: usted escribió ${say.temperature(f.written)}, como marcaba el termómetro.`,
  temperatureNot: (f, say) =>
    `Todavía no aceptada: usted escribió ${say.temperature(f.written)}; el termómetro marcaba ${say.temperature(f.shown)}.`,

  reported: 'Lo que un buen observador informa de esta persona',
  is: 'Usted',
  'is-reported': 'informado',
  'is-not-reported': 'no informado',
  'is-not-here': 'aquí no se podía informar',
  'report-both-numbers': 'Los dos números, sistólica y diastólica.',
  'report-second-reading':
    'Una segunda lectura en el mismo brazo y en la misma postura, al cabo de un minuto o más.',
  'report-three-readings': 'Tres lecturas: una sola dice poco cuando no hay dos latidos iguales.',
  'report-palpated-systolic': 'La sistólica por palpación, antes de auscultar.',
  'report-gap': 'El primer ruido por encima del silencio, escrito como sistólica, y no el que viene después.',
  'report-muffled': 'El número en que los ruidos se apagaron, junto al primero y al último.',
  'report-sounds-to-zero': 'Que los ruidos siguieron hasta cero, con tres números.',
  'report-paradox-both-numbers':
    'Los dos números de la caída con cada inspiración: dónde vienen los primeros ruidos y dónde vienen con cada latido.',
  'report-strong-weak-by-turns': 'Que venían latidos fuertes y débiles por turnos, a intervalos iguales.',
  'report-by-feel': 'La sistólica por palpación, escrita como tal, sin diastólica.',
  'report-other-arm':
    'Los dos números de cada brazo, en una misma postura, para que se vea qué brazo es el más alto.',
  'report-standing-readings':
    'Lecturas al minuto y a los tres minutos de estar de pie, junto a las de antes.',
  'report-home-readings': 'Que hacen falta lecturas de casa para saberlo.',
  'report-cuff-by-arm': 'Una lectura con el manguito que pide este brazo.',
  'report-gauge-off':
    'Que la aguja no reposa en cero, o el manguito pierde aire: se pidió otro manómetro en su lugar.',
  'report-noise-of-place': 'Que había demasiado ruido para oír los ruidos más suaves, y un lugar tranquilo.',
  'report-pulse-rate': 'El pulso en la muñeca, como frecuencia.',
  'report-pulse-full-minute': 'El pulso contado durante un minuto entero, en la muñeca o en el ápex.',
  'report-pulse-irregular': 'Que el pulso era irregular.',
  'report-pulse-weak': 'Que el pulso era débil.',
  'report-pulse-strong': 'Que el pulso era fuerte.',
  'report-apex-rate': 'La frecuencia en el ápex junto a la de la muñeca, contadas las dos.',
  'report-breaths-rate': 'Las respiraciones, como frecuencia.',
  'report-breaths-full-minute': 'Las respiraciones contadas durante un minuto entero.',
  'report-breaths-irregular': 'Que la respiración era irregular.',
  'report-breaths-depth': 'Lo profundas que eran las respiraciones.',
  'report-breaths-pattern':
    'Que la respiración crece, mengua y se detiene por turnos, y cuánto tiempo se detiene.',
  'report-temperature': 'La temperatura.',
  'report-act-now': 'Que esto no puede esperar: se avisó enseguida.',
};
