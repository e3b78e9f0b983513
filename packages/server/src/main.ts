import type { Settings, Told } from '@evenfall/api';
import { openDatabase } from './database/openDatabase.js';
import { DatabaseProblem } from './database/problem.js';
import { faultText } from './start/faultText.js';
import { runServer } from './start/server.js';
import { StartRefused } from './start/startRefused.js';

/**
 * The server process. Its parent gives the settings as one JSON argument, reads {@link Told} from standard output,
 * and holds its standard input: when that closes, or on SIGINT, SIGTERM or SIGHUP, the server stops in order. A Ctrl-C
 * brings several of these at once, and whoever read what it writes may be gone: neither cuts the stopping short.
 */
async function main(): Promise<void> {
  const settings = JSON.parse(process.argv[2] ?? '{}') as Settings;
  const fault = (error: unknown) => {
    process.stderr.write(`${JSON.stringify({ fault: faultText(error) })}\n`);
  };
  let stop: (() => Promise<void>) | null = null;
  let wanted = true;
  const end = () => {
    wanted = false;
    if (stop !== null) void stop().then(() => process.exit(0));
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, end);
  for (const stream of [process.stdout, process.stderr]) stream.on('error', () => undefined);
  process.stdin.on('end', end);
  process.stdin.on('error', end);
  process.stdin.resume();

  const database = await openDatabase({
    purpose: settings.purpose,
    existing: settings.existing === true,
    ...(settings.folder === null ? {} : { folder: settings.folder }),
    ...(settings.account === null ? {} : { account: { kind: 'named', account: settings.account } }),
    onProblem: fault,
  });
  const running = await runServer(database, settings, {
    log: (line) => {
      if (settings.log) process.stderr.write(`${JSON.stringify(line)}\n`);
    },
    fault,
  });
  stop = running.close;
  if (!wanted) return end();
  tell({
    event: 'ready',
    address: running.address,
    controlSocket: running.controlSocket,
    folder: database.keeper?.folder ?? null,
    lan: running.lan,
    database: database.kind,
    site: { name: running.site.name, invented: running.site.invented },
  });
}

function tell(told: Told): void {
  process.stdout.write(`${JSON.stringify(told)}\n`);
}

/** Why a server did not start, for its parent to say in words; null for a fault of the program. */
function toldOf(error: unknown): Told | null {
  if (error instanceof StartRefused) {
    const { code, field, figures, names, got } = error;
    return { event: 'refused', code, field, expected: null, got, figures, names };
  }
  if (!(error instanceof DatabaseProblem)) return null;
  const { code, field, expected, got, figures, names } = error;
  if (code === 'folder-in-use' && figures.pid !== undefined && names.path !== undefined) {
    return { event: 'kept-by', pid: figures.pid, address: names.address ?? null, controlSocket: names.path };
  }
  return { event: 'refused', code, field, expected, got, figures, names };
}

main().catch((error: unknown) => {
  const told = toldOf(error);
  if (told === null) process.stderr.write(`${faultText(error)}\n`);
  else tell(told);
  process.exitCode = told === null ? 1 : 2;
  process.stdin.destroy();
});
