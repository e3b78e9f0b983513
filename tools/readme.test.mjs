// What the README tells people to type is typed here.
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
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

const practice = readFileSync(join(root, 'docs', 'practice.md'), 'utf8');

test('the page about practice: its visits are played, and it names everything that hands can do', () => {
  const lines = [...practice.matchAll(/^ {4}npx evenfall (simulate .*)$/gm)].map(([, line]) => line);
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) {
    const { status, stdout, stderr } = run(line.split(' '));
    expect([line, status, stderr]).toEqual([line, 0, '']);
    expect(stdout).toMatch(/\w/);
  }
  const input = JSON.stringify({ actions: [{ tick: 1, kind: 'wave' }] });
  const args = [command, 'simulate', 'stiff-pipe', '--actions', '-'];
  const { stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8', input });
  const [, kinds] = stderr.match(/expected (.*), got/) ?? [];
  const named = (kinds ?? '').split(/, (?:or )?/);
  expect(named.length).toBeGreaterThan(8);
  for (const kind of named) expect(practice).toContain(`\`${kind}\``);
});

/** Keeps the demo's record in a folder, which the commands then reach, as they do beside `npm start`. */
async function demoIn(folder) {
  const main = join(root, 'packages', 'server', 'bundle', 'main.js');
  const more = { mode: 'serve', account: null, port: 0, pages: null, log: false };
  const server = spawn(process.execPath, [main, JSON.stringify({ ...more, purpose: 'demo', folder })], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  await once(server.stdout, 'data');
  return async () => {
    server.stdin.end();
    await once(server, 'exit');
  };
}

test('backup, check, export and restore as the README writes them, in folders of their own', async () => {
  const outer = mkdtempSync(join(tmpdir(), 'evenfall-readme-'));
  chmodSync(outer, 0o755); // the account of the database goes there too
  const places = { 'clinic.jsonl': join(outer, 'clinic.jsonl'), NEW_FOLDER: join(outer, 'new') };
  const data = join(outer, 'data');
  const placed = (line) => {
    const args = line.split(' ').map((word) => places[word] ?? word);
    return args.includes('--data') ? args : [...args, '--data', data];
  };
  const stop = await demoIn(data);
  try {
    const lines = typed.filter((one) => /^(backup|restore|check)/.test(one));
    expect(lines).toHaveLength(3);
    for (const line of lines) {
      const { status, stderr } = run(placed(line));
      expect([line, status, stderr]).toEqual([line, 0, '']);
    }
    const asked = typed.find((line) => line.startsWith('export')) ?? '';
    const { status, stderr } = run(placed(asked));
    expect(status).toBe(2); // ID stands for a person's id
    expect(stderr).toContain('--person');
  } finally {
    await stop();
    rmSync(outer, { recursive: true, force: true });
  }
}, 120_000);

test('the README names the ports and the folder of the demo as they are', () => {
  const help = run(['serve', '--help']).stdout;
  for (const port of ['4780', '4781']) {
    expect(readme).toContain(`http://127.0.0.1:${port}`);
    expect(help).toContain(port);
  }
  expect(readme).toContain('~/.local/share/evenfall-demo');
});

test('what the README says of a count is what it answers', () => {
  const line = readme.split('\n').find((one) => one.includes('evenfall count --n 19')) ?? '';
  expect(line).toMatch(/# 76 \/min, between 72 and 80, .* one beat more or less/);
  const { stdout } = run(['count', '--n', '19', '--window', '15']);
  expect(stdout).toMatch(/76 \/min {2}between 72 and 80[\s\S]*one more or less/);
});
