import { rmdir } from 'node:fs/promises';
import type { RequestListener } from 'node:http';
import { dirname } from 'node:path';
import type { DatabaseAccount } from '../account/account.js';
import { createCluster } from '../cluster/createCluster.js';
import type { Endpoint } from '../cluster/endpoint.js';
import { boundLog } from '../cluster/logFile.js';
import type { Cluster } from '../cluster/postmaster.js';
import type { FolderLayout } from '../folder/layout.js';
import {
  askKeeper,
  type ControlSocket,
  controlSocketPath,
  inUse,
  takeControlSocket,
} from './controlSocket.js';
import { readHolder, removeHolder, writeHolder } from './holderFile.js';
import { KeptServer } from './keptServer.js';

/** Keeps one data folder: its lock, its server, and the socket other programs on this machine speak to. */
export type Keeper = {
  readonly folder: string;
  /** Whose the folder is, and where its parts lie. */
  readonly account: DatabaseAccount;
  readonly layout: FolderLayout;
  readonly endpoint: Endpoint;
  /** What this keeper added to the machine: paths to take away where the record is not wanted after all. */
  readonly made: readonly string[];
  /** Speaks HTTP: `GET /keeper` answers `{ pid, address }`, the rest goes to the listener of `serve`. */
  readonly controlSocketPath: string;
  /** The server's process; another one after it had to be started again. */
  postgresPid(): number;
  serve(listener: RequestListener): void;
  /** The address of the pages, told to whoever asks who holds the folder. */
  setAddress(address: string | null): Promise<void>;
  /** Stops the server with a fast shutdown and lets the folder go. May be called more than once. */
  close(): Promise<void>;
};

export type KeeperOptions = Cluster & {
  /** Where the control socket lies. */
  readonly socketFolder: string;
  /** What is new with the record, if it is. */
  readonly made?: readonly string[];
  /** The server ended and could not be started again. */
  readonly onLost: (problem: unknown) => void;
};

const LOG_CHECK_MS = 3_600_000;

/**
 * Takes the folder's lock, makes the cluster if there is none, clears away what a killed program left, starts
 * the server and marks it as kept. What was taken is let go again if any step fails.
 *
 * Errors: `folder-in-use` and those of the steps.
 */
export async function keep(options: KeeperOptions): Promise<Keeper> {
  const { layout, account, endpoint } = options;
  let address: string | null = null;
  const holder = () => ({ pid: process.pid, address });
  const control = await takeControlSocket(controlSocketPath(options.socketFolder), account, holder);
  const note = () => writeHolder(layout.holder, { ...holder(), controlSocket: control.path }, account);
  const server = await start(options, control, note).catch(async (error: unknown) => {
    await letGo(options, control);
    throw error;
  });
  const logCheck = setInterval(() => void boundLog(layout, account).catch(() => undefined), LOG_CHECK_MS);
  logCheck.unref();
  const close = async () => {
    clearInterval(logCheck);
    await server.stop();
    await removeHolder(layout.holder);
    await letGo(options, control);
  };
  let closed: Promise<void> | null = null;
  return {
    folder: layout.root,
    account,
    layout,
    made: options.made ?? [],
    endpoint,
    controlSocketPath: control.path,
    postgresPid: () => server.pid,
    serve: control.serve,
    setAddress: async (next) => {
      address = next;
      await note();
    },
    close: () => {
      closed ??= close();
      return closed;
    },
  };
}

async function start(options: KeeperOptions, control: ControlSocket, note: () => Promise<void>) {
  const { layout, binaries, endpoint, account } = options;
  await refuseKeptElsewhere(layout, control.path);
  await note();
  await createCluster(layout, binaries, endpoint, account);
  const server = await KeptServer.start(options, options.onLost);
  if (await control.isOurs()) return server;
  await server.stop();
  throw inUse(control.path, await askKeeper(control.path));
}

/** A keeper with another temp folder has its sockets elsewhere; its note says where to ask. */
async function refuseKeptElsewhere(layout: FolderLayout, ours: string): Promise<void> {
  const other = await readHolder(layout.holder);
  if (other === null || other.controlSocket === ours) return;
  const answer = await askKeeper(other.controlSocket);
  if (answer.state !== 'free') throw inUse(other.controlSocket, answer);
}

/** The lock goes last, when nothing of ours is left in the folder. */
async function letGo({ layout, socketFolder }: KeeperOptions, control: ControlSocket): Promise<void> {
  await control.close();
  const isElsewhere = dirname(socketFolder) !== dirname(layout.run) && process.platform !== 'win32';
  if (isElsewhere) await rmdir(socketFolder).catch(() => undefined);
}
