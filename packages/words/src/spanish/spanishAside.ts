import type { aside as english } from '../english/aside.js';
import type { Reworded } from '../reworded.js';
import { signs } from './screens/signs.js';
import { taps } from './screens/taps.js';
import { tapsDetails } from './tapsDetails.js';

/** As in `english/aside`. */
export const aside: Reworded<typeof english> = {
  details: tapsDetails,
  sections: { signs, taps },
};
