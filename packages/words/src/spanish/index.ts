import type { Catalogue } from '../catalogue.js';
import { joined } from '../joined.js';
import { aside } from './spanishAside.js';
import { bedside } from './spanishBedside.js';
import { later } from './spanishLater.js';
import { practice } from './spanishPractice.js';
import { round } from './spanishRound.js';

/**
 * The Spanish catalogue, a file for each of the English ones: a sentence too few or too many fails the type check there.
 * A translation that no clinician has reviewed (`LANGUAGES` says so).
 */
export const spanish: Catalogue = joined(joined(joined(joined(bedside, round), aside), later), practice);
