/** The largest body taken, in bytes: 200 entries of 2,000 taps each fit. Source: decision of this project. */
export const LARGEST_BODY_BYTES = 8 * 1024 * 1024;
