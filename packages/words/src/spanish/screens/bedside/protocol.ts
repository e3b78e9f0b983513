import type { protocol as english } from '../../../english/screens/bedside/protocol.js';
import type { Reworded } from '../../../reworded.js';

/** What the bedside says of it; the rest is in `../protocol.ts` and comes later. */
export const protocol: Reworded<typeof english> = {
  link: 'Protocolo local',
};
