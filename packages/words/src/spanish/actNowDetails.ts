import type { actNowDetails as english } from '../english/actNowDetails.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';
import { scoreTitles } from './scoreTitles.js';

const CALL = 'pida ayuda ya según el procedimiento de emergencia de su centro y no espere a este programa';
/** As in `english/actNowDetails`. */
export const DANGER_SIGNS =
  'dolor en el pecho o la espalda, falta de aire, debilidad o entumecimiento de nueva aparición, cambio en el habla o la vista, dolor de cabeza intenso, confusión, una convulsión y poca orina';
const LOOK = 'mire primero a la persona';

/** As in `english/actNowDetails`. */
export const actNowDetails: Reworded<typeof english> = {
  unresponsive: () => `La persona no responde: ${CALL}, y quédese con ella.`,
  'severe-with-chest-or-back-pain': (f, say) => severe(f, say, 'dolor en el pecho o la espalda'),
  'severe-with-breathlessness': (f, say) => severe(f, say, 'falta de aire'),
  'severe-with-new-weakness': (f, say) => severe(f, say, 'debilidad de nueva aparición'),
  'severe-with-numbness': (f, say) => severe(f, say, 'entumecimiento'),
  'severe-with-speech-or-vision-change': (f, say) => severe(f, say, 'un cambio en el habla o la vista'),
  'severe-with-severe-headache': (f, say) => severe(f, say, 'dolor de cabeza intenso'),
  'severe-with-confusion': (f, say) => severe(f, say, 'confusión de nueva aparición'),
  'severe-with-fit': (f, say) => severe(f, say, 'una convulsión'),
  'severe-with-little-urine': (f, say) => severe(f, say, 'poca orina'),
  'severe-in-pregnancy': (f, say) =>
    `${pressure(f, say)} en el embarazo es una presión grave: avise a obstetricia con urgencia según su protocolo local y repita a mano si eso no retrasa nada.`,
  'severe-after-birth': (f, say) =>
    `${pressure(f, say)} en las semanas tras un parto es una presión grave: avise a obstetricia con urgencia según su protocolo local y repita a mano si eso no retrasa nada.`,
  'severe-away': (f, say) =>
    `${pressure(f, say)} se midió fuera del centro y es una presión grave: pregunte hoy a la persona por ${DANGER_SIGNS}, y mida a mano. Con cualquiera de ellos, o en el embarazo y las seis semanas siguientes, ${CALL}. Su protocolo local prevalece.`,
  'child-crisis': (f, say) =>
    `${pressure(f, say)} está muy por encima de lo propio de la infancia: repita a mano con el manguito adecuado si eso no retrasa nada y ${CALL}.`,
  'child-high-with-feature': (f, say) =>
    `${pressure(f, say)} en la infancia, junto con lo hallado al preguntar, necesita atención inmediata: ${CALL}.`,
  'child-hypotension': (f, say) =>
    `Una sistólica de ${say.beside(f.value('systolic'), f.value('lowSystolic'))} está por debajo del límite bajo para esta edad (${say.limit(f.value('lowSystolic'))})${unwell(f)}: ${LOOK}, ${again(f, say)} y ${CALL}.`,
  'very-low-pressure': (f, say) =>
    `Una sistólica de ${say.beside(f.value('systolic'), f.value('veryLowSystolic'))} es muy baja (${say.limit(f.value('veryLowSystolic'))} o menos)${unwell(f)}: ${LOOK}, ${again(f, say)} y avise según su protocolo local.`,
  'unwell-upright': (f, say) =>
    `La persona notó mareo, desvanecimiento o malestar de pie, con ${onFeet(f, say)}: acuéstela y quédese con ella, registre lo que notó y comuníquelo según su protocolo local; si hay un desmayo, dolor en el pecho o no se recupera, ${CALL}.`,
  'early-warning-total-high': (f, say) =>
    `Una puntuación de alerta temprana de ${points(f, say)} es alta: ${CALL}, y vigile a la persona sin interrupción.`,
  'early-warning-total-medium': (f, say) =>
    `Una puntuación de alerta temprana de ${points(f, say)} es media: que un profesional con experiencia en enfermedad aguda valore a la persona con urgencia. Prevalecen los números y plazos de su protocolo local.`,
  'early-warning-single-part': (f, say) =>
    `Una parte de la puntuación de alerta temprana está en su peor valor (${say.allOf(singleParts(f))}): que un profesional de la planta revise a la persona con urgencia, sea cual sea el total.`,
  'consciousness-changed': () =>
    `La persona está confusa desde hace poco o solo responde a la voz o al dolor: ${LOOK} y avise según su protocolo local.`,
  'very-slow-pulse': (f, say) =>
    `Un pulso de ${say.beside(f.value('pulsePerMinute'), f.value('verySlowPulsePerMinute'))} por minuto es muy lento (${say.limit(f.value('verySlowPulsePerMinute'))} o menos): ${LOOK}, actúe según su protocolo local y el procedimiento de emergencia, y después cuente de nuevo.`,
  'child-slow-pulse': (f, say) =>
    `Un pulso de ${say.beside(f.value('pulsePerMinute'), f.value('childSlowPulsePerMinute'))} por minuto está por debajo de ${say.limit(f.value('childSlowPulsePerMinute'))} en la infancia: ${LOOK}; si hay palidez, flacidez o cuesta despertarlo, empiece la reanimación como se le enseñó y ${CALL}.`,
  'very-fast-pulse': (f, say) =>
    `Un pulso de ${say.beside(f.value('pulsePerMinute'), f.value('veryFastPulsePerMinute'))} por minuto es muy rápido (${say.limit(f.value('veryFastPulsePerMinute'))} o más): ${LOOK}, actúe según su protocolo local y el procedimiento de emergencia, y después cuente de nuevo.`,
  'very-slow-breathing': (f, say) =>
    `Una respiración de ${say.beside(f.value('breathsPerMinute'), f.value('verySlowBreathsPerMinute'))} por minuto es muy lenta (${say.limit(f.value('verySlowBreathsPerMinute'))} o menos): ${LOOK} y ${CALL}.`,
  'very-fast-breathing': (f, say) =>
    `Una respiración de ${say.beside(f.value('breathsPerMinute'), f.value('veryFastBreathsPerMinute'))} por minuto es muy rápida (${say.limit(f.value('veryFastBreathsPerMinute'))} o más): ${LOOK}, actúe según su protocolo local y el procedimiento de emergencia, y después cuente de nuevo.`,
  'low-oxygen': (f, say) => oxygen(f, say, 'lowOxygenPercent', 'o menos'),
  'low-oxygen-scale-2': (f, say) => oxygen(f, say, 'lowOxygenScale2Percent', 'o menos en la escala 2'),
  'child-low-oxygen': (f, say) =>
    `Una saturación de ${say.beside(f.value('percentOxygen'), f.value('childLowOxygenPercent'))} % está por debajo de ${say.limit(f.value('childLowOxygenPercent'))} % en la infancia: ${LOOK} y después el sensor, y avise según su protocolo local.`,
};

function severe(f: Figures, say: Say, feature: string): string {
  return `${pressure(f, say)} es una presión grave, con ${feature}: ${CALL}; repita a mano solo si eso no retrasa nada.`;
}

/** The pressure, or the one number of it that is known. */
function pressure(f: Figures, say: Say): string {
  if (!f.has('diastolic')) return `Una sistólica de ${say.number(f.value('systolic'))}`;
  if (!f.has('systolic')) return `Una diastólica de ${say.number(f.value('diastolic'))}`;
  return `${say.number(f.value('systolic'))}/${say.number(f.value('diastolic'))}`;
}

/** As in `english/actNowDetails`. */
function onFeet(f: Figures, say: Say): string {
  return f.has('diastolic')
    ? `${say.number(f.value('systolic'))}/${say.number(f.value('diastolic'))}`
    : `una sistólica de ${say.number(f.value('systolic'))}`;
}

/** That somebody felt unwell on their feet, where a reading there says so. */
function unwell(f: Figures): string {
  return f.has('unwellUpright') ? ', y la persona se encontró mal de pie' : '';
}

/** The repeat by hand: asked for, or what it read where it is in the round. */
function again(f: Figures, say: Say): string {
  return f.has('againSystolic')
    ? `quédese con ella (se repitió: ${repeated(f, say)})`
    : 'repita a mano enseguida';
}

/** As in `english/actNowDetails`. */
export function repeated(f: Figures, say: Say): string {
  return `${say.number(f.value('firstSystolic'))}, luego ${say.number(f.value('againSystolic'))}`;
}

/** The total, or what there is of it at least. */
function points(f: Figures, say: Say): string {
  return f.has('total') ? say.number(f.value('total')) : `al menos ${say.number(f.value('atLeast'))}`;
}

/** The parts that reach the most points, by their names. */
function singleParts(f: Figures): string[] {
  return Object.entries(scoreTitles.scorePart).flatMap(([part, name]) => (f.has(part) ? [name] : []));
}

function oxygen(f: Figures, say: Say, limit: string, side: string): string {
  return `Una saturación de ${say.beside(f.value('percentOxygen'), f.value(limit))} % es baja (${say.limit(f.value(limit))} % ${side}): ${LOOK} y después el sensor, y avise según su protocolo local.`;
}
