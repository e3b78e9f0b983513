import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { SCENARIOS } from '@evenfall/physiology';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { typed, typedArgs } from '../../testing/typed.js';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'evenfall-simulate-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function file(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

type Answer = {
  truth: { rest: { systolic: number; diastolic: number } };
  beats: { atSeconds: number; systolic: number; diastolic: number }[];
  sounds: { atSeconds: number; cuffMmHg: number; phase: number; loudness: number }[];
  needle: { perSecond: number; mmHg: number[] };
  reading: { systolic: number; diastolic: number; systolicRange: [number, number] } | null;
  actions: object[];
  durationSeconds: number;
};

async function answered(...args: string[]): Promise<Answer> {
  const { code, stderr, json } = await typedArgs(['simulate', ...args, '--json']);
  expect([stderr, code]).toEqual(['', 0]);
  return json[0] as Answer;
}

describe('a visit by the textbook', () => {
  test('has the keys of its answer first and in order, and repeats the seed', async () => {
    const answer = await answered('quiet-morning', '--seed', '7');
    expect(Object.keys(answer).slice(0, 5)).toEqual(['truth', 'beats', 'sounds', 'needle', 'reading']);
    expect(answer).toMatchObject({ seed: 7, scenario: 'quiet-morning', book: 'simulated' });
    // The levels of the model book's table of people (physiology handbook 14, row 1).
    expect(answer.truth.rest).toEqual({ systolic: 116, diastolic: 72 });
    expect(answer.needle.mmHg.length).toBe(Math.floor(answer.durationSeconds * answer.needle.perSecond) + 1);
  });

  test('sounds come on beats, while the cuff is between the two numbers of that beat', async () => {
    const { sounds, beats, reading } = await answered('white-corridor');
    expect(sounds.length).toBeGreaterThan(10);
    for (const sound of sounds) {
      const beat = beats.findLast(({ atSeconds }) => atSeconds <= sound.atSeconds);
      if (beat === undefined) throw new Error('a sound before any beat');
      expect(sound.cuffMmHg).toBeLessThanOrEqual(beat.systolic);
      expect(sound.cuffMmHg).toBeGreaterThanOrEqual(beat.diastolic);
    }
    expect(reading).not.toBeNull();
  });

  test('the same seed is the same visit; another is another', async () => {
    const [one, again, other] = await Promise.all(
      ['3', '3', '4'].map((seed) => answered('stiff-pipe', '--seed', seed)),
    );
    expect(again).toEqual(one);
    expect(other?.sounds).not.toEqual(one?.sounds);
  });

  // Bedside handbook 1.1: at the apex each pair of sounds is one beat.
  test('heart sounds are listed where the hands listened at the apex, and only then', async () => {
    const hands = file('apex.json', { actions: [{ tick: 400, kind: 'apex', isOn: true }], seconds: 62 });
    const there = (await answered('storm-of-leaves', '--actions', hands)) as Answer & {
      heartSounds: { atSeconds: number; beat: number; heart: string }[];
    };
    const firsts = there.heartSounds.filter(({ heart }) => heart === 'first');
    expect(Math.abs(firsts.length - there.heartSounds.length / 2)).toBeLessThanOrEqual(1);
    expect(firsts.length).toBeGreaterThan(110);
    expect(there.sounds).toEqual([]);
    expect(await answered('storm-of-leaves')).not.toHaveProperty('heartSounds');
  });

  test('says in a terminal that nobody was there, what was true and what was read', async () => {
    const { stdout } = await typed('simulate stiff-pipe');
    expect(stdout).toMatch(/^SIMULATED /);
    expect(stdout).toContain('178/82 at rest');
    expect(stdout).toMatch(/Read +\d+\/\d+ by a good observer/);
  });

  // Physiology handbook 8.5 (a gap of 6 to 40 mmHg under the systolic), 8.3 (phases follow each other downwards).
  test('says where the sounds fall silent, and from where to where each phase is heard', async () => {
    const { stdout } = await typed('simulate stiff-pipe');
    const [, top, bottom] = /Silent gap +from (\d+) down to (\d+) mmHg/.exec(stdout)?.map(Number) ?? [];
    expect(top).toBeLessThan(178);
    expect((top as number) - (bottom as number)).toBeGreaterThanOrEqual(6);
    expect((top as number) - (bottom as number)).toBeLessThanOrEqual(40);
    const phases = [...stdout.matchAll(/\b(I{1,3}|IV) (\d+) to (\d+)/g)];
    expect(phases.length).toBeGreaterThan(1);
    for (const [, , from, to] of phases) expect(Number(from)).toBeGreaterThanOrEqual(Number(to));
    const begins = phases.map(([, , from]) => Number(from));
    expect(begins).toEqual(begins.toSorted((a, b) => b - a));
    expect((await typed('simulate quiet-morning')).stdout).toMatch(/Silent gap +none/);
  });

  test('of a cuff that nobody pumps up it says that nothing was there to be heard', async () => {
    const path = file('still.json', { actions: [], seconds: 20 });
    const { stdout } = await typedArgs(['simulate', 'quiet-morning', '--actions', path]);
    expect(stdout).toMatch(/Phases +nothing was there to be heard/);
  });

  test('in Spanish too', async () => {
    const { stdout } = await typed('simulate stiff-pipe --language es');
    expect(stdout).toContain('178/82 en reposo');
  });
});

describe('hands of one’s own', () => {
  test('the movements that an answer lists, given back, make the same visit', async () => {
    const first = await answered('quiet-morning');
    const path = file('hands.json', { actions: first.actions, seconds: first.durationSeconds });
    const again = await answered('quiet-morning', '--actions', path);
    expect(again.sounds).toEqual(first.sounds);
    expect(again.needle).toEqual(first.needle);
  });

  test('a cuff that nobody pumps up gives nothing to read', async () => {
    const path = file('idle.json', { actions: [], seconds: 20 });
    const answer = await answered('quiet-morning', '--actions', path);
    expect(answer.reading).toBeNull();
    expect(answer.sounds).toEqual([]);
    expect(answer.durationSeconds).toBe(20);
  });

  test.each([
    ['{"actions":[{"tick":0,"kind":"shake"}]}', '/actions/0/kind', 'unknown-id'],
    ['{"actions":[{"tick":0,"kind":"valve","degrees":121}]}', '/actions/0/degrees', 'out-of-range'],
    ['{}', '/actions', 'missing'],
    ['{"actions":', null, 'missing'],
    [
      '{"actions":[{"tick":400,"kind":"steady-rise","mmHgPerSecond":60,"toMmHg":200},{"tick":1400,"kind":"gauge"}]}',
      '/actions/1/kind',
      'impossible',
    ],
  ])('%s is refused by field', async (text, field, code) => {
    const path = file('bad.json', text);
    const ended = await typedArgs(['simulate', 'quiet-morning', '--actions', path, '--json']);
    expect(ended.code).toBe(2);
    expect(ended.stdout).toBe('');
    expect(ended.problems).toMatchObject([{ file: path, field, code }]);
  });
});

test('--list names every person of the book', async () => {
  const { json } = await typed('simulate --list --json');
  const items = json[0]?.items as { id: string; typed: string }[];
  expect(items.map(({ id }) => id)).toEqual(SCENARIOS.map(({ id }) => id));
  expect(items[0]?.typed).toBe('evenfall simulate quiet-morning');
  // What a good observer reports is data of each person.
  const reports = json[0]?.items as { id: string; report: { code: string; detail: string }[] }[];
  expect(reports.every(({ report }) => report.length > 0)).toBe(true);
  expect(reports.find(({ id }) => id === 'tide')?.report).toContainEqual({
    code: 'breaths-full-minute',
    detail: 'The breaths counted for a full minute.',
  });
  // What each teaches is to choose by.
  expect(json[0]?.items).toContainEqual(
    expect.objectContaining({
      title: expect.stringMatching(/^Stiff pipe \(f, 76 y\)\. .*fall silent for a stretch/),
    }),
  );
});

test.each([
  ['simulate stiff-pip', 'unknown-id'],
  ['simulate', 'missing'],
  ['simulate quiet-morning --seed 1.5', 'not-whole'],
  ['simulate quiet-morning --seed -1', 'out-of-range'],
  ['simulate quiet-morning --seed 4294967296', 'out-of-range'],
  ['simulate quiet-morning --actions nowhere.json', 'missing'],
])('%s is refused: %s', async (line, code) => {
  const ended = await typed(`${line} --json`);
  expect(ended.code).toBe(2);
  expect(ended.problems).toMatchObject([{ code }]);
});
