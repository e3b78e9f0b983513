import type { Parsed } from '@evenfall/clinical';
import type { PlainKey, Words } from '@evenfall/words';
import type { Answer } from './answer.js';
import type { Given, Option } from './options/option.js';
import type { Operands } from './options/read.js';

/** Everything outside a command that it may use. A test passes its own. */
export type World = {
  readonly stdin: AsyncIterable<Uint8Array>;
  readonly stdout: NodeJS.WritableStream;
  readonly stderr: NodeJS.WritableStream;
  /** Asks for a line; null where nobody sits at a terminal. */
  readonly askLine: ((prompt: string) => Promise<string>) | null;
  /** Asks for a line that is not shown while it is typed; null where nobody sits at a terminal. */
  readonly askSecret: ((prompt: string) => Promise<string>) | null;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** The time now. */
  readonly now: () => Date;
  /** Aborted when the person interrupts (Ctrl-C) or the machine asks the program to end. */
  readonly interrupted: AbortSignal;
  readonly version: string;
  /** The server's program, started as a process of its own. */
  readonly serverMain: string;
  /** The app's built files; null where there are none. */
  readonly pages: string | null;
};

export type Context = World & { readonly words: Words };

/** Something to choose from. Source: docs/conventions.md section 1. */
export type Item = {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly status: string;
  /** What to type for it. */
  readonly typed: string;
  /** Of a simulated person: what a good observer reports. */
  readonly report?: readonly { readonly code: string; readonly detail: string }[];
  /** The version of a set of rules, and each of its fields with where it comes from. */
  readonly version?: string;
  readonly fields?: readonly ItemField[];
};

export type ItemField = {
  readonly key: string;
  readonly value: unknown;
  readonly unit: string | null;
  readonly source: string;
  readonly status: string;
};

/**
 * One command: what it takes, as data, and what it does. Each lives in its own file in `commands/` and is named
 * once, in `commands/index.ts`.
 */
export type Command<Input> = {
  readonly name: string;
  readonly summary: PlainKey;
  readonly options: readonly Option[];
  readonly operands: Operands;
  /** What there is to choose from, for `--list`; absent if there is no choice. */
  readonly list?: (words: Words) => readonly Item[];
  /** Turns what was typed into what it means, once; refusals name fields that {@link Option.field} maps back. */
  readonly parse: (given: Given, operands: readonly string[]) => Parsed<Input>;
  readonly run: (input: Input, context: Context) => Promise<Answer>;
  /** Whether it ends by itself, tidily, when interrupted; else it is simply left. */
  readonly endsItself?: boolean;
};

/** A command whose input only it knows. */
export type AnyCommand = Omit<Command<unknown>, 'parse' | 'run'> & {
  /** Parses and binds: what to run, or everything that is wrong. */
  readonly prepare: (
    given: Given,
    operands: readonly string[],
  ) => Parsed<(context: Context) => Promise<Answer>>;
};

/** Closes a command over its input, so that all of them fit in one table. */
export function command<Input>({ parse, run, ...rest }: Command<Input>): AnyCommand {
  return {
    ...rest,
    prepare(given, operands) {
      const parsed = parse(given, operands);
      if (!parsed.ok) return parsed;
      return { ok: true, value: (context) => run(parsed.value, context) };
    },
  };
}

/** For a command that takes no operands. */
export const NO_OPERANDS: Operands = { hint: '', least: 0, most: 0 };
