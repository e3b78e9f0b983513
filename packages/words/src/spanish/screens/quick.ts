import type { quick as english } from '../../english/screens/quick.js';
import type { Reworded } from '../../reworded.js';
import { SECONDS } from './nouns.js';

/** As in `english/screens/quick`. */
export const quick: Reworded<typeof english> = {
  link: 'Escribir una serie',
  title: 'Escribir una serie',
  field: 'Presión y pulso, como 148/92 76',
  keypad: 'Números',
  byFeel: 'P palpada',
  space: 'pulso',
  stroke: 'barra',
  placeWas: (f) => `${f.place}, como el ${f.at}`,
  change: 'Cambiar',
  arm: 'Brazo',
  chooseArm: 'elija',
  armMissing: 'Diga qué brazo fue.',
  posture: 'La persona está',
  cuff: 'Manguito',
  cuffLeft: (f) =>
    `El manguito usado antes (${f.text}) no es de la lista vigente aquí, así que no se toma de antes: elija el que se usó.`,
  cuffWrong: 'Este manguito no es de la lista vigente aquí: elija el que se usó, o «no se dijo».',
  how: 'Cómo se leyó',
  felt: 'por palpación, sin diastólica',
  auscultation: 'por auscultación',
  device: 'en una pantalla',
  pulseFor: 'Pulso en',
  seconds: (f, say) => say.counted(f.seconds, SECONDS),
  pulseIs: (f, say) => `pulso, guardado como ${say.short(f.n)} en ${say.short(f.seconds)} s: se cambia abajo`,
  notInWindow: (f, say) =>
    `Un pulso de ${say.short(f.perMinute)} no puede salir de un recuento en ${say.counted(f.seconds, SECONDS)}, que va en pasos de ${say.short(f.stepPerMinute)} por minuto. Diga cuánto tiempo se contó, o mire otra vez el número.`,
  noSlash: 'Ponga / entre los dos números de la presión, y un espacio antes del pulso: 148/92 76.',
  meantSlash: (f) => `¿Es ${f.text}?`,
  countedFor: 'El pulso se contó durante',
  rhythmFelt: 'El ritmo se notó',
  'rhythm-regular': 'regular',
  'rhythm-irregular': 'irregular',
  wholeRound: 'Este brazo necesita una decisión: tome una ronda completa, que la pregunta.',
  toRound: 'Tomar en su lugar una ronda completa',
  identity: 'Al firmar dice que la persona le dijo quién es.',
  sign: 'Firmar',
  another: 'Guardarla y escribir otra',
  keptSoFar: (f, say) =>
    `${say.counted(f.readings, { one: 'lectura guardada', other: 'lecturas guardadas' })}, fuera de la vista hasta firmar la ronda.`,
  readAgain: 'Mire otra vez antes de firmar',
  readIs: (f) => `Sí, se leyó ${f.text}`,
  windowUnsaid: 'Diga arriba durante cuánto se contó el pulso, y después firme.',
  readNot: 'Diga que se leyó así, o corríjalo, y después firme.',
  unasked: 'Responda lo que se pregunta arriba y después firme.',
  changedMeanwhile: 'Otra página de este dispositivo cambió esta ronda: vuelva a mirarla y fírmela después.',
  needsAgent: 'Elija quién mide.',
};
