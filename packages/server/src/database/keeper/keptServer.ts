import { setTimeout as sleep } from 'node:timers/promises';
import { clearLeftovers } from '../cluster/leftovers.js';
import { type Cluster, type Postmaster, startPostmaster } from '../cluster/postmaster.js';
import { ensureRecordDatabase } from '../cluster/recordDatabase.js';
import { DatabaseProblem } from '../problem.js';
import { holdMark, type MarkHolder } from './markHolder.js';

/** Waits before each new start of a server that ended by itself; then it is given up. */
const RESTART_WAITS_MS = [0, 500, 3_000] as const;

const MARK_WAIT_MS = 200;
const MARK_TRIES = 50;

/** A server that is marked as kept while it runs, and started again when it ends by itself. */
export class KeptServer {
  readonly #cluster: Cluster;
  readonly #onLost: (problem: unknown) => void;
  #server: Postmaster | null = null;
  #mark: MarkHolder | null = null;
  #isStopping = false;
  #watched: Promise<void> = Promise.resolve();

  private constructor(cluster: Cluster, onLost: (problem: unknown) => void) {
    this.#cluster = cluster;
    this.#onLost = onLost;
  }

  /**
   * Clears away what a killed program left, starts the server, marks it and looks after it until `stop`.
   *
   * @param onLost the server ended and could not be started again
   */
  static async start(cluster: Cluster, onLost: (problem: unknown) => void): Promise<KeptServer> {
    const kept = new KeptServer(cluster, onLost);
    kept.#watched = kept.#watch(await kept.#start());
    return kept;
  }

  /** The server's process; another one after it had to be started again. */
  get pid(): number {
    return this.#server?.pid ?? 0;
  }

  async stop(): Promise<void> {
    this.#isStopping = true;
    await this.#stopServer();
    await this.#watched;
    await this.#stopServer(); // one that was just being started again
  }

  async #stopServer(): Promise<void> {
    await this.#mark?.release();
    await this.#server?.stop();
  }

  async #start(): Promise<Postmaster> {
    const { layout, endpoint } = this.#cluster;
    await clearLeftovers(layout.cluster, endpoint);
    const server = await startPostmaster(this.#cluster);
    try {
      await this.#takeMark(server);
      await ensureRecordDatabase(endpoint);
    } catch (error) {
      await this.#mark?.release();
      await server.stop();
      throw error;
    }
    this.#server = server;
    return server;
  }

  async #takeMark(server: Postmaster): Promise<void> {
    const { layout, endpoint } = this.#cluster;
    this.#mark = await holdMark(endpoint, () => void this.#retakeMark(server));
    if (this.#mark !== null) return;
    throw new DatabaseProblem('folder-in-use', {
      field: 'EVENFALL_DATA',
      got: layout.root,
      names: { path: layout.root },
    });
  }

  /** The server throws every connection out when one of its workers crashes, and is back within seconds. */
  async #retakeMark(server: Postmaster): Promise<void> {
    for (let tries = 0; tries < MARK_TRIES && !this.#isStopping && !server.hasEnded(); tries += 1) {
      const isTaken = await this.#takeMark(server).then(
        () => true,
        () => false,
      );
      if (isTaken) return;
      await sleep(MARK_WAIT_MS);
    }
  }

  async #watch(first: Postmaster): Promise<void> {
    for (let server: Postmaster | null = first; server !== null; server = await this.#restart()) {
      await server.ended;
      if (this.#isStopping) return;
    }
  }

  async #restart(): Promise<Postmaster | null> {
    let problem: unknown = null;
    for (const wait of RESTART_WAITS_MS) {
      await sleep(wait);
      if (this.#isStopping) return null;
      try {
        return await this.#start();
      } catch (error) {
        problem = error;
      }
    }
    this.#onLost(problem);
    return null;
  }
}
