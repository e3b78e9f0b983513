import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { PROGRAM } from './program.js';

const ROOT = new URL('../../../', import.meta.url);

function packageAt(folder: string): { name: string; version: string; dependencies?: Record<string, string> } {
  return JSON.parse(readFileSync(new URL(`${folder}package.json`, ROOT), 'utf8'));
}

const ALL = ['', ...readdirSync(new URL('packages', ROOT)).map((name) => `packages/${name}/`)].map(packageAt);

test('the program that values name has the version of every package', () => {
  const { name, version } = packageAt('');
  expect(PROGRAM).toBe(`${name} ${version}`);
  expect(ALL.length).toBeGreaterThan(5);
  for (const one of ALL) expect([one.name, one.version]).toEqual([one.name, version]);
});

test('packages of ours ask for each other at that version', () => {
  const { version } = packageAt('');
  for (const { name, dependencies } of ALL) {
    const ours = Object.entries(dependencies ?? {}).filter(([asked]) => asked.startsWith('@evenfall/'));
    for (const [asked, at] of ours) expect([name, asked, at]).toEqual([name, asked, version]);
  }
});
