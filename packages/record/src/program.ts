/** This program and its version, as every value names what made it. A test holds it against package.json. */
export const PROGRAM = 'evenfall 0.1.0';
