/** What the system says when nobody listens, or nobody answers any more. */
const UNREACHED = new Set(['ECONNREFUSED', 'ECONNRESET', 'ENOENT', 'EPIPE', 'ETIMEDOUT', 'EHOSTUNREACH']);
/**
 * PostgreSQL: connection exceptions (class 08), too many connections, and the shutting down or starting up of a server.
 * Source: PostgreSQL documentation, appendix A.
 */
const SQL_STATES = /^(08...|53300|57P0[123])$/;
/** What the driver says of a connection that broke under a query: it has no code. */
const BROKEN =
  /^(Connection terminated|timeout exceeded when trying to connect|Client has encountered a connection error)/;

/** Whether a fault is that the database cannot be reached just now: nothing was kept, and trying again may help. */
export function isAway(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  const { code } = error as NodeJS.ErrnoException;
  if (typeof code === 'string' && (UNREACHED.has(code) || SQL_STATES.test(code))) return true;
  return BROKEN.test(error.message) || isAway(error.cause);
}
