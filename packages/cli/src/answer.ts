import type { Problem } from '@evenfall/words';

/** A JSON object whose keys come out in the order they were put in. */
export type Json = { readonly [key: string]: unknown };

/** What a command answers. Which stream and which exit code follow from it is decided in one place, `deliver`. */
export type Answer =
  /** One answer: an object for programs, lines for people. */
  | { readonly kind: 'one'; readonly json: Json; readonly lines: readonly string[] }
  /** Done, and not to be relied on: what is wrong is no fault of what was typed. */
  | { readonly kind: 'unsound'; readonly problems: readonly Problem[] }
  /** Input refused. */
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  /** One JSON object a line, in order of path; a refused file does not stop the rest. */
  | { readonly kind: 'files'; readonly lines: AsyncIterable<FileLines> }
  /** A document as it is (a CSV file), on standard output; a note on what is not in it, on standard error. */
  | { readonly kind: 'document'; readonly text: string; readonly note?: string }
  /** Nothing to print: what was asked for has been done. */
  | { readonly kind: 'done' };

/** The lines of one file or several, as they are written (from another thread as UTF-8), and everything that was wrong with those. */
export type FileLines = { readonly text: string | Uint8Array; readonly problems: readonly Problem[] };

/** The answer that nothing but problems is. */
export function refused(problems: readonly Problem[]): Answer {
  return { kind: 'refused', problems };
}
