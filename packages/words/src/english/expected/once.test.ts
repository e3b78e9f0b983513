import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { english } from '../index.js';

// The files are spread into one: of two phrases under one name the later would be said for both.
test('every rule of input has its phrase once', async () => {
  const files = readdirSync(new URL('.', import.meta.url)).filter(
    (name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && !['index.ts', 'later.ts'].includes(name),
  );
  const parts = await Promise.all(
    files.map(async (name) => Object.values((await import(`./${name}`)) as Record<string, object>)),
  );
  const names = parts.flat().flatMap((part) => Object.keys(part));
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  expect(Object.keys(english.expected).every((name) => names.includes(name))).toBe(true);
});
