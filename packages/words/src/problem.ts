import type { Refusal, RefusalCode } from '@evenfall/clinical';
import type { StartCode } from './catalogue.js';

/**
 * A refused input as every surface reports it: command line, HTTP and files alike.
 * Null where a part does not apply; `line` and `column` count from 1. Source: docs/conventions.md section 2.
 */
export type Problem = {
  readonly file: string | null;
  readonly line: number | null;
  readonly column: number | null;
  /** The option (`--n`), the CSV heading or the JSON Pointer. */
  readonly field: string | null;
  /** `fault` is a fault of the program or the machine, never of the input; `unreadable` an entry that is kept and that
   * this program cannot read; a start code says why a record could not be opened. */
  readonly code: RefusalCode | StartCode | 'fault' | 'unreadable';
  readonly expected: string | null;
  readonly got: string | null;
  readonly message: string;
};

/** Where a refused input stood, and what its fields are called there. */
export type Place = {
  readonly file?: string | null;
  readonly line?: number | null;
  readonly column?: number | null;
  /** Turns the refusal's field into the name the person typed: `/n` into `--n`. */
  readonly nameOf?: (field: string) => string;
};

/** Where a refusal stood, by its own account and by its place's. */
export function placed(refusal: Refusal, place: Place): Pick<Problem, 'file' | 'line' | 'column' | 'field'> {
  return {
    file: place.file ?? null,
    line: place.line ?? refusal.line,
    column: place.column ?? null,
    field: refusal.field === '' ? null : (place.nameOf?.(refusal.field) ?? refusal.field),
  };
}
