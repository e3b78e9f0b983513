/** The numbers of marking on another device, each with its source. */
export const MARKING = {
  /** Letters of a code, of an alphabet without look-alikes: 31^6 is 29 bits. OWASP ASVS 4.0.3, 2.7.6: at least 20 (from memory). */
  codeLetters: 6,
  /** OWASP ASVS 4.0.3, 2.7.2: a code is over after 10 minutes (from memory). */
  lastsMinutes: 10,
  /** Wrong codes of one account within the time; as for pass phrases. Decision of this project. */
  wrongCodesAtMost: 10,
  wrongCodesWithinMinutes: 15,
  /** How long an answer waits for something new, and how often the database is looked at meanwhile. Decision of this project. */
  waitsMs: 2_000,
  looksEveryMs: 150,
} as const;
