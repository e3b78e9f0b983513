import type { amend as english } from '../../../english/screens/bedside/amend.js';
import type { Reworded } from '../../../reworded.js';

/** What the bedside says of it; the rest is in `../amend.ts` and comes later. */
export const amend: Reworded<typeof english> = {
  reasonMissing: 'Elija un motivo.',
};
