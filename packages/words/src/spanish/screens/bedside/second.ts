import type { second as english } from '../../../english/screens/bedside/second.js';
import type { Reworded } from '../../../reworded.js';

/** What the bedside says of it; the rest is in `../second.ts` and comes later. */
export const second: Reworded<typeof english> = {
  link: 'Marcar para otra persona',
};
