import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const FOLDER = new URL('.', import.meta.url);
const sheets = readdirSync(FOLDER).filter((name) => name.endsWith('.css'));
const read = (name: string) => readFileSync(new URL(name, FOLDER), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');

/** A colour that is written out: by its numbers, or by a function that makes one. */
const COLOUR = /#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|oklch|lab|lch|hwb)a?\(/gi;

test('every colour that is written out stands among the tokens', () => {
  const elsewhere = sheets
    .filter((name) => name !== 'tokens.css')
    .flatMap((name) => (read(name).match(COLOUR) ?? []).map((colour) => `${name}: ${colour}`));
  expect(elsewhere).toEqual([]);
});

test('every token that a sheet asks for is one that there is', () => {
  const all = sheets.map(read).join('\n');
  const made = new Set([...all.matchAll(/(--[a-z0-9-]+)\s*:/g)].map(([, name]) => name));
  // Set by a page beside its own style, or named with what stands in for it.
  const asked = [...all.matchAll(/var\((--[a-z0-9-]+)\)/g)].map(([, name]) => name);
  expect(asked.filter((name) => !made.has(name)).sort()).toEqual([]);
});
