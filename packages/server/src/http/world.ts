import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import type { Site } from '../store/site.js';
import type { LogLine } from './log.js';

/** All that the routes need of the world. */
export type World = {
  readonly db: Kysely<Tables>;
  /** The site whose record this is; another one after a restore. */
  readonly site: () => Site;
  /** Reads the site again, after a restore. */
  readonly siteChanged: () => Promise<void>;
  /** The program and its version, as values name it. */
  readonly program: string;
  /** What this machine is called in its network, as a `Host` without port; by TLS alone. Absent on the loopback alone. */
  readonly hosts?: () => ReadonlySet<string>;
  readonly now: () => Date;
  /** Milliseconds that only grow, for durations. */
  readonly ticks: () => number;
  readonly log: (line: LogLine) => void;
  /** A fault of the program: its own words, never the values of a request. */
  readonly fault: (error: unknown) => void;
};
