import { join } from 'node:path';

/** The parts of a data folder. Everything in it belongs to the account that runs PostgreSQL, mode 0700. */
export type FolderLayout = {
  readonly root: string;
  /** The cluster of PostgreSQL; there only whole. */
  readonly cluster: string;
  /** Sockets, where the path is short enough (see `socketFolder`). */
  readonly run: string;
  readonly log: string;
  /** Says that the folder is ours and for what. */
  readonly label: string;
  /** Written while a keeper lives: where it listens. */
  readonly holder: string;
  /** The password of the loopback, where there are no sockets (Windows). */
  readonly password: string;
  /** Keys and certificates of the server; never in a backup. */
  readonly tls: string;
};

export function folderLayout(root: string): FolderLayout {
  return {
    root,
    cluster: join(root, 'pg'),
    run: join(root, 'run'),
    log: join(root, 'log'),
    label: join(root, 'evenfall.json'),
    holder: join(root, 'keeper.json'),
    password: join(root, 'password'),
    tls: join(root, 'tls'),
  };
}
