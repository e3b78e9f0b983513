import type { showing as english } from '../../english/screens/showing.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';
import { BREATHS } from './nouns.js';

function pair({ systolic, diastolic }: { systolic: number; diastolic: number }, say: Say): string {
  return `${say.number(systolic)}/${say.number(diastolic)}`;
}

function told(
  { systolic, diastolic }: { systolic: number | null; diastolic: number | null },
  say: Say,
): string {
  const one = (mmHg: number | null) => (mmHg === null ? '–' : say.number(Math.round(mmHg)));
  return diastolic === null ? one(systolic) : `${one(systolic)}/${one(diastolic)}`;
}

function signed(mmHg: number | null, say: Say): string {
  if (mmHg === null) return '–';
  const off = Math.round(mmHg);
  return off === 0 ? say.number(0) : `${off > 0 ? '+' : '−'}${say.number(Math.abs(off))}`;
}

const SECONDS = { one: 'segundo', other: 'segundos' };

export const showing: Reworded<typeof english> = {
  stoppedSound: 'Parado: se quitó el sonido, quizá por una llamada.',
  goOnWithSound: 'Seguir con sonido',
  letterKeys: 'Teclas de una sola letra, solo en la sala',
  'other-gauge': (f, say) =>
    f.mmHg === null || f.mmHg === 0
      ? 'Primero el manómetro que vino con esta persona: no estaba bien y se apartó. Este es otro.'
      : `Primero el manómetro que vino con esta persona: sin aire en el manguito la aguja marcaba ${say.number(f.mmHg)}. Se apartó. Este es otro.`,
  quieter: 'Había demasiado ruido para oír lo suave: primero fueron a un lugar más tranquilo.',
  loud: 'Ninguna sala de aquí es lo bastante tranquila para oír lo suave: la sistólica se toma por palpación, y así se dice.',
  measured:
    'La cinta rodea el centro del brazo: el manguito es aquel en cuyo rango cae, no el que está a mano.',
  pulse: 'Las yemas en la muñeca: se cuenta cada latido de un extremo a otro de la ventana.',
  'pulse-counted': (f, say) =>
    f.n === null
      ? 'La ventana ha terminado. Diga también cómo se sentían.'
      : `${say.number(f.n)} en ${say.counted(f.seconds, SECONDS)}. Regular o no, fuerte o débil: se dice junto al número.`,
  breaths: 'Los dedos siguen en la muñeca, los ojos en el pecho: se cuenta cada subida, y nadie lo dice.',
  'breaths-counted': (f, say) =>
    f.n === null
      ? 'La ventana ha terminado. Diga también cómo venían.'
      : `${say.counted(f.n, BREATHS)} en ${say.counted(f.seconds, SECONDS)}. Cómo vienen se dice junto al número.`,
  sayIt: '¿Cuántos eran?',
  countAlong: 'Cuente también.',
  looking: 'Han pasado cinco minutos tranquilos. El manguito está puesto y vacío. La aguja está en cero.',
  'at-apex':
    'Una persona escucha en el ápex, donde cada par de ruidos es un latido; otra palpa la muñeca, el mismo minuto entero.',
  bothCounted: (f, say) =>
    f.heart === null
      ? 'El minuto ha terminado. Digan qué se oyó y qué se notó.'
      : `${say.number(f.heart)} oídos en el ápex, ${say.number(f.wrist)} notados en la muñeca: ${say.number(f.heart - f.wrist)} por minuto no llegan. Dígalo.`,
  feeling: 'Primero por palpación: los dedos en la muñeca, y subir hasta que el pulso desaparece.',
  lost: (f, say) =>
    f.mmHg === null
      ? 'El pulso desapareció: fuera todo el aire.'
      : `El pulso desapareció en ${say.number(f.mmHg)}: fuera todo el aire.`,
  waiting: 'El brazo descansa un cuarto de minuto, el manguito vacío.',
  pumping: (f, say) =>
    f.mmHg === null
      ? 'Otra vez arriba, al menos 30 por encima de donde desapareció el pulso.'
      : `Otra vez arriba hasta ${say.number(f.mmHg)}, al menos 30 por encima de donde desapareció el pulso.`,
  falling: 'La campana está sobre la arteria. La válvula un poco abierta: bajar de manera uniforme.',
  fallingFelt: 'La válvula un poco abierta: bajar de manera uniforme. Los dedos esperan el pulso.',
  slowly: 'Ahora muy despacio, respiración a respiración.',
  first: (f, say) => (f.mmHg === null ? 'Escuchen.' : `El primer ruido, y otro: ${say.number(f.mmHg)}.`),
  muffled: (f, say) => (f.mmHg === null ? 'Escuchen.' : `Se apagan desde ${say.number(f.mmHg)}.`),
  last: (f, say) =>
    f.mmHg === null
      ? 'Escuchen.'
      : `El último ruido: ${say.number(f.mmHg)}. Se sigue escuchando, para estar seguros.`,
  gap: (f, say) =>
    f.mmHg === null
      ? 'Escuche.'
      : `Silencio por debajo de ${say.number(f.mmHg)}, y la presión aún no ha pasado: un silencio auscultatorio. Siga escuchando y bajando igual.`,
  'gap-over': (f, say) =>
    f.mmHg === null
      ? 'Escuche.'
      : `Vuelven a ${say.number(f.mmHg)}: el silencio ha terminado. Quien hubiera inflado solo hasta ahí tomaría este por el primer ruido.`,
  'every-beat': (f, say) =>
    f.mmHg === null
      ? 'Sigue a la velocidad habitual.'
      : `Desde ${say.number(f.mmHg)} se oye cada latido, también al inspirar. Sigue a la velocidad habitual.`,
  back: (f, say) => (f.mmHg === null ? 'Palpen.' : `El pulso ha vuelto: ${say.number(f.mmHg)}.`),
  emptying: 'Fuera todo el aire.',
  over: 'Eso fue todo.',
  withSoundFirst: 'Hay algo que oír. Póngase los auriculares y empiece bajo.',
  showWithSound: 'Empezar con sonido',
  showSilent: 'Empezar sin sonido, los ruidos dibujados',
  nextStep: 'Paso siguiente',
  comesHeard: 'Unos segundos antes de que llegue: escuche.',
  comesFelt: 'Unos segundos antes de que llegue: palpe.',
  onceMore: 'Otra vez',
  writtenDown: 'Anotado',
  byFeel: (f, say) => `${say.number(f.systolic)}, por palpación`,
  byEar: (f, say) =>
    [f.systolic, f.muffled, f.diastolic]
      .filter((one) => one !== null)
      .map((one) => say.number(one))
      .join('/'),
  apart: (f, say) =>
    `${say.number(f.first)} solo al espirar, ${say.number(f.every)} en cada latido: ${say.number(f.first - f.every)} mmHg de diferencia. Más de 10 no puede esperar.`,
  gapWas: (f, say) =>
    `Un silencio auscultatorio, de ${say.number(f.from)} a ${say.number(f.to)}: los números son los de fuera de él. Anótelo junto a ellos y la próxima vez infle por encima.`,
  rightOnly:
    'Esto fue el brazo derecho. En una primera visita se mide también el izquierdo: eso le toca a usted.',
  sittingOnly:
    'Esto fue en posición sentada. Uno y tres minutos después de ponerse de pie se mide otra vez: eso le toca a usted.',
  hereOnly: 'Esto fue aquí. Cómo es en casa solo lo muestran las lecturas de casa.',
  numbersSoFar: 'Números hasta ahora',
  lostAt: 'pulso perdido',
  firstAt: 'primer ruido',
  everyAt: 'cada latido',
  gapAt: 'silencio desde',
  gapOverAt: 'se oyen de nuevo',
  muffledAt: 'apagados',
  lastAt: 'último ruido',
  backAt: 'vuelve el pulso',
  roomPlaying: 'Se está midiendo a la persona',
  wristIsFelt: 'Se palpa la muñeca. Mire la aguja.',
  wait: 'Espere.',
  watch: 'Mire.',
  truthAsked: 'Aún no se acabó. ¿Mostrarla ya?',
  truthNow: 'Sí, mostrarla',
  roomOver: 'Se acabó. ¿Qué se oyó, y dónde?',
  beforeFirst: 'Antes del primero',
  fromStart: 'Desde el principio',
  byChance: 'Alguien, al azar',
  classSaid: 'Lo que dijo la clase',
  classSays: 'La clase dijo: primero y último, como 124/78',
  holdIt: 'Apuntarlo',
  saidWrong: 'Escriba 124/78, o un solo número para el primero.',
  saidOne: (f, say) =>
    f.last === null ? say.number(f.first) : `${say.number(f.first)}/${say.number(f.last)}`,
  saidOff: (f, say) =>
    f.diastolic === null
      ? signed(f.systolic, say)
      : `${signed(f.systolic, say)} / ${signed(f.diastolic, say)}`,
  forget: 'Olvidarlo',
  numbersNow: (f, say) => told(f, say),
  trueOnAverage: (f, say) => `De media era: ${told(f, say)}`,
  isMuffled:
    'Los ruidos siguieron mucho más abajo: la diastólica es donde se apagaron, y con eso se compara el segundo número.',
  figure: 'La bajada',
  figureKey:
    'Cada trazo es un ruido, tan alto como fue de fuerte: ● fase I, ○ II, ■ III, □ IV; un punto pequeño es demasiado débil para un oído normal. Triángulos: lo último que dijo la clase. A trazos: lo verdadero de media.',
  atHome: (f, say) => `En casa, de media: ${pair(f, say)}. En esta sala nadie puede verlo.`,
  onTheLeft: (f, say) => `En reposo, en el brazo izquierdo: ${pair(f, say)}.`,
  onTheFeet: (f, say) =>
    `De pie: ${pair(f, say)} al minuto, ${pair({ systolic: f.thenSystolic, diastolic: f.thenDiastolic }, say)} a los tres.`,
  notAtTheWrist: (f, say) =>
    `El corazón latió ${say.rate(f.heart)} veces por minuto, en la muñeca se notó ${say.rate(f.wrist)}: el corazón se cuenta en el ápex, un minuto entero.`,
  toLeft: 'Al brazo izquierdo',
  toRight: 'Al brazo derecho',
  left: 'Es el brazo izquierdo.',
  right: 'Es el brazo derecho.',
};
