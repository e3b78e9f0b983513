import type { RefusedStart } from '@evenfall/words';

/** What the server process is told, in one JSON argument. The same contract stands in the server's `settings.ts`. */
export type Settings = {
  readonly mode: 'serve' | 'control';
  readonly purpose: 'clinic' | 'demo';
  readonly folder: string | null;
  readonly account: string | null;
  readonly port: number;
  readonly pages: string | null;
  readonly log: boolean;
};

/** What it tells, one JSON line each. */
export type Told =
  | {
      readonly event: 'ready';
      readonly address: string | null;
      readonly controlSocket: string | null;
      readonly folder: string | null;
      readonly database: 'embedded' | 'shared' | 'memory';
      readonly site: { readonly name: string; readonly invented: boolean };
    }
  | {
      readonly event: 'kept-by';
      readonly pid: number;
      readonly address: string | null;
      readonly controlSocket: string;
    }
  | ({ readonly event: 'refused' } & RefusedStart);
