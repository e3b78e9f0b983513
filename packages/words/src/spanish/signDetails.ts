import type { signDetails as english } from '../english/signDetails.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

const CONFIRM = 'Confirme este límite con su protocolo local.';

/** As in `english/signDetails`. */
export const signDetails: Reworded<typeof english> = {
  'implausible-temperature': (f, say) =>
    `${say.temperature(f.value('celsius'), f.value(f.value('celsius') < f.value('lowCelsius') ? 'lowCelsius' : 'highCelsius'))} está fuera de ${say.temperatureLimit(f.value('lowCelsius'))} a ${say.temperatureLimit(f.value('highCelsius'))}: mire a la persona, compruebe el número, la unidad y el sitio, y mida de nuevo antes de fiarse.`,
  'mouth-too-soon': (f, say) =>
    `Solo ${say.beside(f.value('minutes'), f.value('waitMinutes'))} min desde una bebida caliente o fría o desde fumar: espere ${say.limit(f.value('waitMinutes'))} min o use otro sitio. ${CONFIRM}`,
  hyperpyrexia: (f, say) =>
    `${hotter(f, say)} es más de ${say.temperatureLimit(f.value('limitCelsius'))}, una fiebre muy alta: comuníquelo enseguida al profesional responsable. ${CONFIRM}`,
  'fever-young-infant': (f, say) =>
    `${hotter(f, say)} en un lactante menor de 3 meses es una fiebre de alto riesgo: que el profesional responsable lo vea enseguida. ${CONFIRM}`,
  'fever-infant': (f, say) =>
    `${hotter(f, say)} en un lactante menor de 6 meses es una fiebre que un profesional debe ver hoy. ${CONFIRM}`,
  fever: (f, say) =>
    `${hotter(f, say)} está en el intervalo llamado fiebre (${say.temperatureLimit(f.value('limitCelsius'))} o más): actúe según su protocolo local. ${CONFIRM}`,
  'hypothermia-severe': (f, say) =>
    `${hotter(f, say)} es menos de ${say.temperatureLimit(f.value('limitCelsius'))}, en el intervalo llamado hipotermia grave: consiga ayuda enseguida, mueva a la persona con suavidad y mida de nuevo en un sitio central. ${CONFIRM}`,
  'hypothermia-moderate': (f, say) =>
    `${hotter(f, say)} es menos de ${say.temperatureLimit(f.value('limitCelsius'))}, en el intervalo llamado hipotermia moderada: consiga ayuda enseguida y mida de nuevo en un sitio central. ${CONFIRM}`,
  'hypothermia-mild': (f, say) =>
    `${hotter(f, say)} es menos de ${say.temperatureLimit(f.value('limitCelsius'))}, en el intervalo llamado hipotermia leve: mida de nuevo y comuníquelo al profesional responsable. ${CONFIRM}`,
  'below-oximeter-range': (f, say) =>
    `${say.beside(f.value('percent'), f.value('lowestPercent'))} % es menos de ${say.limit(f.value('lowestPercent'))} %, por debajo de lo que se exige a un pulsioxímetro: mire primero a la persona y actúe según lo que vea, y después compruebe el sensor y el dedo. ${CONFIRM}`,
  'low-oxygen-child': (f, say) =>
    `${say.beside(f.value('percent'), f.value('limitPercent'))} % en la infancia es menos de ${say.limit(f.value('limitPercent'))} %: mire al niño o niña, compruebe el sensor y avise según su protocolo local sin esperar a otra lectura.`,
  'below-oxygen-target': (f, say) =>
    `${say.beside(f.value('percent'), f.value('lowPercent'))} % está por debajo del objetivo de ${say.limit(f.value('lowPercent'))} a ${say.limit(f.value('highPercent'))} % en la escala usada: mire a la persona, compruebe el sensor y después actúe según su protocolo local.`,
  'above-oxygen-target': (f, say) =>
    `${say.beside(f.value('percent'), f.value('highPercent'))} % con oxígeno está por encima del objetivo de ${say.limit(f.value('lowPercent'))} a ${say.limit(f.value('highPercent'))} % en la escala usada: pregunte a quien prescribió el oxígeno si basta con menos.`,
  'oximeter-pulse-disagrees': (f, say) =>
    `El pulsioxímetro muestra un pulso de ${say.number(f.value('pulsePerMinute'))} y se palpó ${say.number(f.value('feltPulsePerMinute'))}, con ${say.beside(f.value('differencePerMinute'), f.value('limitPerMinute'))} de diferencia, más de ${say.limit(f.value('limitPerMinute'))}: no se fíe de esta saturación, caliente la mano, mueva el sensor y lea de nuevo.`,
  'pain-severe': (f, say) =>
    f.has('score')
      ? `${say.beside(f.value('score'), f.value('severeFrom'))} de 10 es dolor intenso: comuníquelo al profesional responsable y diga cuándo volverá a preguntar. ${CONFIRM}`
      : 'Dolor intenso: comuníquelo al profesional responsable y diga cuándo volverá a preguntar.',
  'not-alert': () =>
    'No está alerta, o está confusa desde hace poco: quédese con la persona y pida ayuda según su protocolo local y el procedimiento de emergencia antes de seguir midiendo.',
  'glasgow-not-testable': () =>
    'Una parte de la escala de Glasgow no se pudo explorar, así que no hay total: registre las partes y el motivo.',
  'implausible-weight': (f, say) =>
    `${say.mass(f.value('kg'))} es inusual: compruebe el número, el decimal y la unidad, y pese de nuevo.`,
  'weight-not-measured': () => 'Este peso no se midió: no calcule una dosis con él; pese cuando pueda.',
  'implausible-height': (f, say) =>
    `${say.length(f.value('cm'))} es inusual: compruebe el número, el decimal y la unidad, y mida de nuevo.`,
  'height-not-measured': () => 'Esta talla no se midió: mídala cuando pueda.',
  'length-lying': (f, say) =>
    `Medida en decúbito desde los dos años: una longitud sale unos ${say.length(f.value('longerCm'))} mayor que la talla de pie, así que no compare las dos. ${CONFIRM}`,
  'height-standing-young': (f, say) =>
    `Antes de los ${say.limit(f.value('underMonths'))} meses (aquí ${say.beside(f.value('ageMonths'), f.value('underMonths'))}) la longitud se mide en decúbito: mida de nuevo en decúbito. ${CONFIRM}`,
};

/** A temperature on its own side of the limit that it is told beside. */
function hotter(f: Figures, say: Say): string {
  return say.temperature(f.value('celsius'), f.value('limitCelsius'));
}
