/**
 * A fault of the program for the log, without a value of anybody: the message of an error of the database may quote
 * what was written ("invalid input syntax ... \"NAME\""), so of those only the code, the constraint and the place
 * in our own code are kept.
 */
export function faultText(error: unknown): string {
  if (!(error instanceof Error)) return `thrown: ${typeof error}`;
  const { code, constraint, severity } = error as {
    code?: unknown;
    constraint?: unknown;
    severity?: unknown;
  };
  if (severity === undefined) return error.stack ?? error.message;
  const frames = (error.stack ?? '').split('\n').filter((line) => line.trimStart().startsWith('at '));
  const what = [
    `database error ${String(code)}`,
    ...(constraint === undefined ? [] : [`constraint ${String(constraint)}`]),
  ];
  return [what.join(', '), ...frames].join('\n');
}
