import type { round as english } from '../english/round.js';
import type { Reworded } from '../reworded.js';
import { noteDetails } from './noteDetails.js';
import { scoreDetails } from './scoreDetails.js';
import { roundScreens } from './screens/round.js';
import { signDetails } from './signDetails.js';
import { standingDetails } from './standingDetails.js';

/** As in `english/round`. */
export const round: Reworded<typeof english> = {
  details: { ...noteDetails, ...scoreDetails, ...signDetails, ...standingDetails },
  sections: roundScreens,
};
