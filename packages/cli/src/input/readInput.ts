import { readFileSync, statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { type Parsed, refusal } from '@evenfall/clinical';

/** The name that stands for standard input. */
export const STANDARD_INPUT = '-';

/**
 * The text of a file, or of standard input for `-`, as UTF-8; a byte-order mark is dropped.
 *
 * Errors: as {@link readBytes}.
 */
export async function readInput(name: string, stdin: AsyncIterable<Uint8Array>): Promise<Parsed<string>> {
  const bytes = await readBytes(name, stdin);
  return bytes.ok ? { ok: true, value: textIn(bytes.value) } : bytes;
}

/** Bytes in UTF-8 as text, without a byte-order mark. */
export function textIn(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes);
}

/**
 * The bytes of a file, or of standard input for `-`.
 *
 * Errors: a file that does not exist or may not be read is refused (`missing`); any other failure of the machine
 * is thrown.
 */
export async function readBytes(name: string, stdin: AsyncIterable<Uint8Array>): Promise<Parsed<Uint8Array>> {
  if (name === STANDARD_INPUT) return { ok: true, value: await bytesOf(stdin) };
  // Of a pipe nobody knows when it says something: it must not hold up an interruption.
  if (!isPlainFile(name)) return await unlessUnreadable(() => readFile(name));
  return bytesOfFile(name);
}

/** The same of a file at once: a small one is read in a tenth of the time. */
export function bytesOfFile(name: string): Parsed<Uint8Array> {
  try {
    return { ok: true, value: readFileSync(name) };
  } catch (fault) {
    return refusedUnreadable(fault);
  }
}

async function unlessUnreadable(read: () => Promise<Uint8Array>): Promise<Parsed<Uint8Array>> {
  try {
    return { ok: true, value: await read() };
  } catch (fault) {
    return refusedUnreadable(fault);
  }
}

function refusedUnreadable(fault: unknown): Parsed<never> {
  if (!isUnreadable(fault)) throw fault;
  return { ok: false, refusals: [refusal('', 'missing', 'readable-file', null)] };
}

function isPlainFile(name: string): boolean {
  try {
    return statSync(name).isFile();
  } catch {
    return false;
  }
}

/** Whether a name leads to nothing, or to something this person may not read. */
export function isUnreadable(fault: unknown): boolean {
  const code = (fault as NodeJS.ErrnoException).code ?? '';
  return ['ENOENT', 'ENOTDIR', 'EACCES', 'EPERM', 'EISDIR', 'ENAMETOOLONG', 'ELOOP'].includes(code);
}

async function bytesOf(stdin: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of stdin) chunks.push(chunk);
  return Buffer.concat(chunks);
}
