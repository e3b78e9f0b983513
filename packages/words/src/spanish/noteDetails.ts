import type { noteDetails as english } from '../english/noteDetails.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';
import { repeated } from './actNowDetails.js';
import { minutes } from './readingsDetails.js';
import { at, fallen, REST } from './standingAtOnce.js';

/** As in `english/noteDetails`. */
export const noteDetails: Reworded<typeof english> = {
  'arms-unlike-methods': () =>
    'Un brazo se tomó de oído y el otro se leyó en una pantalla, así que no se pueden comparar: tome ambos del mismo modo antes de guiarse por uno.',
  'arms-unlike-cuffs': () =>
    'Los dos brazos se tomaron con manguitos distintos, así que una diferencia entre ellos puede ser de los manguitos: repita ambos brazos con un mismo manguito, si sirve para los dos, antes de guiarse por uno.',
  'arms-cuff-unfitting': (f, say) =>
    `Se usó un manguito que no es adecuado para su brazo${expected(f, say)}, así que una diferencia entre los brazos puede ser del manguito: repita ambos brazos con manguitos adecuados antes de guiarse por uno.`,
  'lying-too-short': (f, say) =>
    `Tomada tras ${say.beside(f.value('minutes'), f.value('neededMinutes'))} min en decúbito; con menos de ${say.limit(f.value('neededMinutes'))} min no se puede afirmar con seguridad una bajada al ponerse de pie: deje que la persona siga acostada y repita.`,
  'lying-not-known': (f, say) =>
    `No se sabe cuánto tiempo llevaba en decúbito; con menos de ${say.limit(f.value('neededMinutes'))} min, una caída al ponerse de pie no se sabe con seguridad.`,
  'too-soon-by-times': (f, say) =>
    `Según las horas guardadas se tomó ${say.beside(f.value('apartSeconds'), f.value('gapSeconds'))} s después de la lectura anterior en este miembro, antes de ${say.limit(f.value('gapSeconds'))} s. Si fue así, deje descansar el brazo y repita; si solo se anotó entonces, corrija las horas una vez firmada.`,
  'no-pulse-in-posture': () =>
    'No se contó ningún pulso en esta postura, y el de otra postura no vale en su lugar. El que se cuenta junto a la lectura se escribe tras sus números: 130/80 84.',
  'third-minute-missed': (f, say) =>
    `No se midió nada a los ${say.limit(f.value('minutes'))} minutos de pie, así que no se sabe si la presión bajó, o siguió baja, hasta entonces.`,
  'fall-lasts': (f, say) =>
    `La bajada al ponerse de pie persiste: ${at(f, say)} la presión seguía más baja${f.has('systolicFall') || f.has('diastolicFall') ? `,${fallen(f, say)}` : ''}; ${REST}`,
  'diastolic-of-muffling': () =>
    'Se oyeron ruidos hasta cero, así que la diastólica es aquí donde se amortiguaron, y la categoría es tan dudosa como ella: presione menos y repita.',
  'recheck-repeated-at-once': (f, say) =>
    `La persona se encuentra mal, o la presión es muy baja, y se repitió (${repeated(f, say)}): quédese con la persona, avise según su protocolo local y vuelva a tomarla como este diga.`,
  'recheck-abnormal-again': (f, say) =>
    `Alta según su categoría, y se repitió: deje reposar a la persona y vuelva a tomarla después de ${minutes(f, say, 'fromSeconds')}, antes de ${minutes(f, say, 'withinSeconds')} (práctica común; prevalece su protocolo local).`,
};

/** What a cuff is expected to add, of each arm where it is known. */
function expected(f: Figures, say: Say): string {
  const parts = (['right', 'left'] as const).flatMap((side) =>
    f.has(`${side}MmHg`)
      ? [`${signed(f.value(`${side}MmHg`), say)} en el ${side === 'right' ? 'derecho' : 'izquierdo'}`]
      : [],
  );
  return parts.length === 0 ? '' : ` (se espera que desplace la sistólica ${say.allOf(parts)})`;
}

function signed(mmHg: number, say: Say): string {
  return `${mmHg > 0 ? '+' : '−'}${say.short(Math.abs(mmHg), 1)}`;
}
