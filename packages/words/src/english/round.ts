import { noteDetails } from './noteDetails.js';
import { scoreDetails } from './scoreDetails.js';
import { roundScreens } from './screens/round.js';
import { standingDetails } from './standingDetails.js';

/** What a guided round says beside `bedside`. */
export const round = {
  details: { ...noteDetails, ...scoreDetails, ...standingDetails },
  sections: roundScreens,
} as const;
