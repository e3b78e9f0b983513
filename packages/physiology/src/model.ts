/**
 * The number of the model of a simulated person. From the same scenario, seed and actions the same model gives the same visit to the
 * last bit, on every machine; a change of the model that changes a visit has the next number, so that what was practised with another
 * one is not taken for the same visit. 2: a cuff more than two sizes off does no more than one of two. Source: decision of this project; the digest of `rig/sameEverywhere.test.ts` goes with it.
 */
export const MODEL = 2;
