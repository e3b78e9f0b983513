import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';

const BIN = fileURLToPath(new URL('../bin/evenfall.js', import.meta.url));
const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

/** Runs the built command as a shell would. */
function evenfall(args: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, [BIN, ...args], { input, encoding: 'utf8' });
  return { status, stdout, stderr };
}

beforeAll(() => {
  const built = spawnSync(process.execPath, ['tools/bundle.mjs'], { cwd: ROOT, encoding: 'utf8' });
  expect(built.stdout + built.stderr).toBe('');
}, 120_000);

describe('the command as it is run', () => {
  test('answers on standard output and ends with 0', () => {
    const { status, stdout, stderr } = evenfall(['count', '--n', '19', '--window', '15', '--json']);
    expect([status, stderr]).toEqual([0, '']);
    expect(JSON.parse(stdout)).toMatchObject({
      perMinute: 76,
      computedBy: { program: expect.stringMatching(/^evenfall \d/) },
    });
  });

  test('reads standard input', () => {
    const { status, stdout } = evenfall(['taps', '-', '--json'], '0\n1\n2\n');
    expect([status, JSON.parse(stdout).perMinute]).toEqual([0, 60]);
  });

  test.each([
    [['--host', '10.0.0.1'], '--host: expected --lan beside it\n'],
    [['--lan', '--key', 'x.pem'], '--certificate: expected a certificate with its key, got nothing\n'],
    [['--lan', '--certificate', 'x.pem'], '--key: expected a certificate with its key, got nothing\n'],
  ])('serve %j is refused before anything is started', (options, said) => {
    expect(evenfall(['serve', ...options])).toEqual({ status: 2, stdout: '', stderr: said });
  });

  test('a folder by three threads is the same as by one, to the byte, with what is wrong of each file', () => {
    const folder = mkdtempSync(join(tmpdir(), 'evenfall-threads-'));
    try {
      for (let k = 0; k < 100; k++) {
        const hours = Array.from({ length: 24 }, (_, hour) => String(hour).padStart(2, '0'));
        const rows = hours.map(
          (hour) => `2025-03-04T${hour}:00+00:00,${120 + ((k + Number(hour)) % 40)},80,70`,
        );
        if (k % 10 === 3) rows.push('2025-03-04T25:00+00:00,140,90,70');
        const text =
          k % 10 === 7 ? 'name,colour\nx,y' : ['time,systolic,diastolic,pulse', ...rows].join('\n');
        writeFileSync(join(folder, `${k}.csv`), text);
      }
      mkdirSync(join(folder, 'empty'));
      writeFileSync(join(folder, 'none.csv'), '');
      const by = (workers: string, language: string) =>
        evenfall(['ambulatory', folder, '--json', '--workers', workers, '--language', language]);
      for (const language of ['en', 'es']) {
        const one = by('1', language);
        expect(by('3', language)).toEqual(one);
        expect(one.status).toBe(2);
        const lines = one.stdout.trim().split('\n');
        const files = lines.map((line) => JSON.parse(line) as { file: string; problems?: unknown[] });
        expect(files.map(({ file }) => file)).toEqual(files.map(({ file }) => file).toSorted());
        expect(files).toHaveLength(101);
        expect(files.filter(({ problems }) => problems !== undefined)).toHaveLength(11);
        expect(JSON.parse(one.stderr).problems.length).toBeGreaterThanOrEqual(11);
      }
    } finally {
      rmSync(folder, { recursive: true });
    }
  }, 60_000);

  test('refuses on standard error and ends with 2, standard output empty', () => {
    const { status, stdout, stderr } = evenfall(['count', '--n', '19']);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(/^--window: expected .*, got nothing\n$/);
  });

  test('a reader that stops early is no fault', async () => {
    const child = spawn(process.execPath, [BIN, 'help'], { stdio: ['ignore', 'pipe', 'pipe'] });
    child.stdout.destroy();
    let stderr = '';
    child.stderr.on('data', (chunk) => (stderr += chunk));
    expect(await new Promise((ended) => child.on('close', ended))).toBe(0);
    expect(stderr).toBe('');
  });

  test('an interruption ends it with 130', async () => {
    // The first file is answered, so the program has started; then it waits for standard input (`+` sorts before `-`).
    const cwd = mkdtempSync(join(tmpdir(), 'evenfall-interrupted-'));
    writeFileSync(join(cwd, '+first.txt'), '0\n1\n');
    const child = spawn(process.execPath, [BIN, 'taps', '+first.txt', '-'], { cwd, stdio: 'pipe' });
    let stderr = '';
    child.stderr.on('data', (chunk) => (stderr += chunk));
    await new Promise((answered) => child.stdout.once('data', answered));
    for (const _twice of ['from the terminal', 'passed on by npm']) child.kill('SIGINT');
    expect(await new Promise((ended) => child.on('close', ended))).toBe(130);
    expect(stderr).toBe('');
    rmSync(cwd, { recursive: true });
  });
});

describe('in a checkout that was never built', () => {
  function checkout(programs: string): string {
    const root = mkdtempSync(join(tmpdir(), 'evenfall-checkout-'));
    mkdirSync(join(root, 'packages/cli/bin'), { recursive: true });
    const pack = { name: 'checkout', private: true, type: 'module', scripts: { programs } };
    writeFileSync(join(root, 'package.json'), JSON.stringify(pack));
    const bin = join(root, 'packages/cli/bin/evenfall.js');
    copyFileSync(BIN, bin);
    chmodSync(bin, 0o755);
    return root;
  }

  /** Stands for the build: writes the built program, which greets. */
  const BUILD = `node -e "fs=require('fs');fs.mkdirSync('packages/cli/bundle');fs.writeFileSync('packages/cli/bundle/main.js','console.log(1)');console.log('noise')"`;

  function runIn(root: string) {
    return spawnSync(process.execPath, [join(root, 'packages/cli/bin/evenfall.js')], { encoding: 'utf8' });
  }

  test('it builds once, quietly, and then answers', () => {
    const root = checkout(BUILD);
    expect(runIn(root)).toMatchObject({ status: 0, stdout: '1\n', stderr: 'Building Evenfall (once) ...\n' });
    expect(runIn(root)).toMatchObject({ status: 0, stdout: '1\n', stderr: '' });
    rmSync(root, { recursive: true });
  });

  test('a build that fails is exit 1, and standard output stays empty', () => {
    const root = checkout(`node -e "console.log('broken here');process.exit(3)"`);
    const { status, stdout, stderr } = runIn(root);
    expect([status, stdout]).toEqual([1, '']);
    expect(stderr).toMatch(/broken here/);
    rmSync(root, { recursive: true });
  });
});
