import { mkdtemp, rm } from 'node:fs/promises';
import { createServer, type Server as HttpServer } from 'node:http';
import type { Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Lan, Settings } from '@evenfall/api';
import { PROGRAM } from '@evenfall/record';
import { getRequestListener } from '@hono/node-server';
import { Kysely } from 'kysely';
import { v7 } from 'uuid';
import { controlRoutes } from '../control/controlRoutes.js';
import { removeNew } from '../database/folder/existingRecord.js';
import { migrate } from '../database/migrations/index.js';
import type { OpenDatabase } from '../database/openDatabase.js';
import type { Tables } from '../database/schema.js';
import { fillDemo } from '../demo/fillDemo.js';
import { createApi } from '../http/app.js';
import { classEnded, type LogLine } from '../http/log.js';
import type { World } from '../http/world.js';
import { holdsAnything } from '../keeping/holdsAnything.js';
import { forgetMarkings } from '../marking/markings.js';
import { pageRoutes, readPages } from '../pages/pages.js';
import { endForgotten } from '../store/endClassSession.js';
import { openSite, readSite, type Site } from '../store/site.js';
import { certificatesFor } from '../tls/certificates.js';
import { hasOwner } from '../tls/hasOwner.js';
import { type Network, network } from '../tls/network.js';
import { reachRoutes } from '../tls/reachRoutes.js';
import { StartRefused } from './startRefused.js';

/** A server that runs: where, and how to stop it. */
export type Running = {
  readonly address: string | null;
  /** How it is reached in the network; null on the loopback alone. */
  readonly lan: Lan | null;
  readonly controlSocket: string | null;
  readonly site: Site;
  /** Settles when all is closed. May be called more than once: a later call waits for the same end. */
  close(): Promise<void>;
};

/** What a server tells the outside: requests and class sessions that are over (without names or values), and faults. */
export type Tell = {
  readonly log: (line: LogLine) => void;
  readonly fault: (error: unknown) => void;
};

/**
 * Brings an open database up to date and serves it. The database is closed with the server.
 *
 * Errors: `StartRefused`; whatever the migrations throw. The database is then closed.
 */
export async function runServer(database: OpenDatabase, settings: Settings, tell: Tell): Promise<Running> {
  const closing: (() => Promise<void>)[] = [() => database.close()];
  if (settings.mode === 'control') leaveNoEmptyRecord(database, closing);
  let closed: Promise<void> | null = null;
  const closeAll = async () => {
    for (const step of closing.reverse()) await step().catch(tell.fault);
  };
  const close = () => {
    closed ??= closeAll();
    return closed;
  };
  try {
    const db = new Kysely<Tables>({ dialect: database.dialect });
    await migrate(db);
    const world = await worldOf(db, settings, tell);
    if (settings.purpose === 'demo' && settings.mode === 'serve')
      await fillDemo(db, world.site().id, world.now());
    await keepEndingClasses(world, closing);
    const controlSocket = await listenForCommands(database, world, closing);
    const net = settings.mode === 'serve' ? await networkOf(database, settings, world, closing) : null;
    const address = settings.mode === 'serve' ? await listenForPages(settings, world, net, closing) : null;
    await database.keeper?.setAddress(address);
    return { address, lan: net?.reached.lan() ?? null, controlSocket, site: world.site(), close };
  } catch (error) {
    await close();
    throw error;
  }
}

/** A record that was made for one command and got nothing (a restore that failed) is taken away again. */
function leaveNoEmptyRecord({ dialect, keeper }: OpenDatabase, closing: (() => Promise<void>)[]): void {
  const made = keeper?.made ?? [];
  if (made.length === 0) return;
  let isEmpty = false; // as long as nobody has looked, it may hold something
  closing.unshift(async () => {
    if (isEmpty) await removeNew(made);
  });
  closing.push(async () => {
    isEmpty = !(await holdsAnything(new Kysely<Tables>({ dialect })));
  });
}

/** How often a running server looks for class sessions that nobody ended, ms. Source: decision of this project. */
const LOOK_FOR_CLASSES_MS = 15 * 60_000;

/**
 * Class sessions that nobody ended are ended when a server starts and while it runs; nothing of them stays. Nor does what
 * was marked for a run that nobody ended.
 */
async function keepEndingClasses(world: World, closing: (() => Promise<void>)[]): Promise<void> {
  // A fault is told and keeps no server from its charts; the next look tries again.
  const end = async () => {
    const ended = await endForgotten(world.db, world.site().id, world.now());
    for (const deleted of ended) world.log(classEnded('server', deleted));
    await forgetMarkings(world.db, world.site().id, world.now());
  };
  await end().catch(world.fault);
  const timer = setInterval(() => void end().catch(world.fault), LOOK_FOR_CLASSES_MS);
  timer.unref();
  closing.push(async () => clearInterval(timer));
}

async function worldOf(db: Kysely<Tables>, { purpose }: Settings, tell: Tell): Promise<World> {
  const invented = purpose === 'demo';
  const name = invented ? 'Evenfall demo clinic (invented)' : 'Clinic';
  let site = await openSite(db, { id: v7(), name, invented });
  return {
    db,
    site: () => site,
    siteChanged: async () => {
      site = (await readSite(db)) ?? site;
    },
    program: PROGRAM,
    now: () => new Date(),
    ticks: () => performance.now(),
    log: tell.log,
    fault: tell.fault,
  };
}

/** Commands come through the keeper's socket, or, where there is no folder, through one of this process's own. */
async function listenForCommands(
  { keeper }: OpenDatabase,
  world: World,
  closing: (() => Promise<void>)[],
): Promise<string | null> {
  const app = createApi(world, true);
  controlRoutes(app, world);
  const listener = getRequestListener(app.fetch);
  if (keeper !== null) {
    keeper.serve((request, response) => void listener(request, response));
    return keeper.controlSocketPath;
  }
  if (process.platform === 'win32') return null;
  const folder = await mkdtemp(join(tmpdir(), 'evenfall-'));
  const server = createServer((request, response) => void listener(request, response));
  closing.push(async () => {
    await closed(server);
    await rm(folder, { recursive: true, force: true });
  });
  const path = join(folder, 'evenfall.sock');
  await listening(server, () => server.listen(path));
  return path;
}

/** What a server beyond the loopback needs before it may listen there; null on the loopback alone. */
async function networkOf(
  { keeper }: OpenDatabase,
  { lan = null, purpose }: Settings,
  world: World,
  closing: (() => Promise<void>)[],
): Promise<Network | null> {
  if (lan === null) return null;
  const isOpen = !(await hasOwner(world.db));
  if (isOpen && purpose !== 'demo') throw new StartRefused('lan-owner-needed', '--lan');
  const certificates = await certificatesFor(lan, keeper);
  const isInvented = () => world.site().invented;
  const net = await network({ lan, certificates, isOpen, isInvented, now: world.now, fault: world.fault });
  closing.push(net.close);
  return net;
}

async function listenForPages(
  settings: Settings,
  world: World,
  net: Network | null,
  closing: (() => Promise<void>)[],
): Promise<string> {
  const app = createApi(net === null ? world : { ...world, hosts: net.hosts });
  const isInvented = () => world.site().invented;
  reachRoutes(app, net?.reached ?? { lan: () => null, authority: () => null, isInvented }, false);
  if (settings.pages !== null) pageRoutes(app, await readPages(settings.pages), isInvented);
  const listener = getRequestListener(app.fetch);
  if (net !== null) {
    const open = (server: Server, listen: () => void) => listening(server, listen, settings.port);
    const port = await net.open((request, response) => void listener(request, response), settings.port, open);
    return `http://127.0.0.1:${port}`;
  }
  const server = createServer((request, response) => void listener(request, response));
  closing.push(() => closed(server));
  await listening(server, () => server.listen(settings.port, '127.0.0.1'), settings.port);
  const bound = server.address();
  const port = typeof bound === 'object' && bound !== null ? bound.port : settings.port;
  return `http://127.0.0.1:${port}`;
}

function listening(server: Server, listen: () => void, port = 0): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const isTaken = error.code === 'EADDRINUSE';
      reject(isTaken ? new StartRefused('port-in-use', '--port', { port }) : error);
    });
    server.once('listening', () => resolve());
    listen();
  });
}

/** Stops taking requests and lets those under way finish for a moment; everything acknowledged is kept already. */
function closed(server: HttpServer): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeIdleConnections();
    setTimeout(() => server.closeAllConnections(), 1_000).unref();
  });
}
