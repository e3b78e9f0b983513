// Makes docs/sources.md from the built clinical, physiology and practice packages (`npx tsc -b` first).
// `--write` rewrites the page; without it, exit 1 if the page differs from the code.
import { readFile, writeFile } from 'node:fs/promises';
import * as clinical from '../packages/clinical/dist/index.js';
import * as physiology from '../packages/physiology/dist/index.js';
import * as practice from '../packages/practice/dist/index.js';
import { sourcesPage } from './sourcesPage.mjs';

const PAGE = new URL('../docs/sources.md', import.meta.url);
const made = sourcesPage(clinical, physiology, practice);

if (process.argv.includes('--write')) {
  await writeFile(PAGE, made);
} else {
  const kept = await readFile(PAGE, 'utf8').catch(() => '');
  if (kept !== made) {
    console.error('docs/sources.md differs from the code: run `node tools/sources.mjs --write`');
    process.exitCode = 1;
  }
}
