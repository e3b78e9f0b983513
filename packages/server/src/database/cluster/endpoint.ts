import type { ClientConfig } from 'pg';

/**
 * How the cluster is reached: by a socket in a folder that only its account may enter, or, where Node cannot
 * speak to such sockets (Windows), by the loopback with a password.
 */
export type Endpoint =
  | { readonly kind: 'socket'; readonly folder: string }
  | { readonly kind: 'loopback'; readonly port: number; readonly password: string };

/** Part of every socket's name; nothing listens on this port. */
export const SOCKET_PORT = 5432;

/** Owns the cluster; used by the keeper alone. */
export const KEEPER_ROLE = 'keeper';
/** Owns the database of the records, and nothing else: not a superuser, as on a shared PostgreSQL. */
export const RECORD_ROLE = 'evenfall';
export const RECORD_DATABASE = 'evenfall';

/** The settings of a connection as the given role. */
export function connectionTo(endpoint: Endpoint, user: string, database: string): ClientConfig {
  const names = { user, database, application_name: 'evenfall' };
  return endpoint.kind === 'socket'
    ? { ...names, host: endpoint.folder, port: SOCKET_PORT }
    : { ...names, host: '127.0.0.1', port: endpoint.port, password: endpoint.password };
}
