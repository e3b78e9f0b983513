import { readFile } from 'node:fs/promises';
import * as clinical from '@evenfall/clinical';
import * as physiology from '@evenfall/physiology';
import * as practice from '@evenfall/practice';
import { expect, test } from 'vitest';
import { sourcesPage } from './sourcesPage.mjs';

test('docs/sources.md says what the code says', async () => {
  const page = await readFile(new URL('../docs/sources.md', import.meta.url), 'utf8');
  expect(page, 'run `node tools/sources.mjs --write`').toBe(sourcesPage(clinical, physiology, practice));
});

test('a changed number changes the page', () => {
  const { FIGURES } = clinical;
  const slowPerMinute = { ...FIGURES.count.slowPerMinute, value: 59 };
  const changed = { ...clinical, FIGURES: { ...FIGURES, count: { ...FIGURES.count, slowPerMinute } } };
  expect(sourcesPage(changed, physiology, practice)).not.toBe(sourcesPage(clinical, physiology, practice));
  expect(sourcesPage(changed, physiology, practice)).toContain('| `slowPerMinute` | 59 | /min |');
});
