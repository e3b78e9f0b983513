import type { ClinicalCode } from '../codes.js';
import { joined } from '../joined.js';
import { aside } from './aside.js';
import { bedside } from './bedside.js';
import type { Detail } from './detail.js';
import { later } from './later.js';
import { practice } from './practice.js';
import { round } from './round.js';

/** The English catalogue. Its keys are the keys of every language (see `Catalogue`). */
export const english = joined(joined(joined(joined(bedside, round), aside), later), practice);

// A sentence for every code of every clinical result.
english.details satisfies Record<ClinicalCode, Detail>;
