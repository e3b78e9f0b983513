/** Sides, sites of a cuff, and postures, as the trade writes them. */
export const SIDES = ['right', 'left'] as const;
export type Side = (typeof SIDES)[number];

export const CUFF_SITES = ['upper-arm', 'forearm', 'wrist', 'thigh', 'calf'] as const;
export type CuffSite = (typeof CUFF_SITES)[number];

/** `lie` is flat on the back; `lie-left` is on the left side. */
export const POSTURES = ['sit', 'lie', 'lie-left', 'stand'] as const;
export type Posture = (typeof POSTURES)[number];

/** Cuffs as the shorthand writes them: `L-cuff`. */
export const CUFF_SIZES = ['S', 'M', 'L', 'XL'] as const;
export type CuffSize = (typeof CUFF_SIZES)[number];
