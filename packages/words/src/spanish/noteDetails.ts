import type { noteDetails as english } from '../english/noteDetails.js';
import type { Figures } from '../figures.js';
import type { Reworded } from '../reworded.js';
import type { Say } from '../say.js';

/** As in `english/noteDetails`. */
export const noteDetails: Reworded<typeof english> = {
  'arms-unlike-cuffs': () =>
    'Los dos brazos se tomaron con manguitos distintos, así que una diferencia entre ellos puede ser de los manguitos: repita ambos brazos con un mismo manguito, si sirve para los dos, antes de guiarse por uno.',
  'arms-cuff-unfitting': (f, say) =>
    `Se usó un manguito que no es adecuado para su brazo${expected(f, say)}, así que una diferencia entre los brazos puede ser del manguito: repita ambos brazos con manguitos adecuados antes de guiarse por uno.`,
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
  return `${mmHg > 0 ? '+' : '-'}${say.short(Math.abs(mmHg), 1)}`;
}
