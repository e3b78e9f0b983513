import type { Endpoint } from './endpoint.js';
import { SOCKET_PORT } from './endpoint.js';

type Setting = readonly [name: string, value: string];

/** Safe against a power cut, small, and silent about what the records say. Every name exists since major 14. */
const ALWAYS: readonly Setting[] = [
  ['fsync', 'on'],
  ['full_page_writes', 'on'],
  ['synchronous_commit', 'on'],
  ['shared_buffers', '32MB'],
  ['max_connections', '30'],
  ['max_wal_size', '256MB'],
  ['timezone', 'UTC'],
  ['log_timezone', 'UTC'],
  ['datestyle', 'ISO, YMD'],
  ['lc_messages', 'C'],
  ['client_encoding', 'UTF8'],
  // The log may never hold a value of a person. An error's first line can (invalid input: "..."), so errors are
  // not logged at all; the program that caused one is told. Terse leaves out the details of what is logged.
  ['log_min_messages', 'log'],
  ['log_min_error_statement', 'panic'],
  ['log_error_verbosity', 'terse'],
  ['log_statement', 'none'],
  ['log_min_duration_statement', '-1'],
  ['log_parameter_max_length', '0'],
  ['log_parameter_max_length_on_error', '0'],
  ['log_checkpoints', 'off'],
  ['log_line_prefix', '%m [%p] '],
  ['logging_collector', 'off'],
  ['log_destination', 'stderr'],
];

/** The server's settings as a file. It is written anew at every start, so that it is true to the program. */
export function settingsFile(endpoint: Endpoint): string {
  const lines = [...ALWAYS, ...listening(endpoint)].map(([name, value]) => `${name} = ${quoted(value)}\n`);
  return `# Written by evenfall at every start.\n${lines.join('')}`;
}

/** Who may connect: whoever can enter the folder of the socket, or who knows the password. Nobody else. */
export function accessFile(endpoint: Endpoint): string {
  const allowed =
    endpoint.kind === 'socket' ? 'local all all trust' : 'host all all 127.0.0.1/32 scram-sha-256';
  return `# Written by evenfall at every start.\n${allowed}\nhost all all all reject\n`;
}

function listening(endpoint: Endpoint): readonly Setting[] {
  return endpoint.kind === 'socket'
    ? [
        ['listen_addresses', ''],
        ['port', String(SOCKET_PORT)],
        ['unix_socket_directories', listItem(endpoint.folder)],
        ['unix_socket_permissions', '0700'],
      ]
    : [
        ['listen_addresses', '127.0.0.1'],
        ['port', String(endpoint.port)],
        ['unix_socket_directories', ''],
      ];
}

function quoted(value: string): string {
  return `'${value.replaceAll("'", "''")}'`;
}

/** A folder with a comma or a space in its name is one item of the list all the same. */
function listItem(folder: string): string {
  return `"${folder.replaceAll('"', '""')}"`;
}
