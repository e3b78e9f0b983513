import { type Parsed, refusal } from '@evenfall/clinical';

/**
 * The value of a JSON text.
 *
 * Errors: `missing`, with the line where it stops being JSON if the machine says so.
 */
export function jsonOf(text: string): Parsed<unknown> {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch (fault) {
    if (!(fault instanceof SyntaxError)) throw fault;
    return {
      ok: false,
      refusals: [refusal('', 'missing', 'json-text', null, { line: lineOf(fault, text) })],
    };
  }
}

/** An empty or cut-off text stops at its end; else the machine may say how many characters were good. */
function lineOf({ message }: SyntaxError, text: string): number | null {
  const whole = text.trimEnd();
  const said = /position (\d+)/.exec(message)?.[1];
  const at = /end of JSON/i.test(message) ? whole.length : said === undefined ? null : Number(said);
  return at === null ? null : whole.slice(0, at).split('\n').length;
}
