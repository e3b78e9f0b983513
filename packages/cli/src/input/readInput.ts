import { readFile } from 'node:fs/promises';
import { type Parsed, refusal } from '@evenfall/clinical';

/** The name that stands for standard input. */
export const STANDARD_INPUT = '-';

/**
 * The text of a file, or of standard input for `-`, as UTF-8; a byte-order mark is dropped.
 *
 * Errors: a file that does not exist or may not be read is refused (`missing`); any other failure of the machine
 * is thrown.
 */
export async function readInput(name: string, stdin: AsyncIterable<Uint8Array>): Promise<Parsed<string>> {
  if (name === STANDARD_INPUT) return { ok: true, value: await textOf(stdin) };
  try {
    return { ok: true, value: new TextDecoder().decode(await readFile(name)) };
  } catch (fault) {
    if (!isUnreadable(fault)) throw fault;
    return { ok: false, refusals: [refusal('', 'missing', 'readable-file', null)] };
  }
}

/** Whether a name leads to nothing, or to something this person may not read. */
export function isUnreadable(fault: unknown): boolean {
  const code = (fault as NodeJS.ErrnoException).code ?? '';
  return ['ENOENT', 'ENOTDIR', 'EACCES', 'EPERM', 'EISDIR', 'ENAMETOOLONG', 'ELOOP'].includes(code);
}

async function textOf(stdin: AsyncIterable<Uint8Array>): Promise<string> {
  const decoder = new TextDecoder();
  let text = '';
  for await (const chunk of stdin) text += decoder.decode(chunk, { stream: true });
  return text + decoder.decode();
}
