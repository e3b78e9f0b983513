import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { typedArgs } from '../../testing/typed.js';

let folder = '';
let textbook = '';
let fast = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'evenfall-plan-'));
  textbook = file('textbook.json', {});
  fast = file('fast.json', { rateMmHgPerSecond: 8 });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function file(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(content));
  return path;
}

type Both = { systolic: number; diastolic: number };
type Answer = {
  bias: Both;
  sd: Both;
  within5: Both;
  within10: Both;
  within15: Both;
  misclassified: { up: number; down: number };
  minutes: number;
  people: number;
  paired: { systolic: { bias: { mean: number; standardError: number } } } | null;
};

async function planned(...args: string[]): Promise<Answer> {
  const { code, stderr, json } = await typedArgs(['plan', ...args, '--json']);
  expect([stderr, code]).toEqual(['', 0]);
  return json[0] as Answer;
}

test('has the keys of its answer first and in order', async () => {
  const answer = await planned('--protocol', textbook, '--people', '300', '--seed', '2');
  expect(Object.keys(answer).slice(0, 8)).toEqual([
    'bias',
    'sd',
    'within5',
    'within10',
    'within15',
    'misclassified',
    'standardErrors',
    'minutes',
  ]);
  expect(answer).toMatchObject({ people: 300, seed: 2, against: null, paired: null });
  expect(answer.within5.systolic).toBeLessThan(answer.within10.systolic);
  expect(answer.within10.systolic).toBeLessThan(answer.within15.systolic);
});

// Bedside handbook 1.4: on a beat called zero, -60/T times a half: -2 in 15 s, -.5 in 60 s.
test('says what the windows and the convention make of pulse and breaths', async () => {
  const counting = (name: string, windowSeconds: number) =>
    file(name, {
      pulseWindowSeconds: windowSeconds,
      countClock: 'beat',
      countFirst: 0,
      breathsWindowSeconds: 30,
    });
  const args = ['--protocol', counting('short.json', 15), '--against', counting('long.json', 60)];
  const answer = (await planned(...args, '--people', '1200')) as unknown as {
    counts: { pulse: { bias: number; regular: { people: number } }; breaths: { people: number } };
    against: { counts: { pulse: { bias: number } } };
    paired: { counts: { pulse: { bias: { mean: number; standardError: number } } } };
  };
  expect(Math.abs(answer.counts.pulse.bias + 2)).toBeLessThan(0.5);
  expect(Math.abs(answer.against.counts.pulse.bias + 0.5)).toBeLessThan(0.4);
  expect(answer.paired.counts.pulse.bias.mean).toBeLessThan(-1);
  expect(answer.counts.breaths.people).toBe(300);
  const { stdout } = await typedArgs(['plan', ...args, '--people', '200']);
  expect(stdout).toContain('pulse as counted');
  expect(stdout).toContain('breaths as counted');
});

test('more threads, the same answer', async () => {
  const by = (workers: string) => planned('--protocol', textbook, '--people', '1200', '--workers', workers);
  expect(await by('3')).toEqual(await by('1'));
});

test('two protocols on the same people: a fast fall reads lower, and far surer than their own errors say', async () => {
  const { paired } = await planned('--protocol', fast, '--against', textbook, '--people', '400');
  if (paired === null) throw new Error('no pair');
  const { mean, standardError } = paired.systolic.bias;
  // Physiology handbook 9: 8 mmHg/s reads some 2.5 to 5 lower than 2.5.
  expect(mean).toBeLessThan(-1.5);
  expect(mean).toBeGreaterThan(-6);
  expect(standardError).toBeLessThan(0.5);
});

test('in a terminal says that they are simulated, how far off, and how long', async () => {
  const { stdout, code } = await typedArgs([
    'plan',
    '--protocol',
    fast,
    '--against',
    textbook,
    '--people',
    '200',
  ]);
  expect(code).toBe(0);
  expect(stdout).toMatch(/^SIMULATED +200 persons/);
  expect(stdout).toContain('min of a clinician a person');
  expect(stdout).toMatch(/Systolic: too (high|low) by \d/);
  expect(stdout).toContain('this minus the other');
});

describe('refused', () => {
  const refused = async (...args: string[]) => {
    const ended = await typedArgs(['plan', ...args, '--json']);
    expect([ended.code, ended.stdout]).toEqual([2, '']);
    return ended.problems.map(({ field, code }) => `${field} ${code}`);
  };

  test('without a protocol', async () => {
    expect(await refused()).toEqual(['--protocol missing']);
  });

  test.each([
    [{ people: 3 }, ['/people unknown-field']],
    [{ rule: 'none' }, ['/rule unknown-id']],
    [{ visits: 0 }, ['/visits out-of-range']],
    [{ visits: 11 }, ['/visits out-of-range']],
    [
      { faults: { talking: 2, shouting: 1 } },
      ['/faults/shouting unknown-field', '/faults/talking out-of-range'],
    ],
    [{ readings: 1.5 }, ['/readings not-whole']],
    [{ rateMmHgPerSecond: 0.4 }, ['/rateMmHgPerSecond out-of-range']],
    [{ palpatesFirst: 'yes' }, ['/palpatesFirst unknown-id']],
    [{ home: { days: 3, readingsPerDay: 4, droppedDays: 3 } }, ['/home/droppedDays out-of-range']],
  ])('%j', async (content, problems) => {
    expect(await refused('--protocol', file('bad.json', content))).toEqual(problems);
  });

  test.each([
    ['1', 'out-of-range'],
    ['10000001', 'out-of-range'],
    ['2.5', 'not-whole'],
    ['many', 'not-a-number'],
  ])('%s people', async (people, code) => {
    expect(await refused('--protocol', textbook, '--people', people)).toEqual([`--people ${code}`]);
  });
});
