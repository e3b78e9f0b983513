import { describe, expect, test } from 'vitest';
import { typed, typedArgs } from '../testing/typed.js';

describe('which command', () => {
  test('none, or one that does not exist, is refused with the nearest named', async () => {
    const none = await typedArgs([]);
    expect([none.code, none.stdout]).toEqual([2, '']);
    expect(none.stderr).toMatch(/^command: expected a command: .*count.*, got nothing\n$/);
    const unknown = await typed('cuont --n 19');
    expect([unknown.code, unknown.stdout]).toEqual([2, '']);
    expect(unknown.stderr).toBe('command: expected a command (nearest: count), got cuont\n');
  });

  test('options that every command takes may stand before it', async () => {
    const { code, json } = await typed('--json count --n 19 --window 15');
    expect([code, json[0]?.perMinute]).toEqual([0, 76]);
  });

  test('an unknown option is refused with the nearest named', async () => {
    const { code, stderr } = await typed('count --n 19 --window 15 --jsn');
    expect(code).toBe(2);
    expect(stderr).toBe('--jsn: expected an option that exists (nearest: --json), got --jsn\n');
  });
});

describe('help and version everywhere', () => {
  test.each([['--help'], ['help']])('evenfall %s shows every command', async (line) => {
    const { code, stdout } = await typed(line);
    expect(code).toBe(0);
    for (const name of ['count', 'taps', 'help']) expect(stdout).toMatch(new RegExp(`^  ${name} `, 'm'));
    // Bedside handbook 7.5: what a number may not be used for stands where the commands do.
    expect(stdout).toMatch(/does not diagnose.*local protocol.*emergency procedure/s);
  });

  test.each([['count --help'], ['help count'], ['count --n x --help'], ['--help count']])(
    'evenfall %s',
    async (line) => {
      const { code, stdout } = await typed(line);
      expect(code).toBe(0);
      for (const name of [
        'n NUMBER',
        'window SECONDS',
        'clock beat|any',
        'json',
        'list',
        'help',
        'version',
      ]) {
        expect(stdout).toContain(`  --${name} `);
      }
    },
  );

  test('help for programs', async () => {
    const { json } = await typed('help taps --json');
    expect(json[0]).toMatchObject({ command: 'taps', usage: expect.stringMatching(/^evenfall taps /) });
  });

  test('help for a command that does not exist', async () => {
    expect(await typed('help cuont')).toMatchObject({ code: 2, stdout: '' });
  });

  test.each([['--version'], ['count --version'], ['taps --version']])('evenfall %s', async (line) => {
    expect(await typed(line)).toMatchObject({ code: 0, stdout: 'evenfall 0.0.0-test\n' });
  });

  test('a command without a choice has no --list', async () => {
    expect((await typed('taps --list --json')).problems).toMatchObject([
      { field: '--list', code: 'unknown-option' },
      {},
    ]);
  });
});

describe('what ends a command early', () => {
  test('a fault of the machine is exit 1, with nothing on standard output', async () => {
    // biome-ignore lint/correctness/useYield: it fails before it has anything to give
    async function* broken(): AsyncIterable<Uint8Array> {
      throw new Error('the disk is gone');
    }
    const plain = await typed('taps -', { stdin: broken() });
    expect([plain.code, plain.stdout]).toEqual([1, '']);
    expect(plain.stderr).toMatch(/^evenfall: .*the disk is gone\n$/);
    const json = await typed('taps - --json', { stdin: broken() });
    expect(json.problems).toMatchObject([
      { code: 'fault', field: null, message: expect.stringMatching(/disk/) },
    ]);
  });

  test('an interruption is exit 130 and says nothing', async () => {
    const ctrlC = new AbortController();
    async function* waiting(): AsyncIterable<Uint8Array> {
      ctrlC.abort();
      await new Promise(() => {});
      yield new Uint8Array();
    }
    const ended = await typed('taps -', { stdin: waiting(), interrupted: ctrlC.signal });
    expect(ended).toMatchObject({ code: 130, stdout: '', stderr: '' });
  });
});
