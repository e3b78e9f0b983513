import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { chmod, mkdtemp, readdir, realpath, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { keptRecord } from '../../testing/keptRecord.js';
import { SERVER_MAIN, typedArgs } from '../../testing/typed.js';

const ROOT = fileURLToPath(new URL('../../../..', import.meta.url));
const BACKUP = fileURLToPath(new URL('../../../record/fixtures/backup-1.jsonl', import.meta.url));
const PERSON = '01a2125a-4940-770c-9ce2-a5b538f7b6c8';

beforeAll(() => {
  const built = spawnSync(process.execPath, ['tools/bundle.mjs', 'server'], { cwd: ROOT, encoding: 'utf8' });
  expect(built.stdout + built.stderr).toBe('');
}, 120_000);

/** A folder that the account of the record may enter, also where this runs as root. */
async function newOuterFolder(): Promise<string> {
  const folder = await mkdtemp(join(await realpath(tmpdir()), 'evenfall-record-'));
  await chmod(folder, 0o755);
  return folder;
}

/** The same, gone after its test. */
async function outerFolder(): Promise<string> {
  const folder = await newOuterFolder();
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

const ACCOUNT = process.getuid?.() === 0 ? ['--account', 'nobody'] : [];
const { DATABASE_URL: _url, EVENFALL_DATA: _data, EVENFALL_ACCOUNT: _account, ...env } = process.env;

/** Types a command about the record in a folder. */
const about = (folder: string, ...args: string[]) =>
  typedArgs([...args, '--data', folder, ...ACCOUNT], { env });

describe('a mistyped folder', { timeout: 60_000 }, () => {
  test.each([
    ['check', []],
    ['equipment', []],
    ['backup', ['clinic.jsonl']],
    ['export', ['--person', PERSON, '--as', 'csv']],
    ['import', [BACKUP]],
  ] as const)('is refused by %s, which makes nothing there', async (command, args) => {
    const outer = await outerFolder();
    // One of them also deeper than anything there: each only says that the record must be there already.
    for (const name of command === 'check' ? ['typo', 'deep/typo'] : ['typo']) {
      const folder = join(outer, name);
      const inOuter = args.map((arg) => (arg === 'clinic.jsonl' ? join(outer, arg) : arg));
      const { code, stdout, stderr } = await about(folder, command, ...inOuter);
      expect([code, stdout]).toEqual([2, '']);
      expect(stderr).toContain(`There is no record of Evenfall in ${folder}`);
      expect(await readdir(outer)).toEqual([]);
    }
  });
});

/** A backup in which one number was changed by hand, in a folder of its own. */
async function altered(): Promise<string> {
  const file = join(await outerFolder(), 'altered.jsonl');
  await writeFile(file, readFileSync(BACKUP, 'utf8').replace('"n":66', '"n":67'));
  return file;
}

describe('a restore', { timeout: 120_000 }, () => {
  test('that fails leaves nothing, neither a new folder nor anything in an empty one', async () => {
    const outer = await outerFolder();
    for (const folder of [join(outer, 'new', 'record'), outer]) {
      const { code, stdout } = await about(folder, 'restore', await altered());
      expect([code, stdout, await readdir(outer)]).toEqual([2, '', []]);
    }
  });
});

describe('a restored record', { timeout: 120_000 }, () => {
  let outer = '';
  let folder = '';
  let kept: Awaited<ReturnType<typeof keptRecord>> | null = null;
  const whole = { code: 0, json: [{ entries: 10, findings: [] }] };

  beforeAll(async () => {
    outer = await newOuterFolder();
    folder = join(outer, 'new', 'record');
    expect(await about(folder, 'restore', BACKUP)).toMatchObject({ code: 0, stderr: '' });
    expect(await about(folder, 'check', '--json')).toMatchObject(whole);
    kept = await keptRecord({ serverMain: SERVER_MAIN, folder, account: ACCOUNT[1] ?? null, env });
  }, 120_000);
  afterAll(async () => {
    await kept?.stop();
    await rm(outer, { recursive: true, force: true });
  });

  test('holds what the backup holds, and no other one goes into it', async () => {
    expect(await about(folder, 'restore', BACKUP)).toMatchObject({ code: 2, stdout: '' });
    expect(await about(folder, 'check', '--json')).toMatchObject(whole);
  });

  test('gives a chart as a bundle that comes back as what is there already, with and without who it is; as text it says it only if asked', async () => {
    const exported = async (...more: string[]) => {
      const { code, stdout } = await about(folder, 'export', '--person', PERSON, ...more);
      expect(code).toBe(0);
      return stdout;
    };
    const names = /"name":\[\{"text"/;
    for (const identity of [[], ['--with-identity']]) {
      const bundle = await exported('--as', 'fhir', ...identity);
      const [patient] = (JSON.parse(bundle) as { entry: { resource: object }[] }).entry;
      expect(names.test(JSON.stringify(patient))).toBe(identity.length > 0);
      const file = join(outer, 'chart.fhir.json');
      await writeFile(file, bundle);
      const { code, json } = await about(folder, 'import', file, '--json');
      expect([code, json]).toMatchObject([0, [{ file, person: PERSON, added: 0, refused: [] }]]);
      expect(json[0]?.already).toBeGreaterThan(3);
    }
    expect(await exported('--as', 'text', '--template', 'line')).toBe(
      'Preliminary, not countersigned: 2026-11-25 09:30.\n',
    );
    const nobody = await about(folder, 'import', BACKUP);
    expect([nobody.code, nobody.stdout]).toEqual([2, '']);
    const none = await about(folder, 'import', join(outer, 'no-such'), '--json');
    expect([none.code, none.problems]).toMatchObject([2, [{ code: 'missing' }]]);
  });
});

describe('what cannot be exported', () => {
  test.each([
    ['--as csv --template line', '--template'],
    ['--as fhir --template letter', '--template'],
    ['--as text --template poem', '--template'],
    ['--as pdf', '--as'],
  ])('export %s is refused', async (line, field) => {
    const { code, stdout, problems } = await typedArgs(
      ['export', '--person', PERSON, ...line.split(' '), '--json'],
      {
        env,
      },
    );
    expect([code, stdout, problems[0]?.field]).toEqual([2, '', field]);
  });
});
