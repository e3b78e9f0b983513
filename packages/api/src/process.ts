/**
 * How a server process is to run, as its parent (the `evenfall` command) says it in one JSON argument. The command
 * has read and refused what a person typed; this is the contract between the two programs.
 */
export type Settings = {
  /** `serve` listens on the loopback; `control` only on the control socket, for one command. */
  readonly mode: 'serve' | 'control';
  readonly purpose: 'clinic' | 'demo';
  /** Named data folder; null for the platform's usual place. */
  readonly folder: string | null;
  /** Whose data it is, where this program runs as root. */
  readonly account: string | null;
  /** Only a record that is there already; where it is not true, one is made in a folder that has none. */
  readonly existing?: boolean;
  readonly port: number;
  /** Where the app's built files lie; null serves the API alone. */
  readonly pages: string | null;
  /** Write a line for every request. */
  readonly log: boolean;
};

/** What a server process tells its parent, one JSON line each on standard output. */
export type Told =
  | {
      readonly event: 'ready';
      /** Null in `control` mode. */
      readonly address: string | null;
      /** Null where there is no folder of ours and nothing listens for commands. */
      readonly controlSocket: string | null;
      readonly folder: string | null;
      readonly database: 'embedded' | 'shared' | 'memory';
      readonly site: { readonly name: string; readonly invented: boolean };
    }
  /** Another process keeps the folder; a command goes through it. */
  | {
      readonly event: 'kept-by';
      readonly pid: number;
      readonly address: string | null;
      readonly controlSocket: string;
    }
  | {
      readonly event: 'refused';
      readonly code: string;
      readonly field: string | null;
      readonly expected: string | null;
      readonly got: string | null;
      readonly figures: Readonly<Record<string, number>>;
      readonly names: Readonly<Record<string, string>>;
    };
