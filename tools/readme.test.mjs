// What the README tells people to type is typed here.
import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from './ensure.mjs';

const readme = readFileSync(join(root, 'README.md'), 'utf8');
const typed = [...readme.matchAll(/^ {4}npx evenfall (.*?)(?: {2,}#.*)?$/gm)].map(([, line]) => line.trim());
const command = join(root, 'packages', 'cli', 'bin', 'evenfall.js');
const run = (args) => spawnSync(process.execPath, [command, ...args], { cwd: root, encoding: 'utf8' });

test('the README shows every command', () => {
  const help = run(['--help']).stdout;
  for (const [name] of typed.map((line) => line.split(' ')))
    if (!name.startsWith('-')) expect(help).toContain(name);
  expect(typed.length).toBeGreaterThan(6);
});

test.each(typed.filter((line) => /^(count|taps|--help)/.test(line)))('evenfall %s', (line) => {
  const { status, stdout, stderr } = run(line.split(' '));
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout).toMatch(/\w/);
});

test('backup, check, export and restore as the README writes them, in a folder of their own', () => {
  const outer = mkdtempSync(join(tmpdir(), 'evenfall-readme-'));
  chmodSync(outer, 0o755); // the account of the database goes there too
  const record = ['--demo', '--data', join(outer, 'data')];
  const file = join(outer, 'clinic.jsonl');
  try {
    for (const line of typed.filter((one) => /^(backup|restore|check)/.test(one))) {
      const args = line.split(' ').map((word) => (word === 'clinic.jsonl' ? file : word));
      const { status, stderr } = run([...args, ...record]);
      expect([line, status, stderr]).toEqual([line, 0, '']);
    }
    const asked = typed.find((line) => line.startsWith('export'))?.split(' ') ?? [];
    const { status, stderr } = run([...asked, ...record]);
    expect(status).toBe(2); // ID stands for a person's id
    expect(stderr).toContain('--person');
  } finally {
    rmSync(outer, { recursive: true, force: true });
  }
}, 60_000);
