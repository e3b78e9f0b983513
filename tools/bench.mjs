// npm run bench: every measurement, each a ratio against a peer or a limit measured in the same run.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt, ensureInstalled, root } from './ensure.mjs';

ensureInstalled();
ensureBuilt();
const options = process.argv.slice(2).filter((word) => word.startsWith('--'));
const wanted = process.argv.slice(2).filter((word) => !word.startsWith('--'));
let status = 0;
for (const file of readdirSync(join(root, 'bench')).filter(
  (name) => name.endsWith('.mjs') && !['arithmetic.mjs', 'measure.mjs', 'embedded.mjs'].includes(name),
)) {
  if (wanted.length > 0 && !wanted.some((word) => file.startsWith(word))) continue;
  console.log(`\n# ${file}`);
  const ended =
    spawnSync(process.execPath, [join(root, 'bench', file), ...options], { cwd: root, stdio: 'inherit' })
      .status ?? 1;
  status ||= ended;
}
process.exit(status);
