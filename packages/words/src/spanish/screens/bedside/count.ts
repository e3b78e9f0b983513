import type { count as english } from '../../../english/screens/bedside/count.js';
import type { Reworded } from '../../../reworded.js';

/** What the bedside says of it; the rest is in `../count.ts` and comes later. */
export const count: Reworded<typeof english> = {
  rubOut: 'Borrar',
};
