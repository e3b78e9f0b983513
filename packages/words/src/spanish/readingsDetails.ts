import type { readingsDetails as english } from '../english/readingsDetails.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

const READINGS = { one: 'lectura', other: 'lecturas' };
const AGAIN = 'deje reposar el brazo y tome otra';

/** As in `english/readingsDetails`. */
export const readingsDetails: Reworded<typeof english> = {
  'again-at-once': () =>
    'La persona se encuentra mal, o la presión es muy baja: mire primero a la persona y tómela de nuevo a mano ya, sin esperar, si eso no retrasa la ayuda.',
  'more-readings': (f, say) =>
    `${taken(f, say)} y esta guía se basa en ${say.short(f.value('needs'))}: ${AGAIN}.`,
  'more-readings-general': (f, say) =>
    `${taken(f, say)} y, sin un protocolo elegido aquí, la regla general se basa en ${say.short(f.value('needs'))}: ${AGAIN}.`,
  'raised-not-known': () =>
    'Sin los límites de este niño o niña no se puede saber si la primera lectura es elevada, así que no se da por suficiente: búsquelos por edad y talla, o tome las demás.',
  'irregular-more-readings': (f, say) =>
    `${taken(f, say)} y un pulso irregular necesita ${say.short(f.value('needs'))}, porque la presión cambia de un latido a otro: ${AGAIN}, desinflando despacio.`,
  'differ-over': (f, say) =>
    `Las dos últimas lecturas difieren en ${apart(f, say)}, más de ${say.limit(f.value('limitMmHg'))}: ${AGAIN}.`,
  'differ-from': (f, say) =>
    `Las dos últimas lecturas difieren en ${apart(f, say)}, y desde ${say.limit(f.value('limitMmHg'))} no son próximas: ${AGAIN}.`,
  'severe-again': (f, say) =>
    `${say.short(f.value('systolic'))}/${say.short(f.value('diastolic'))} es grave: revise el manguito y el brazo y tómela de nuevo a mano, si eso no retrasa la ayuda.`,
  'not-stable': (f, say) =>
    `Tras ${say.counted(f.value('readings'), READINGS)} la presión no es estable: no tome más ahora, regístrelas todas como están y comuníquelo al profesional responsable.`,
  'no-diastolic-left-out': (f, say) =>
    `${say.counted(f.value('leftOut'), READINGS)} sin una diastólica utilizable fuera de la media: una sistólica por palpación no es una por auscultación. ${f.value('leftOut') === 1 ? 'Queda' : 'Quedan'} en el registro.`,
  'irregular-takes-all': (f, say) =>
    `El pulso es irregular, así que se promediaron todas (${say.counted(f.value('readings'), READINGS)}), tome lo que tome la guía con uno regular.`,
  'no-two-close': (f, say) =>
    `De ${say.counted(f.value('readings'), READINGS)}, no hay dos seguidas bastante próximas para esta guía, así que no hay media: tome otra, o regístrelas una a una.`,
  'arms-repeat': (f, say) =>
    `El brazo ${arm(f)} da ${difference(f, say)} más, por encima de ${say.limit(f.value('limitMmHg'))}: repita en ambos brazos antes de sacar conclusiones.`,
  'arms-higher': (f, say) =>
    `El brazo ${arm(f)} da ${difference(f, say)} más, por encima de ${say.limit(f.value('limitMmHg'))}: use ese brazo desde ahora y registre que es el más alto.`,
  'arms-either': (f, say) =>
    f.value('systolicMmHg') === 0
      ? 'Ambos brazos dan lo mismo: sirve cualquiera.'
      : `El brazo ${arm(f)} da ${difference(f, say)} más, sin pasar de ${say.limit(f.value('limitMmHg'))}: sirve cualquiera de los dos; registre la diferencia.`,
  'arms-not-compared': (f, say) =>
    f.value('systolicMmHg') === 0
      ? 'La última lectura de cada brazo fue igual; así no se sabe qué brazo da más: registre ambas.'
      : `Por la última lectura de cada uno, el brazo ${arm(f)} dio ${difference(f, say)} más; así no se sabe qué brazo da más: registre ambas.`,
  'arms-look-further': (f, say) =>
    `Los brazos difieren en ${say.beside(Math.abs(f.value('systolicMmHg')), f.value('lookFurtherMmHg'))}, más de ${say.limit(f.value('lookFurtherMmHg'))}: mídalos a la vez si puede (por turnos la diferencia sale demasiado grande) y comuníquelo al profesional responsable, que busca la causa.`,
  'recheck-at-once': () =>
    'La persona se encuentra mal, o la presión es muy baja: mire primero a la persona, repita a mano enseguida y no espere a nada.',
  'recheck-pregnancy': (f, say) =>
    `Grave en el embarazo o las semanas siguientes: repita antes de ${minutes(f, say, 'withinSeconds')} y que obstetricia la vea con urgencia. Confírmelo con su protocolo local.`,
  'recheck-severe': (f, say) =>
    `Grave: si no hay ningún signo de emergencia, deje que la persona repose ${minutes(f, say, 'fromSeconds')}, repita a mano con el manguito adecuado, también en el otro brazo, y comuníquelo al profesional responsable en esta visita. Confírmelo con su protocolo local.`,
  'recheck-abnormal-soon': (f, say) =>
    `Alta por su categoría: revise cómo se midió y repita después de ${minutes(f, say, 'fromSeconds')}, antes de ${minutes(f, say, 'withinSeconds')}.`,
  'recheck-abnormal-later': (f, say) =>
    `Si sigue alta al repetirla: deje reposar a la persona y repita otra vez después de ${minutes(f, say, 'fromSeconds')}, antes de ${minutes(f, say, 'withinSeconds')} (práctica común; prevalece su protocolo local).`,
};

function taken(f: Figures, say: Say): string {
  const readings = f.value('readings');
  if (readings === 0) return 'Todavía no se tomó ninguna lectura con ambos números,';
  return `Se ${readings === 1 ? 'tomó' : 'tomaron'} ${say.counted(readings, READINGS)} con ambos números,`;
}

/** How far two readings are apart; each number on its own side of the limit. */
function apart(f: Figures, say: Say): string {
  const [systolic, diastolic] = [f.value('systolicMmHg'), f.value('diastolicMmHg')].map((mmHg) =>
    say.beside(mmHg, f.value('limitMmHg')),
  );
  return `${systolic} en la sistólica y ${diastolic} en la diastólica`;
}

/** Which arm reads higher: the difference is right minus left. */
function arm(f: Figures): string {
  return f.value('systolicMmHg') > 0 ? 'derecho' : 'izquierdo';
}

function difference(f: Figures, say: Say): string {
  return say.beside(Math.abs(f.value('systolicMmHg')), f.value('limitMmHg'));
}

export function minutes(f: Figures, say: Say, key: string): string {
  return say.counted(f.value(key) / 60, { one: 'minuto', other: 'minutos' });
}
