/**
 * What a pass phrase and a PIN are held to and how long they open a device, each with its source. The server holds them
 * to it, and every screen says it from here.
 */
export const SIGN_IN_LIMITS = {
  /** Characters of a pass phrase. OWASP ASVS 4.0.3, 2.1.1 and 2.1.2: at least 12, and 64 or more allowed (from memory). */
  phraseAtLeast: 12,
  phraseAtMost: 128,
  /** Digits of a PIN. Decision of this project: it opens one device only, on which the pass phrase was given. */
  pinAtLeast: 4,
  pinAtMost: 8,
  /** A wrong PIN more ends the sign-in. Decision of this project. */
  wrongPinsAtMost: 5,
  /** A pass phrase is asked for again after so long: a long shift. OWASP ASVS 4.0.3, 3.3.2: 12 hours (from memory). */
  wholeHours: 12,
} as const;
