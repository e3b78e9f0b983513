import type { app as english } from '../../english/screens/app.js';
import type { Reworded } from '../../reworded.js';
import { ENTRIES, EXERCISES, ROUNDS } from './nouns.js';

/** As in `english/screens/app`. */
export const app: Reworded<typeof english> = {
  name: 'Evenfall',
  notReviewed: 'Esta traducción no ha tenido revisión clínica.',
  pulse: 'Pulso',
  breaths: 'Respiraciones',
  pressure: 'Presión',
  temperature: 'Temperatura',
  'oxygen-saturation': 'Saturación de oxígeno',
  pain: 'Dolor',
  consciousness: 'Consciencia',
  weight: 'Peso',
  height: 'Talla',
  perMinute: '/min',
  notKnown: 'no se sabe',
  broken: 'No se pudo mostrar esta página. Lo que anotó se conserva en este dispositivo.',
  loadAgain: 'Cargarla de nuevo',
  back: 'Volver',
  cancel: 'Cancelar',
  save: 'Guardar',
  close: 'Cerrar',
  skip: 'Ir al contenido',
  invented: 'INVENTADO',
  inventedBand: 'INVENTADO: aquí nadie es real',
  pageTitle: (f) => `${f.text} · Evenfall`,
  pageTitleInvented: (f) => `INVENTADO · ${f.text} · Evenfall`,
  loading: 'Un momento …',
  notFound: 'Esa página no existe.',
  toPeople: 'A la lista de personas',
  noSuchPerson: 'No existe esa persona en este libro.',
  unreachable: 'No se puede llegar al servidor.',
  unreachableTry:
    'No se ha perdido nada de lo que anotó. Compruebe que Evenfall está en marcha y vuelva a intentarlo.',
  refusedBy: (f) => `El servidor lo rechazó: ${f.text}`,
  failed: 'El servidor no pudo hacerlo. Vuelva a intentarlo dentro de un momento.',
  unreadable: (f, say) =>
    `${say.counted(f.entries, ENTRIES)} no se ${f.entries === 1 ? 'puede' : 'pueden'} leer con esta versión de Evenfall. Lo que ve ${f.entries === 1 ? 'la' : 'las'} omite y puede no ser lo más reciente. No se ha perdido nada: evenfall check ${f.entries === 1 ? 'la lista' : 'las lista todas'}.`,
  tryAgain: 'Intentar de nuevo',
  notKept:
    'Este navegador no guarda nada entre visitas, así que al recargar se perdería lo que aún no está firmado. Deje la página abierta hasta haber firmado.',
  newer:
    'Hay un Evenfall más nuevo. Lo que anotó y firmó permanece en este dispositivo; un recuento en curso se perdería, así que termínelo antes.',
  newerReload: 'Recargar con el más nuevo',
  keptForGood: 'Este navegador conserva lo que espera en este dispositivo hasta que se envíe.',
  mayGo:
    'Este navegador puede borrar lo que espera en este dispositivo cuando le falte espacio: firme, y vea que se ha enviado, antes de dejar el dispositivo.',
  onPhone: 'Evenfall en un teléfono',
  waiting: (f, say) =>
    `${say.counted(f.rounds, ROUNDS)} ${f.rounds === 1 ? 'firmada' : 'firmadas'} en este dispositivo y aún no ${f.rounds === 1 ? 'guardada' : 'guardadas'} por el servidor.`,
  waitingSeries: (f, say) =>
    `${say.counted(f.series, { one: 'serie de lecturas firmada', other: 'series de lecturas firmadas' })} en este dispositivo y aún no guardadas por el servidor.`,
  waitingClosed: 'Que se actuó ante una alerta está guardado en este dispositivo y aún no por el servidor.',
  waitingExercises: (f, say) =>
    `${say.counted(f.exercises, EXERCISES)} de práctica en este dispositivo, aún sin guardar por el servidor.`,
  exerciseRefused: 'El servidor rechazó un ejercicio de práctica, así que no está entre lo practicado:',
  exerciseBack: 'Llevarlo otra vez a la sala de prácticas',
  exerciseGiveUp: 'Dejar el ejercicio',
  closedRefused: 'El servidor rechazó que se actuó ante una alerta, así que sigue abierta:',
  closeAnew: 'Decirlo de nuevo',
  waitingShort: (f, say) => {
    const parts = [
      ...(f.rounds === 0 ? [] : [say.counted(f.rounds, ROUNDS)]),
      ...(f.series === 0 ? [] : [say.counted(f.series, { one: 'serie', other: 'series' })]),
      ...(f.closings === 0
        ? []
        : [say.counted(f.closings, { one: 'alerta atendida', other: 'alertas atendidas' })]),
      ...(f.exercises === 0 ? [] : [say.counted(f.exercises, EXERCISES)]),
    ];
    const all = f.rounds + f.series + f.closings + f.exercises;
    // Masculine where there is an exercise among them.
    const ending = `${f.exercises === 0 ? 'sola' : 'solo'}${all === 1 ? '' : 's'}`;
    return `${say.allOf(parts)} ${all === 1 ? 'espera aquí, se envía' : 'esperan aquí, se envían'} ${ending}`;
  },
  withoutServer: 'Ahora sin servidor: siga, no se pierde nada',
  waitingAgain: 'Se vuelve a enviar sola. También puede enviarla ahora.',
  sendNow: 'Enviar ahora',
  sending: 'Enviando …',
  refusedCuff:
    'el manguito indicado en una presión no es de su lista. Recupere la ronda y elija en su revisión el manguito que se usó.',
  waitingRefused: 'El servidor rechazó una ronda firmada, así que no está en el registro:',
  waitingSeriesRefused: 'El servidor rechazó una serie de lecturas firmada, y no está en el registro:',
  takeBackLater:
    'Todavía no se puede recuperar: en su lugar se empezó otra en este dispositivo. Firme o descarte primero esa.',
  takeBack: 'Recuperarla para corregirla',
  to: (f) => `de ${f.low} a ${f.high}`,
  rangeIncluded: (f) => `de ${f.low} a menos de ${f.high}`,
  rangeOpen: (f) => `más de ${f.low}, menos de ${f.high}`,
};
