import type { diary as english } from '../../../english/screens/bedside/diary.js';
import type { Reworded } from '../../../reworded.js';

/** What the bedside says of it; the rest is in `../diary.ts` and comes later. */
export const diary: Reworded<typeof english> = {
  dueTitle: 'Diarios por devolver',
  dueLine: (f) =>
    `${f.name}: ${f.day === '' ? 'hoy' : `desde el ${f.day}`}${f.from === '' ? '' : `, empezado el ${f.from}`}`,
};
