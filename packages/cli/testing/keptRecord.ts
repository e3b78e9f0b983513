import { expect } from 'vitest';
import { startServer } from '../src/keeper/serverProcess.js';

/** What starts a server process, and for which record. */
export type Kept = {
  readonly serverMain: string;
  readonly folder: string;
  /** Who runs PostgreSQL; null for whoever types. */
  readonly account: string | null;
  readonly env: Readonly<Record<string, string | undefined>>;
};

/**
 * Keeps the record of a folder until `stop`: a command then reaches the server that runs and starts none of its own, which is most of
 * the time of a command.
 */
export async function keptRecord({ serverMain, env, ...record }: Kept): Promise<{ stop(): Promise<void> }> {
  const settings = {
    mode: 'control',
    purpose: 'clinic',
    existing: true,
    port: 0,
    pages: null,
    log: false,
  } as const;
  const server = await startServer(serverMain, { ...settings, ...record }, env);
  expect(server.told.event).toBe('ready');
  return { stop: async () => expect(await server.stop()).toBe(0) };
}

/** The same, while it is used. */
export async function whileKept(kept: Kept, use: () => Promise<void>): Promise<void> {
  const record = await keptRecord(kept);
  try {
    await use();
  } finally {
    await record.stop();
  }
}
