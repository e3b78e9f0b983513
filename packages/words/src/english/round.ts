import { roundScreens } from './screens/round.js';

/** What a guided round says beside `bedside`. */
export const round = { sections: roundScreens } as const;
