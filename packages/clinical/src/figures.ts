import type { Figure } from './contract/figure.js';
import type { Comparison } from './contract/threshold.js';
import { COUNT_COMPARISONS } from './count/comparisons.js';
import { COUNT_FIGURES } from './count/figures.js';
import { CUFF_COMPARISONS } from './cuff/comparisons.js';
import { CUFF_FIGURES } from './cuff/figures.js';
import { DEFLATION_COMPARISONS } from './deflation/comparisons.js';
import { DEFLATION_FIGURES } from './deflation/figures.js';
import { ROUND_COMPARISONS } from './round/comparisons.js';
import { ROUND_FIGURES } from './round/figures.js';
import { SIGN_COMPARISONS } from './sign/comparisons.js';
import { SIGN_FIGURES } from './sign/figures.js';
import { TAP_COMPARISONS } from './taps/comparisons.js';
import { TAP_FIGURES } from './taps/figures.js';

/** Every clinical number of this package, by folder. `docs/sources.md` is made from it. */
export const FIGURES = {
  count: COUNT_FIGURES,
  cuff: CUFF_FIGURES,
  deflation: DEFLATION_FIGURES,
  round: ROUND_FIGURES,
  sign: SIGN_FIGURES,
  taps: TAP_FIGURES,
} as const satisfies Record<string, Readonly<Record<string, Figure>>>;

/** On which side of a limit its rule applies, by folder and name; `docs/sources.md` prints it beside the number. */
export const COMPARISONS = {
  count: COUNT_COMPARISONS,
  cuff: CUFF_COMPARISONS,
  deflation: DEFLATION_COMPARISONS,
  round: ROUND_COMPARISONS,
  sign: SIGN_COMPARISONS,
  taps: TAP_COMPARISONS,
} as const satisfies Record<keyof typeof FIGURES, Readonly<Record<string, Comparison>>>;
