import { SIGN_IN_LIMITS } from '@evenfall/record';

/** The numbers of signing in, each with its source. */
export const SIGN_IN = {
  ...SIGN_IN_LIMITS,
  /** Wrong pass phrases for one name within the time. OWASP ASVS 4.0.3, 2.2.1: at most 100 an hour (from memory). */
  wrongPhrasesAtMost: 10,
  wrongPhrasesWithinMinutes: 15,
  /** Pass phrases that may wait to be checked at once, whoever they are of. Decision of this project. */
  waitingAtMost: 20,
  /** Without a request for so long, a PIN is asked for. Decision of this project; a device asks sooner. */
  idleMinutes: 15,
  /** Argon2id: memory, passes, lanes. OWASP Password Storage: at least 19 MiB, 2 passes, 1 lane (from memory). */
  memoryKiB: 19_456,
  passes: 2,
  lanes: 1,
} as const;
