import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { askedOfReact } from '../../bundling/askedOfReact.js';

const file = fileURLToPath(
  new URL('downshift.esm.mjs', import.meta.resolve('downshift').replace(/[^/]+$/, '')),
);

test('nothing that is used of the headless library takes all of React', () => {
  const code = readFileSync(file, 'utf8');
  const transform = askedOfReact().transform as (code: string, id: string) => { code: string } | undefined;
  const made = transform(code, file)?.code ?? '';
  expect(made.match(/\{ useId: React\.useId \}/g)).toHaveLength(2);
  expect(transform(code, '/elsewhere.js')).toBeUndefined();
  // What is left asks by name, but for one that is for drawing on a server and never called here.
  const whole = made.match(/.*[^\w.'"]React\)/g) ?? [];
  expect(whole.map((line) => line.trim())).toEqual(["if ('useId' in React)"]);
});
