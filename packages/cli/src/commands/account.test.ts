import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { chmod, mkdtemp, readdir, realpath, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { whileKept } from '../../testing/keptRecord.js';
import { standIn } from '../../testing/standIn.js';
import { SERVER_MAIN, typedArgs } from '../../testing/typed.js';

const ROOT = fileURLToPath(new URL('../../../..', import.meta.url));
const ACCOUNT = process.getuid?.() === 0 ? ['--account', 'nobody'] : [];
const { DATABASE_URL: _url, EVENFALL_DATA: _data, EVENFALL_ACCOUNT: _account, ...env } = process.env;
const KEPT = { serverMain: SERVER_MAIN, account: ACCOUNT[1] ?? null, env };

beforeAll(() => {
  const built = spawnSync(process.execPath, ['tools/bundle.mjs', 'server'], { cwd: ROOT, encoding: 'utf8' });
  expect(built.stdout + built.stderr).toBe('');
}, 120_000);

async function outerFolder(): Promise<string> {
  const folder = await mkdtemp(join(await realpath(tmpdir()), 'evenfall-account-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  await chmod(folder, 0o755);
  return folder;
}

/** A backup of a clinic in which nobody but these acts. */
function backupOf(agents: readonly { readonly id: string | undefined; readonly name: string }[]): string {
  const at = '2026-11-25T10:00:00.000Z';
  const site = { id: '01950000-0000-7000-8000-0000000000aa', name: 'Clinic', invented: false };
  const header = { line: 'header', format: 'evenfall-backup', version: 2, program: 'test', madeAt: at, site };
  const lines = [header, ...agents.map((one) => ({ line: 'agent', ...one, recordedAt: at }))];
  const text = lines.map((line) => `${JSON.stringify(line)}\n`).join('');
  const sha256 = createHash('sha256').update(text).digest('hex');
  const counted = { header: 1, agent: agents.length };
  return `${text}${JSON.stringify({ line: 'trailer', lines: counted, sha256 })}\n`;
}

const PHRASE = 'seven lanterns in a row';

describe('evenfall account', { timeout: 120_000 }, () => {
  test('makes the owner first, then others; lists, closes, and never leaves a clinic without an owner', async () => {
    const outer = await outerFolder();
    const folder = join(outer, 'record');
    const account = (input: string, ...args: string[]) =>
      typedArgs(['account', ...args, '--data', folder, ...ACCOUNT], { env, input });
    const add = (name: string, signIn: string, role: string, input = `${PHRASE}\n`) =>
      account(input, 'add', '--name', name, '--sign-in', signIn, '--role', role);

    const learnerFirst = await add('Sol Winter (invented)', 'sol', 'learner');
    expect([learnerFirst.code, await readdir(outer)]).toEqual([2, []]);
    expect(learnerFirst.stderr).toMatch(/--role: expected an owner first/);
    expect((await add('Ada Thorn (invented)', 'Ada', 'owner,clinician')).code).toBe(0);
    await whileKept({ folder, ...KEPT }, async () => {
      expect((await add('Nils Marsh (invented)', 'nils', 'clinician', 'short\n')).stderr).toMatch(
        /12 to 128 characters/,
      );
      expect((await add('Nils Marsh (invented)', 'nils', 'clinician', '')).code).toBe(2);
      expect((await add('Sol Winter (invented)', 'sol', 'learner')).code).toBe(0);
      expect((await add('Another (invented)', 'SOL', 'learner')).stderr).toMatch(
        /--sign-in: expected a name/,
      );
      expect((await account('', 'close', '--sign-in', 'sol')).stdout).toMatch(/cannot sign in any more/);
      expect((await account('', 'close', '--sign-in', 'ada')).stderr).toMatch(/another owner first/);
      expect((await account('', 'roles', '--sign-in', 'ada', '--role', 'clinician')).code).toBe(2);
      expect((await account(`${PHRASE} again\n`, 'pass-phrase', '--sign-in', 'ada')).code).toBe(0);
      expect((await account('', 'close', '--sign-in', 'nobody')).stderr).toMatch(/signs in here, got nobody/);
    });

    const listed = await account('', 'list', '--json');
    expect(listed.json).toMatchObject([
      { accounts: [{ signIn: 'ada', roles: ['owner', 'clinician'], isOwnPhrase: false }, { signIn: 'sol' }] },
    ]);
    expect(listed.stdout).not.toMatch(/argon|lanterns/);
  });

  test('is for the person the charts name already, where one is called so and has no account', async () => {
    const outer = await outerFolder();
    const folder = join(outer, 'record');
    const [ada, twin, other] = [1, 2, 3].map((at) => `01950000-0000-7000-8000-00000000000${at}`);
    const named = [
      { id: ada, name: 'Ada Thorn (invented)' },
      { id: twin, name: 'Nils Marsh (invented)' },
      { id: other, name: 'Nils Marsh (invented)' },
    ];
    const file = join(outer, 'clinic.jsonl');
    await writeFile(file, backupOf(named));
    await chmod(file, 0o644);
    const typed = (input: string, ...args: string[]) =>
      typedArgs([...args, '--data', folder, ...ACCOUNT], { env, input });
    expect((await typed('', 'restore', file)).code).toBe(0);
    const add = async (name: string, signIn: string) => {
      const args = ['account', 'add', '--name', name, '--sign-in', signIn, '--role', 'owner', '--json'];
      const { json } = await typed(`${PHRASE}\n`, ...args);
      return (json as { agent: { id: string } }[])[0]?.agent.id;
    };
    await whileKept({ folder, ...KEPT }, async () => {
      expect(await add('Ada Thorn (invented)', 'ada')).toBe(ada);
      // A second of that name is somebody else, and which of two was meant is not guessed.
      expect(await add('Ada Thorn (invented)', 'ada-2')).not.toBe(ada);
      expect([twin, other]).not.toContain(await add('Nils Marsh (invented)', 'nils'));
    });
  });

  test.each([
    [['account'], /what to do with an account/],
    [['account', 'remove'], /add, list, roles, pass-phrase, close,? or reopen/],
    [['account', 'add'], /--name[\s\S]*--sign-in[\s\S]*--role/],
    [
      ['account', 'add', '--name', 'X', '--sign-in', 'x', '--role', 'boss'],
      /owner, clinician, supervisor,? and learner/,
    ],
  ])('%j is refused by name, before any record is opened', async (args, says) => {
    const { code, stderr } = await typedArgs(args, { env });
    expect([code, says.test(stderr)]).toEqual([2, true]);
  });

  test('at a terminal the pass phrase is asked for twice, and never read from what is shown', async () => {
    const sent: string[] = [];
    const { serverMain } = await standIn((request, response) => {
      sent.push(`${request.method} ${request.url}`);
      response.setHeader('content-type', 'application/json').end(JSON.stringify({ accounts: [] }));
    });
    const answers = [PHRASE, 'something else in a row'];
    const asked: string[] = [];
    const { code, stderr, stdout } = await typedArgs(
      ['account', 'add', '--name', 'A', '--sign-in', 'aa', '--role', 'owner'],
      {
        env,
        serverMain,
        askSecret: async (prompt) => {
          asked.push(prompt);
          return answers[asked.length - 1] ?? '';
        },
      },
    );
    expect([code, stdout, asked.length, sent]).toEqual([2, '', 2, ['GET /api/accounts']]);
    expect(stderr).toMatch(/the same pass phrase twice/);
  });
});

describe('evenfall serve --lan without an owner', { timeout: 120_000 }, () => {
  /** Serves until it has said that it does, or was refused. */
  async function served(folder: string, answers: Readonly<{ lines: string[]; secrets: string[] }> | null) {
    const stopping = new AbortController();
    const asked: string[] = [];
    const next = (from: string[]) => async (prompt: string) => {
      asked.push(prompt);
      return from.shift() ?? '';
    };
    const ended = await typedArgs(['serve', '--lan', '--port', '0', '--data', folder, ...ACCOUNT], {
      env,
      pages: await outerFolder(),
      interrupted: stopping.signal,
      stdout: new Writable({
        write(chunk, _encoding, done) {
          if (String(chunk).includes('https://')) stopping.abort();
          done();
        },
      }),
      ...(answers === null ? {} : { askLine: next(answers.lines), askSecret: next(answers.secrets) }),
    });
    return { ...ended, asked, isServed: stopping.signal.aborted };
  }
  const accountsIn = async (folder: string) =>
    (await typedArgs(['account', 'list', '--data', folder, ...ACCOUNT, '--json'], { env })).json[0]?.accounts;

  test('is refused where nobody sits at a terminal or leaves the line empty, and makes none; else asks for one there, makes it and goes on', async () => {
    const folder = join(await outerFolder(), 'record');
    for (const answers of [null, { lines: [''], secrets: [] }]) {
      const { code, isServed, stderr } = await served(folder, answers);
      expect([code, isServed]).toEqual([2, false]);
      // With the command to type.
      expect(stderr).toMatch(/evenfall account add .*--role owner/);
    }
    expect(await accountsIn(folder)).toEqual([]);

    const answers = {
      lines: ['Ada Thorn (invented)', 'ada', 'Ada Thorn (invented)', 'ada'],
      secrets: ['short', 'short', PHRASE, PHRASE],
    };
    const { asked, isServed, stderr } = await served(folder, answers);
    expect([isServed, asked.length]).toEqual([true, 8]);
    // What was refused is said, and asked for again; the pass phrase stands nowhere.
    expect(stderr).toMatch(/12 to 128 characters[\s\S]*can sign in as ada/);
    expect(stderr).not.toContain(PHRASE);
    expect(await accountsIn(folder)).toMatchObject([
      { signIn: 'ada', roles: ['owner', 'clinician', 'supervisor'] },
    ]);
  });
});
