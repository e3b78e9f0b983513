import type { round as english } from '../english/round.js';
import type { Reworded } from '../reworded.js';
import { roundScreens } from './screens/round.js';

/** As in `english/round`. */
export const round: Reworded<typeof english> = { sections: roundScreens };
