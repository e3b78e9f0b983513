/** The numbers of signing in, each with its source. */
export const SIGN_IN = {
  /** Characters of a pass phrase. OWASP ASVS 4.0.3, 2.1.1 and 2.1.2: at least 12, and 64 or more allowed (from memory). */
  phraseAtLeast: 12,
  phraseAtMost: 128,
  /** Digits of a PIN. Decision of this project: it opens one device only, on which the pass phrase was given. */
  pinAtLeast: 4,
  pinAtMost: 8,
  /** A wrong PIN more ends the sign-in. Decision of this project. */
  wrongPinsAtMost: 5,
  /** Wrong pass phrases for one name within the time. OWASP ASVS 4.0.3, 2.2.1: at most 100 an hour (from memory). */
  wrongPhrasesAtMost: 10,
  wrongPhrasesWithinMinutes: 15,
  /** Pass phrases that may wait to be checked at once, whoever they are of. Decision of this project. */
  waitingAtMost: 20,
  /** Without a request for so long, a PIN is asked for. Decision of this project; a device asks sooner. */
  idleMinutes: 15,
  /** A pass phrase is asked for again after so long: a long shift. OWASP ASVS 4.0.3, 3.3.2: 12 hours (from memory). */
  wholeHours: 12,
  /** Argon2id: memory, passes, lanes. OWASP Password Storage: at least 19 MiB, 2 passes, 1 lane (from memory). */
  memoryKiB: 19_456,
  passes: 2,
  lanes: 1,
} as const;
