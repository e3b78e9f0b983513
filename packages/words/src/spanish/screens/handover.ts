import type { handover as english } from '../../english/screens/handover.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';
import { span } from './people.js';

function onFeet({ minutes }: { readonly minutes: number | null }, say: Say): string {
  if (minutes === null) return ' de pie';
  if (minutes === 0) return ' nada más ponerse de pie';
  return minutes === 1 ? ' al minuto de pie' : ` a los ${say.short(minutes)} min de pie`;
}

/** As in `english/screens/handover`; the names of fields in braces are the same in every language. */
export const handover: Reworded<typeof english> = {
  title: 'Entregar',
  open: 'Entregar',
  asText: 'Como texto',
  asFile: 'Como fichero',
  noRound: 'Todavía no hay ninguna ronda firmada en el registro.',
  whichRound: 'Qué ronda',
  whichTemplate: 'Plantilla',
  line: 'Una línea',
  handover: 'Párrafo para el relevo',
  letter: 'Párrafo para una carta',
  preview: 'Lo que se copiará',
  copy: 'Copiar',
  copied: 'Copiado.',
  notCopied: 'El navegador no lo copió: seleccione el texto de arriba y cópielo.',
  edit: 'Cambiar la plantilla',
  template: 'Plantilla',
  templateHint:
    '{pulse} es un campo. [, pulso {pulse}] se omite cuando no se conoce ninguno de sus campos. Un signo escrito dos veces, como {{ o ]], es el propio signo.',
  fields: 'Campos, para tocar o escribir',
  keptHere: 'Las plantillas se guardan en este dispositivo.',
  asBrought: 'Como estaba',
  templateWrong: 'Algo de la plantilla no se conoce: cámbielo abajo.',
  notKnown: 'no se sabe',
  isSigned: 'firmada',
  isPreliminary: 'Preliminar, sin refrendar',
  isUnsigned: 'Sin firmar',
  isInError: 'Registrado por error',
  disputed: (f) => `${f.text} (dos enmiendas no concuerdan)`,
  born: (f) => `nac. ${f.text}`,
  numbered: (f) => `número ${f.text}`,
  amended: 'enmendado',
  amendedFrom: (f) => `enmendado, era ${f.text}`,
  gaugeFailed: (f) => `en duda: leída en ${f.name}, un manómetro que no pasó una comprobación`,
  gaugeNotKnown: 'no se sabe aquí si su manómetro falló una comprobación',
  isNotReliedOn: (f) =>
    f.text === null
      ? 'Vista por quien supervisa, y no se da por buena'
      : `Vista por quien supervisa, y no se da por buena (${f.text})`,
  feltIrregular: 'se palpa irregular',
  placed: (f) => `${f.arm}, ${f.posture}`,
  told: (f) => `Se avisó a ${f.whom}, ${f.at} (${f.conditions}). Respuesta: ${f.said}.`,
  notTold: (f) => `Sin cerrar: no consta aún que se avisara a nadie de esto (${f.conditions}).`,
  byOneReading: (f, say) =>
    `${f.text}, por ${f.highestOf < 2 ? 'una sola lectura' : `la más alta de ${say.short(f.highestOf)} lecturas y sin media`}`,
  caution:
    'No se da una categoría de presión alta: nada dice de una presión baja o que baja al ponerse de pie.',
  actNowUnder: (f) => `Actúe ya: ${f.text}`,
  leftOut: (f) =>
    `Esta plantilla no tiene ${f.fields}: lo que eso diría se pone bajo el texto cuando lo hay, para que no falte ninguna alerta ni advertencia.`,
  alertOpen: (f) => `Actúe ya; no consta aún que se avisara a nadie: ${f.conditions}.`,
  longerAsked: 'recuento corto; se pidió uno más largo',
  right: 'derecho',
  left: 'izquierdo',
  armsSame: 'Los dos brazos dieron lo mismo.',
  armHigher: (f, say) => `El brazo ${f.side} dio ${say.short(f.mmHg)} mmHg más.`,
  armHigherOnce: (f, say) =>
    `El brazo ${f.side} dio ${say.short(f.mmHg)} mmHg más, aún sin confirmar con un segundo par.`,
  armHigherUnlike: (f, say) =>
    `El brazo ${f.side} dio ${say.short(f.mmHg)} mmHg más, pero los brazos no se midieron igual: no se sabe cuál es el más alto.`,
  fell: (f) => `La presión bajó al ponerse de pie ${f.text}.`,
  fellBy: (f, say) => {
    const parts = [
      ...(f.systolic !== null && f.systolic > 0 ? [`${say.short(f.systolic)} la sistólica`] : []),
      ...(f.diastolic !== null && f.diastolic > 0 ? [`${say.short(f.diastolic)} la diastólica`] : []),
    ];
    return `${say.allOf(parts)}${f.minutes === null ? '' : ` a los ${say.short(f.minutes)} min`}`;
  },
  noFall: (f, say) =>
    `Al ponerse de pie la presión no bajó ${say.short(f.systolic)}/${say.short(f.diastolic)} mmHg.`,
  fallNotExcluded: (f, say) =>
    `Ninguna bajada de ${say.short(f.systolic)}/${say.short(f.diastolic)} mmHg en las lecturas de pie; no queda descartada.`,
  fellLate: 'Es una bajada tardía, después de tres minutos.',
  fallOver: (f, say) => `Ya había pasado${onFeet(f, say)}.`,
  lowOnFeet: (f, say) =>
    f.systolic === null
      ? `La sistólica fue baja${onFeet(f, say)}.`
      : `La sistólica fue baja, ${say.short(f.systolic)}${onFeet(f, say)}.`,
  unwellOnFeet: (f, say) => `La persona se encontró mal${onFeet(f, say)}.`,
  pulseRose: (f, say) =>
    `El pulso subió${f.perMinute === null ? '' : ` ${say.rate(f.perMinute)} por minuto`} de pie, sin bajada en las lecturas tomadas.`,
  again: (f) => `Toca medir de nuevo la presión desde las ${f.from}, antes de las ${f.by} (${f.why}).`,
  againLate: (f, say) =>
    `Tocaba medir de nuevo la presión antes de las ${f.by} (${f.why}): con retraso de ${span(f.minutes, say)} a las ${f.now}.`,
  againSince: (f, say) =>
    `Toca medir de nuevo la presión desde las ${f.from} (${f.why}): desde hace ${span(f.minutes, say)} a las ${f.now}.`,
  againFrom: (f) => `Toca medir de nuevo la presión desde las ${f.from} (${f.why}).`,
  ofOtherRound: (f) => `${f.text}, por la ronda de ${f.at}`,
  lineTemplate:
    '[{identity}. ][{alerts} ][{again} ]{day} {time}[: {pressure} mmHg][ (media de {meanOf})][, {place}][, pulso {pulse}][, respiraciones {breaths}][, {temperature}][, {saturation}][, puntuación de alerta temprana {score}].[ Además {others}.][ {armsFound}][ {standingFound}]',
  handoverTemplate:
    '[{identity}\n][Actúe ya: {actNow}\n][{told}\n][{again}\n]{day}, {time}, por {who} ({role}).[\n{begun}.][\n{rest}][\nPresión {pressure} mmHg.][ En {place}.][ Media de {meanOf}.][\nAdemás {others}.][\n{armsFound}][\n{standingFound}][\nPulso por minuto: {pulse}.][\nRespiraciones por minuto: {breaths}.][\nTemperatura {temperature}.][\nSaturación {saturation}.][\nDolor {pain}.][\nConsciencia: {consciousness}.][\nPuntuación de alerta temprana {score}.][\n{notDone}][\nNota: {note}][\n{doubts}]',
  letterTemplate:
    'El {day} a las {time} tomé los signos vitales[ de {name}][ (nac. {birthDate})].[ {alerts}][ {again}][ La presión arterial fue de {pressure} mmHg.][ Se tomó en {place}.][ {rest}][ Es la media de {meanOf} lecturas.][ Otras lecturas: {others}.][ {armsFound}][ {standingFound}][ Categoría: {category}.][ {caution}][ El pulso por minuto fue {pulse}.][ Las respiraciones por minuto fueron {breaths}.][ La puntuación de alerta temprana fue {score}.][ {notDone}]',
  fhir: 'Descargar para otro sistema (FHIR)',
  fhirHint: 'Cada valor con cómo se tomó, y el registro entero para otro Evenfall.',
  csv: 'Descargar como tabla (CSV)',
  csvHint: 'Una fila por cada valor registrado alguna vez y por cada lectura en casa o de 24 horas.',
  nothingInTable:
    'Aún no hay nada en este registro que ocupe una fila: el fichero tendría solo sus encabezados.',
  withIdentity: 'Con nombre, fecha de nacimiento y número',
  withIdentityHint:
    'Se omiten si no lo indica. Las notas van como se escribieron y pueden nombrar a alguien.',
  inventedFile: 'El fichero dice INVENTED.',
  elsewhere: 'De otro lugar',
  elsewhereHint:
    'Lo dice otro sistema o una tabla: nadie de aquí lo midió, y nada se calcula a partir de ello.',
  pressureIs: (f, say) =>
    `${say.short(f.systolic)}/${f.diastolic === null ? '–' : say.short(f.diastolic)} mmHg`,
  rateIs: (f, say) => `${say.short(f.perMinute)} /min`,
  celsiusIs: (f, say) => say.temperature(f.celsius),
  percentIs: (f, say) => `${say.short(f.percent)} %`,
  kgIs: (f, say) => say.mass(f.kg),
  cmIs: (f, say) => say.length(f.cm),
  saidBy: (f) => `Lo dice ${f.text}`,
  saidByNobody: 'No se nombra a nadie',
  sentAs: (f) => `enviado como ${f.text}`,
  meanUntil: (f) => `media hasta ${f.text}`,
  importedBy: (f) => `Incorporado por ${f.who}, ${f.at}`,
  unclearCorrection: (f) =>
    `Su fuente lo dice como corrección; qué medición corrige no se sabe aquí. Con el mismo nombre hay otra de ${f.text}.`,
  mayBeCorrected: (f) =>
    `Puede que esté corregido: su fuente dice una corrección con el mismo nombre, de ${f.text}, y no dice de qué medición.`,
  markWrong: 'Esto no debe estar en este registro',
  markNow: 'Marcar como registrado por error',
};
