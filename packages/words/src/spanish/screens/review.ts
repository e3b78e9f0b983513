import type { review as english } from '../../english/screens/review.js';
import type { Reworded } from '../../reworded.js';
import type { Say } from '../../say.js';

/** As in `english/screens/review`. */
export const review: Reworded<typeof english> = {
  round: 'Ronda',
  identityTitle: '¿Es la persona correcta?',
  askThem:
    'Deje que la persona diga quién es; no se lo lea para que diga que sí. Si no puede decirlo: lea la pulsera, o pregunte a alguien que la conozca.',
  doesNotMatch: 'No coinciden',
  doesNotMatchSays:
    'Si no coinciden, este es el registro de otra persona: usted vuelve a la lista y no se guarda nada de esta ronda.',
  checked: 'Identidad comprobada',
  title: 'Revisión',
  lead: 'Un error se corrige aquí. Después de firmar solo se puede enmendar.',
  stillFetched:
    'El resto de la ronda todavía se está descargando. Lo que ha tomado hasta ahora está guardado.',
  notFetched:
    'No se pudo descargar el resto de la ronda. Lo que ha tomado hasta ahora está guardado: vuelva a cargar la página donde haya red.',
  allOf: (f: { sign: string; values: number }, say: Say) => `${f.sign}, todas (${say.short(f.values)})`,
  soFar: 'Tomado hasta ahora',
  folded: 'De dónde sale, cambiar',
  voidFolded: 'Un recuento interrumpido',
  change: 'Cambiar',
  take: 'Medir',
  takeAnother: 'Tomar otro',
  asItWas: 'Dejarlo como estaba',
  tapsStand: 'Cada toque es un momento tal como se tomó y no se reescribe: tome otro, o quite este.',
  momentsStand:
    'Los momentos quedan como se marcaron; lo leído en el manómetro puede cambiarse. Para marcarlos de nuevo, tome otra lectura.',
  notDone: 'Sin hacer …',
  notDoneWhy: '¿Por qué no se hizo?',
  notDoneText: 'En pocas palabras',
  notDoneKeep: 'Guardar este motivo',
  notDoneUndo: 'Retirarlo',
  notDoneIs: (f) => `Sin hacer: ${f.text}`,
  takenOrWhy: 'Tómelo, o diga por qué no se hizo: un hueco en blanco no se registra.',
  declined: 'la persona no quiso',
  away: 'la persona no estaba',
  asleep: 'la persona dormía',
  'arm-barred': 'no se puede usar ningún brazo',
  'no-equipment': 'no había material a mano',
  'not-possible': 'no fue posible',
  other: 'otro motivo',
  textMissing: 'Escriba el motivo en pocas palabras.',
  voidKept: 'Nulo, guardado como tal: no da ningún número.',
  counts: 'Lo que consta',
  goOnWith: (f) => `Seguir con ${f.text}`,
  sign: 'Firmar',
  signedBy: 'Firmado por',
  signsAs: 'Firma como',
  signHint: 'Lo que se firma pasa al registro con su evidencia.',
  discard: 'Descartar esta ronda …',
  discardSure: '¿Descartar todo lo tomado en esta ronda?',
  discardNow: 'Descartarla',
  countAgain: 'Contar de nuevo',
  cuffWrong: 'El manguito de una presión no es de la lista vigente: elija el que se usó.',
  cuffUsed: 'Manguito usado',
  cannotYet: 'Aún no se puede firmar:',
  changedMeanwhile: 'Otra página de este dispositivo cambió esta ronda: vuelva a mirarla y fírmela después.',
  needsAgent: 'Elija quién mide.',
  needs: (f) => `${f.text}: tómelo o diga por qué no.`,
  unaskedFeatures:
    'La presión pide preguntar por los signos de emergencia: diga cuáles hay, o que no hay ninguno.',
  unaskedPregnancy:
    'La presión pide saber si la persona está embarazada o dio a luz en las últimas seis semanas: respóndalo.',
  signed: 'Firmado.',
};
