// npm start: installs and builds what is needed, then `evenfall serve` with whatever follows `--`.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { accountNeeded } from './account.mjs';
import { ensureBuilt, ensureInstalled, root } from './ensure.mjs';

const args = process.argv.slice(2);
const refused = accountNeeded(args, process.env, process.getuid?.());
if (refused !== null) {
  console.error(`evenfall: ${refused}`);
  process.exit(2);
}
ensureInstalled();
ensureBuilt();
const command = join(root, 'packages', 'cli', 'bin', 'evenfall.js');
const child = spawn(process.execPath, [command, 'serve', ...args], { stdio: 'inherit' });
// This process only waits for the command to end in order. A terminal sends its interrupt to both, which is no harm.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
child.on('exit', (code, signal) => process.exit(code ?? (signal === 'SIGINT' ? 130 : 1)));
