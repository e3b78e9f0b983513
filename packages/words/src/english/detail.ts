import type { Figures } from '../figures.js';
import type { Say } from '../say.js';

/** One sentence made from a code's figures. */
export type Detail = (f: Figures, say: Say) => string;
