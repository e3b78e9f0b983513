// Makes docs/rhythms.svg and docs/rhythms.md from real beats (packages/clinical/fixtures) and the simulated heart (`npx tsc -b` first).
// `--write` rewrites both; without it, exit 1 if they differ from what the code gives.
import { readFile, writeFile } from 'node:fs/promises';
import * as physiology from '../packages/physiology/dist/index.js';
import { rhythmsFigure, rhythmsOf, rhythmsPage } from './rhythmsPage.mjs';

const rhythms = await rhythmsOf(physiology);
const made = { 'rhythms.svg': rhythmsFigure(rhythms), 'rhythms.md': rhythmsPage(rhythms) };
for (const [name, text] of Object.entries(made)) {
  const file = new URL(`../docs/${name}`, import.meta.url);
  if (process.argv.includes('--write')) await writeFile(file, text);
  else if ((await readFile(file, 'utf8').catch(() => '')) !== text) {
    console.error(`docs/${name} differs from the code: run \`node tools/rhythms.mjs --write\``);
    process.exitCode = 1;
  }
}
