import type { DiaryText } from './diaryText.js';

/** The diary in Spanish. */
export const spanish: DiaryText = {
  name: 'Español',
  locale: 'es',
  direction: 'ltr',
  isReviewed: false,
  notReviewed: 'Traducción sin revisión clínica.',
  title: 'Mi presión arterial en casa',
  whose: (name) => `Diario de ${name}`,
  born: 'Fecha de nacimiento:',
  number: 'Número:',
  device: 'Aparato y manguito:',
  plan: (days, readings) =>
    `Mida cada mañana y cada noche durante ${days === 1 ? '1 día' : `${days} días`}, ${readings === 1 ? 'una vez' : readings === 2 ? 'dos veces' : `${readings} veces`} en cada ocasión.`,
  // Within a sentence the day and its date stand without the comma between them.
  bringBack: (day) => `Devuelva este diario el ${day.replace(', ', ' ')} o lo antes que pueda después.`,
  howTitle: 'Cómo medir',
  before: (minutes) =>
    `Los ${minutes} minutos antes: nada de café, té ni cola, nada de tabaco, nada de ejercicio. Vaya primero al baño.`,
  rest: (minutes) =>
    `Siéntese en calma ${minutes} minutos: la espalda apoyada, los dos pies planos en el suelo, sin cruzar las piernas.`,
  cuff: 'Póngase el manguito en el brazo desnudo, por encima del codo, y apoye el brazo en la mesa a la altura del corazón.',
  arm: 'Use siempre el mismo brazo:',
  left: 'izquierdo',
  right: 'derecho',
  quiet: 'No hable ni se mueva mientras el aparato mide.',
  times: (readings) =>
    readings === 1
      ? 'Por la mañana mida antes de las medicinas y del desayuno; por la noche, antes de acostarse.'
      : 'Espere un minuto entre lecturas. Por la mañana mida antes de las medicinas y del desayuno; por la noche, antes de acostarse.',
  write:
    'Anote cada lectura enseguida, tal como la muestra el aparato, también la que parezca equivocada. No deje ninguna fuera.',
  dangerTitle: 'Cuándo pedir ayuda',
  severe: ({ systolic, diastolic }) =>
    `Si el número de arriba es ${systolic} o más, o el de abajo es ${diastolic} o más:`,
  again: (minutes) =>
    `Siéntese en calma ${minutes} minutos y mida de nuevo. Si sigue así de alta, llame hoy a su centro.`,
  symptoms:
    'Llame enseguida al número de emergencias si además tiene dolor en el pecho o la espalda, falta de aire, debilidad o adormecimiento, dificultad para hablar o ver, dolor de cabeza intenso, confusión, una convulsión u orina muy poco. No espere ni mida de nuevo.',
  pregnant: ({ pregnantSystolic, pregnantDiastolic, weeksAfterBirth }) =>
    `Si está embarazada o dio a luz en las últimas ${weeksAfterBirth} semanas: llame enseguida con ${pregnantSystolic} o más, o ${pregnantDiastolic} o más.`,
  ownAdvice: 'Si su centro le dijo otra cosa, haga lo que le dijo su centro.',
  clinicPhone: 'Centro:',
  emergencyPhone: 'Emergencias:',
  day: 'Día',
  morning: 'Mañana',
  evening: 'Noche',
  time: 'Hora',
  reading: (number) => `Lectura ${number}`,
  upper: 'Arriba',
  lower: 'Abajo',
  pulse: 'Pulso',
  notes: 'Medicinas, síntomas',
  table: 'Mis lecturas',
};
