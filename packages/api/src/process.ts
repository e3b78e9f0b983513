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
  /** Listens in the network too, by TLS; null or absent for the loopback alone. */
  readonly lan?: LanSettings | null;
  /** Where the app's built files lie; null serves the API alone. */
  readonly pages: string | null;
  /** Write a line for every request. */
  readonly log: boolean;
};

/** How a server listens beyond the loopback. */
export type LanSettings = {
  /** An address or name of this machine; null for all it has. */
  readonly host: string | null;
  /** A given certificate and its key, paths of PEM files; null for one of the local authority. */
  readonly given: { readonly certificate: string; readonly key: string } | null;
};

/** How a server is reached in the network. */
export type Lan = {
  /** By TLS: its numeric address first. */
  readonly addresses: readonly string[];
  /** On plain HTTP: how to trust it; null with a given certificate. */
  readonly explained: string | null;
  /** SHA-256 of the local authority's certificate, as phones show it; null with a given one. */
  readonly fingerprint: string | null;
  /** A QR picture of the address a camera is to open, as lines of half-block signs, light on dark. */
  readonly picture: readonly string[];
  /** Nobody needs to sign in: an invented clinic without accounts. */
  readonly isOpen: boolean;
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
      /** Null or absent on the loopback alone. */
      readonly lan?: Lan | null;
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
