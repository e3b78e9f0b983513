import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { TAP_COMPARISONS } from './comparisons.js';

const HERE = new URL('.', import.meta.url);

const code = readdirSync(HERE)
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
  .map((name) => readFileSync(new URL(name, HERE), 'utf8'))
  .join('\n');

test.each(Object.keys(TAP_COMPARISONS))(
  'the side of %s is taken from the table where it is compared',
  (name) => {
    expect(code).toMatch(new RegExp(`\\bSIDE\\.${name}\\b`));
  },
);
