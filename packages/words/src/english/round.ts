import { noteDetails } from './noteDetails.js';
import { scoreDetails } from './scoreDetails.js';
import { roundScreens } from './screens/round.js';
import { signDetails } from './signDetails.js';
import { standingDetails } from './standingDetails.js';

/** What a guided round says beside `bedside`. */
export const round = {
  details: { ...noteDetails, ...scoreDetails, ...signDetails, ...standingDetails },
  sections: roundScreens,
} as const;
