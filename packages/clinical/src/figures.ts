import type { Figure } from './contract/figure.js';
import { COUNT_FIGURES } from './count/figures.js';
import { CUFF_FIGURES } from './cuff/figures.js';
import { DEFLATION_FIGURES } from './deflation/figures.js';
import { TAP_FIGURES } from './taps/figures.js';

/** Every clinical number of this package, by folder. `docs/sources.md` is made from it. */
export const FIGURES = {
  count: COUNT_FIGURES,
  cuff: CUFF_FIGURES,
  deflation: DEFLATION_FIGURES,
  taps: TAP_FIGURES,
} as const satisfies Record<string, Readonly<Record<string, Figure>>>;
