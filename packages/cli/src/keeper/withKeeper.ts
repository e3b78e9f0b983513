import type { Parsed } from '@evenfall/clinical';
import { type Answer, refused } from '../answer.js';
import type { Context } from '../command.js';
import type { Given, Option } from '../options/option.js';
import { startServer } from './serverProcess.js';

/** Which record a command means. */
export type Record = {
  readonly purpose: 'clinic' | 'demo';
  readonly folder: string | null;
  readonly account: string | null;
};

/** The options that say which record. */
export const RECORD_OPTIONS: readonly Option[] = [
  { name: 'demo', kind: 'switch', means: 'options.demo' },
  { name: 'data', kind: 'value', means: 'options.data', hint: 'FOLDER' },
  { name: 'account', kind: 'value', means: 'options.account', hint: 'NAME' },
];

export function recordOf(given: Given): Record {
  return {
    purpose: given.isOn('demo') ? 'demo' : 'clinic',
    folder: given.text('data'),
    account: given.text('account'),
  };
}

/**
 * Runs a command's work against the record: through the server that keeps it if one runs, else through one
 * started for this command alone, which is stopped afterwards. A folder that holds no record is refused, so that a
 * mistyped name makes none, unless the command `makes` one there.
 */
export async function withKeeper(
  record: Record,
  context: Context,
  use: (controlSocket: string) => Promise<Answer>,
  { makes }: { readonly makes: boolean } = { makes: false },
): Promise<Answer> {
  const settings = {
    mode: 'control',
    ...record,
    existing: !makes,
    port: 0,
    pages: null,
    log: false,
  } as const;
  const server = await startServer(context.serverMain, settings, context.env);
  try {
    const { told } = server;
    if (told.event === 'refused') return refused([context.words.refusedStart(told)]);
    const socket = told.controlSocket;
    if (socket === null) throw new Error('the server listens for no commands on this kind of machine');
    return await use(socket);
  } finally {
    await server.stop();
  }
}

/** A command that takes one file and says which record. */
export type FileAndRecord = Record & { readonly file: string };

export function fileAndRecord(given: Given, [file = '']: readonly string[]): Parsed<FileAndRecord> {
  return { ok: true, value: { ...recordOf(given), file } };
}
