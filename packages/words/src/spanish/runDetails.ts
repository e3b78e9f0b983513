import type { runDetails as english } from '../english/runDetails.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

const REPEAT = 'vacíe el manguito, deje reposar el brazo y repita';

/** As in `english/runDetails`. */
export const runDetails: Reworded<typeof english> = {
  'palpated-only': (f, say) =>
    `Palpada y no oída: ${say.short(f.value('systolic'))} suele ser lo que daría el oído o algo menos, y no hay diastólica. Escríbalo como ${say.short(f.value('systolic'))}/P y no rellene nada.`,
  'started-inside-sounds': (f, say) =>
    `Había ruidos casi nada más empezar a desinflar desde ${say.short(f.value('peakMmHg'))} (el primero en ${say.short(f.value('firstMmHg'))}), así que la sistólica verdadera puede ser mayor: ${REPEAT}, inflando más.`,
  'pulse-not-stopped': (f, say) =>
    `El pulso se notó casi nada más empezar a desinflar desde ${say.short(f.value('peakMmHg'))} (en ${say.short(f.value('firstMmHg'))}) y quizá no llegó a desaparecer, así que la sistólica verdadera puede ser mayor: ${REPEAT}, inflando más.`,
  'margin-small': (f, say) =>
    `El manguito se infló ${marginSaid(f, say)}; con menos de ${say.limit(f.value('smallMarginMmHg'))} mmHg por encima, una laguna silenciosa puede ocultar la sistólica verdadera, que puede ser mayor: ${REPEAT}, inflando ${say.limit(f.value('wantedMmHg'))} por encima.`,
  'possible-gap': (f, say) =>
    `El pulso se notó hasta ${say.short(f.value('palpatedMmHg'))}, que está ${say.short(f.value('aboveMmHg'))} por encima del primer ruido (${say.short(f.value('systolic'))}): los ruidos pueden haber empezado más arriba y haberse apagado, así que la sistólica verdadera puede ser mayor. Deje reposar el brazo, infle bastante por encima de ${say.short(f.value('palpatedMmHg'))} y ausculte desde ahí.`,
  'gap-heard': (f, say) =>
    `Hubo silencio de ${say.short(f.value('fromMmHg'))} a ${say.short(f.value('toMmHg'))} y los ruidos volvieron; la sistólica y la diastólica son las de fuera de la laguna. Registre la laguna junto a ellas e infle la próxima vez por encima.`,
  're-inflated': (f, say) =>
    `El manguito se volvió a inflar a medio camino${f.has('fromMmHg') ? ` (de ${say.short(f.value('fromMmHg'))} a ${say.short(f.value('toMmHg'))})` : ''}, lo que cambia los ruidos: no se puede dar velocidad ni intervalo. No se fíe de estos números: ${REPEAT}.`,
  'early-too-fast': (f, say) =>
    `Antes de captar el primer latido el manguito bajó ${fall(f, say, 'fastestMmHgPerSecond')} mmHg por segundo, más rápido que ${say.limit(f.value('fastestMmHgPerSecond'))}, así que la sistólica puede haberse leído demasiado baja: ${REPEAT} más despacio.`,
  'early-too-slow': (f, say) =>
    `Antes de captar el primer latido el manguito bajó ${fall(f, say, 'slowestMmHgPerSecond')} mmHg por segundo, más lento que ${say.limit(f.value('slowestMmHgPerSecond'))}: una compresión larga es molesta y puede por sí misma cambiar los números. Desinfle algo más rápido la próxima vez.`,
  'too-fast': (f, say) =>
    `En conjunto el manguito bajó ${fall(f, say, 'fastestMmHgPerSecond')} mmHg por segundo, más rápido que ${say.limit(f.value('fastestMmHgPerSecond'))}, así que la sistólica puede haberse leído demasiado baja y la diastólica demasiado alta: ${REPEAT} más despacio.`,
  'too-slow': (f, say) =>
    `En conjunto el manguito bajó ${fall(f, say, 'slowestMmHgPerSecond')} mmHg por segundo, más lento que ${say.limit(f.value('slowestMmHgPerSecond'))}: una compresión larga es molesta y puede por sí misma cambiar los números. Desinfle algo más rápido la próxima vez.`,
  'too-fast-per-beat': (f, say) =>
    `El manguito bajó ${onItsSide(f.value('dropPerBeatMmHg'), f.value('fastestPerBeatMmHg'), say)} mmHg en cada latido, más de ${say.limit(f.value('fastestPerBeatMmHg'))}, así que la sistólica puede haberse leído otro tanto de menos y la diastólica otro tanto de más: ${REPEAT} más despacio.`,
  'too-soon': (f, say) =>
    `El manguito se infló ${say.beside(f.value('waitedSeconds'), f.value('neededSeconds'))} s después de vaciarse, antes de ${say.limit(f.value('neededSeconds'))} s, y los números pueden estar desviados: deje reposar el brazo y repita.`,
  'off-graduation': (f, say) =>
    `Un manómetro marcado cada ${say.limit(f.value('gaugeStepMmHg'))} mmHg no puede mostrar ${say.allOf(offMarks(f, say))}: ¿redondeado, promediado o leído en una pantalla? Compruébelo y registre la marca que se leyó.`,
  'to-zero': (f, say) =>
    f.has('muffled')
      ? `Se oyeron ruidos hasta ${say.short(f.value('diastolic'))}, así que para la diastólica se usa ${say.short(f.value('muffled'))}, donde se amortiguaron. Escriba los tres números, apoye el estetoscopio con menos fuerza y repita.`
      : `Se oyeron ruidos hasta ${say.short(f.value('diastolic'))} y nadie anotó dónde se amortiguaron, así que esta diastólica es dudosa: apoye el estetoscopio con menos fuerza, atienda a la amortiguación y repita.`,
  'zero-without-muffled': () =>
    'Una diastólica de 0 sin el punto donde se amortiguaron los ruidos no se puede promediar, puntuar ni clasificar, así que no se usa ninguna: repita, apoyando con suavidad, y anote dónde se amortiguan.',
  'implausible-systolic': (f, say) =>
    `Una sistólica de ${outside(f, say, 'systolic', 'lowestSystolic', 'highestSystolic')}: mire primero a la persona y actúe según su protocolo local, compruebe si es un error de escritura y mida de nuevo.`,
  'implausible-diastolic': (f, say) =>
    `Una diastólica de ${outside(f, say, 'diastolicUsed', 'lowestDiastolic', 'highestDiastolic')}: mire primero a la persona y actúe según su protocolo local, compruebe si es un error de escritura y mida de nuevo.`,
  'implausible-pulse-pressure': (f, say) =>
    `Entre los dos números hay una distancia de ${outside(f, say, 'pulsePressureMmHg', 'smallestPulsePressureMmHg', 'largestPulsePressureMmHg')}: uno de ellos puede ser un error, así que compruebe lo que se leyó y mida de nuevo.`,
  'range-too-narrow': () =>
    'El ritmo se notó irregular y los intervalos valen para un pulso regular, así que aquí son demasiado estrechos: desinfle despacio y tome más lecturas.',
  'device-with-irregular': () =>
    'El ritmo se notó irregular y esto se leyó en una pantalla, que entonces puede desviarse mucho: mida por auscultación; donde no se pueda, tome tres seguidas.',
  'no-diastolic-by-palpation': () =>
    'Por palpación solo hay sistólica: no se puede palpar ninguna diastólica.',
  'read-from-display': () =>
    'Leído en una pantalla: no se sabe cómo llegó a sus números, así que no hay velocidad ni intervalo.',
  'no-peak': () =>
    'No se anotó hasta dónde se infló el manguito, así que no se puede dar la primera velocidad, el intervalo de la sistólica ni el margen.',
  'not-palpated': () =>
    'No se anotó dónde desapareció el pulso, así que no se puede dar el margen: pálpelo antes de auscultar.',
  'not-timed': () =>
    'Los momentos no tienen tiempos, así que no se pueden dar velocidades ni intervalos: haga que se marquen con una tecla, un pedal u otra persona.',
  'moments-too-close': () =>
    'Dos momentos distaron menos de un segundo, demasiado poco para dar una velocidad.',
  'no-pulse': () =>
    'No se conoce el pulso, así que no se puede dar la bajada por latido ni los intervalos: cuéntelo antes de inflar el manguito.',
  'silence-not-heard': () =>
    'No es seguro que hubiera un latido silencioso antes del primero captado, así que no se puede decir hasta dónde puede llegar la sistólica.',
};

/** A rate on its own side of the limit that it broke. */
function fall(f: Figures, say: Say, limit: string): string {
  return onItsSide(f.value('mmHgPerSecond'), f.value(limit), say);
}

/** As fine as anybody measures a rate. */
const RATE_DECIMALS = 2;

/** A rate with one decimal, with two where it takes them to stand on its side of the limit, and no more. */
function onItsSide(value: number, limit: number, say: Say): string {
  return (
    say.onItsSide(value, limit, RATE_DECIMALS) ??
    `apenas ${value > limit ? 'más' : 'menos'} de ${say.limit(limit)}`
  );
}

function marginSaid(f: Figures, say: Say): string {
  const margin = f.value('marginMmHg');
  if (margin === 0) return 'justo hasta donde desapareció el pulso';
  const by = `${say.beside(Math.abs(margin), f.value('smallMarginMmHg'))} mmHg`;
  return margin > 0
    ? `${by} por encima de donde desapareció el pulso`
    : `hasta ${by} por debajo de donde desapareció el pulso`;
}

/** The numbers that the gauge has no mark for. */
function offMarks(f: Figures, say: Say): string[] {
  return ['systolic', 'muffled', 'diastolic'].filter(f.has).map((key) => say.short(f.value(key), 3));
}

/** A number with the end of the plausible span that it lies beyond. */
function outside(f: Figures, say: Say, key: string, lowest: string, highest: string): string {
  const value = f.value(key);
  const isLow = value < f.value(lowest);
  const limit = f.value(isLow ? lowest : highest);
  return `${say.beside(value, limit)} mmHg, ${isLow ? 'menos' : 'más'} de ${say.limit(limit)}`;
}
