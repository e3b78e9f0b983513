import { signs } from './screens/signs.js';
import { taps } from './screens/taps.js';
import { tapsDetails } from './tapsDetails.js';

/** What a guided round says beside `round` where it comes to other signs, or to beats or breaths that are tapped. */
export const aside = {
  details: tapsDetails,
  sections: { signs, taps },
} as const;
