import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { BLANK, SCENARIOS } from '@evenfall/physiology';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { typedArgs } from '../../testing/typed.js';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'evenfall-sound-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);
const sound = (scenario: string, ...args: string[]) => typedArgs(['sound', scenario, ...args]);

/** The samples of a file of 44 bytes of heading, by the offsets of the WAVE specification. */
function samplesOf(path: string): { rate: number; samples: Int16Array; comment: string } {
  const bytes = readFileSync(path);
  const size = bytes.readUInt32LE(40);
  const samples = new Int16Array(size / 2);
  for (let i = 0; i < samples.length; i++) samples[i] = bytes.readInt16LE(44 + 2 * i);
  return { rate: bytes.readUInt32LE(24), samples, comment: bytes.subarray(44 + size).toString('latin1') };
}

const loudest = (samples: Int16Array) => samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0);

type Row = Readonly<Record<string, string>>;
function rowsOf(path: string): Row[] {
  const [heading = '', ...lines] = readFileSync(path, 'utf8').split('\r\n');
  const names = heading.split(',');
  return lines
    .filter((line) => line !== '')
    .map((line) => Object.fromEntries(line.split(',').map((cell, i) => [names[i] ?? '', cell])));
}

describe('a let-down as a file', () => {
  test('has the keys in their order, a WAV and the gauge as CSV beside it, and says SIMULATED in both', async () => {
    const out = at('run.wav');
    const { code, stderr, json } = await sound(
      'quiet-morning',
      '--seed',
      '7',
      '--rate',
      '2.5',
      '--out',
      out,
      '--json',
    );
    expect([code, stderr]).toEqual([0, '']);
    expect(Object.keys(json[0]!)).toEqual(
      'scenario seed mmHgPerSecond book wav csv durationSeconds peakMmHg letDownFromSeconds sounds truth chestPiece room loudspeakerVoice computedBy'.split(
        ' ',
      ),
    );
    // Physiology handbook 14, row 1: 116/72.
    expect(json[0]).toMatchObject({ seed: 7, book: 'simulated', truth: { systolic: 116, diastolic: 72 } });
    const { rate, samples, comment } = samplesOf(out);
    expect(samples.length / rate).toBeCloseTo(json[0]?.durationSeconds as number, 3);
    expect(comment).toMatch(/^LIST.*SIMULATED: quiet-morning, seed 7, 2\.5 mmHg\/s/s);
    const rows = rowsOf(at('run.csv'));
    expect(Object.keys(rows[0]!)).toEqual(
      'schema notice atSeconds gaugeMmHg cuffMmHg phase loudnessDb'.split(' '),
    );
    expect(new Set(rows.map(({ notice }) => notice))).toEqual(new Set(['SIMULATED']));
    expect(rows.filter(({ phase }) => phase !== '')).toHaveLength(json[0]?.sounds as number);
  });

  test('each sound of the table is heard at its time, and nothing before the cuff is let down to the first', async () => {
    const out = at('timed.wav');
    const { json } = await sound('leaves-in-wind', '--seed', '3', '--out', out, '--json');
    const { rate, samples } = samplesOf(out);
    const from = json[0]?.letDownFromSeconds as number;
    const heard = rowsOf(at('timed.csv')).filter(
      (row) => row.phase !== '' && Number(row.loudnessDb) > 20 && Number(row.atSeconds) > from,
    );
    expect(heard.length).toBeGreaterThan(10);
    const part = (low: number, high: number) =>
      loudest(samples.subarray(Math.round(low * rate), Math.round(high * rate)));
    for (const row of heard) {
      // A line of the table is 20 ms long.
      const time = Number(row.atSeconds);
      expect(part(time - 0.02, time + 0.03)).toBeGreaterThan(4 * part(time - 0.06, time - 0.021));
    }
    const first = Number(heard[0]?.atSeconds);
    expect(part(from + 0.5, first - 1.5)).toBeLessThan(part(first - 0.02, first + 0.1) / 4);
  });

  test('falls at the rate that was asked for', async () => {
    for (const rate of [2, 5]) {
      await sound('quiet-morning', '--rate', String(rate), '--out', at(`rate${rate}.wav`));
      const rows = rowsOf(at(`rate${rate}.csv`)).map(({ atSeconds, cuffMmHg }) => [
        Number(atSeconds),
        Number(cuffMmHg),
      ]);
      const top = rows.findLast(([, mmHg]) => mmHg! >= 150)!;
      const low = rows.findLast(([, mmHg]) => mmHg! >= 80)!;
      expect((top[1]! - low[1]!) / (low[0]! - top[0]!)).toBeCloseTo(rate, 1);
    }
  });

  test('the same seed gives the same bytes, another seed others', async () => {
    const bytes = async (seed: string, name: string) => {
      await sound('missed-step', '--seed', seed, '--rate', '6', '--room', '--out', at(name));
      return [readFileSync(at(name)), readFileSync(at(name.replace('.wav', '.csv')))] as const;
    };
    const [wav, csv] = await bytes('5', 'a.wav');
    const [again, csvAgain] = await bytes('5', 'b.wav');
    const [other] = await bytes('6', 'c.wav');
    expect([wav.equals(again), csv.equals(csvAgain), wav.equals(other)]).toEqual([true, true, false]);
  });

  test('the voice for loudspeakers is named in the file and in the answer', async () => {
    const out = at('loud.wav');
    const { stdout } = await sound('quiet-morning', '--rate', '8', '--loudspeaker', '--out', out);
    expect(stdout).toContain('SIMULATED');
    expect(stdout).toContain('no proof of what is heard through a stethoscope');
    expect(samplesOf(out).comment).toContain('LOUDSPEAKER VOICE');
  });

  test('a scenario of one’s own is read from a file', async () => {
    const own = { ...BLANK, id: 'own', systolic: 150, diastolic: 90 };
    writeFileSync(at('own.json'), JSON.stringify(own));
    const { code, json } = await sound(at('own.json'), '--rate', '10', '--out', at('own.wav'), '--json');
    expect([code, json[0]?.scenario]).toEqual([0, 'own']);
    // Nothing excites this one: at rest and during the run it is the same but for slow waves.
    const truth = json[0]?.truth as { during: { systolic: number } };
    expect(truth).toMatchObject({ systolic: 150, diastolic: 90 });
    expect(Math.abs(truth.during.systolic - 150)).toBeLessThan(10);
  });
});

describe('what is refused writes nothing', () => {
  test.each([
    ['a scenario that there is not, with the nearest', ['quiet-mornin'], 'SCENARIO', 'unknown-id'],
    ['a rate of nobody', ['tide', '--rate', '0.49'], '--rate', 'out-of-range'],
    ['a rate of nobody', ['tide', '--rate', '20.1'], '--rate', 'out-of-range'],
    ['a rate that is no number', ['tide', '--rate', '2,5'], '--rate', 'not-a-number'],
    ['a seed that is not whole', ['tide', '--seed', '1.5'], '--seed', 'not-whole'],
    ['a seed over 32 bits', ['tide', '--seed', '4294967296'], '--seed', 'out-of-range'],
    ['a seed below 0', ['tide', '--seed', '-1'], '--seed', 'out-of-range'],
    ['a side that there is not', ['tide', '--chest-piece', 'horn'], '--chest-piece', 'unknown-id'],
  ])('%s: %j', async (_what, args, field, code) => {
    const before = readdirSync(folder).length;
    const ended = await typedArgs(['sound', ...args, '--out', at('never.wav'), '--json']);
    expect([ended.code, ended.stdout]).toEqual([2, '']);
    expect(ended.problems).toMatchObject([{ field, code }]);
    expect(readdirSync(folder)).toHaveLength(before);
  });

  test.each(['0.5', '20'])('a rate at the limit is taken: %s', async (rate) => {
    // The fastest pulse of the book: the file stays short.
    const ended = await sound('cold-hands', '--rate', rate, '--out', at(`limit${rate}.wav`));
    expect([ended.code, ended.stderr]).toEqual([0, '']);
  });

  test('no --out, another ending, a file that is there already, a folder that is not', async () => {
    expect((await sound('tide', '--json')).problems).toMatchObject([{ field: '--out', code: 'missing' }]);
    expect((await sound('tide', '--out', at('x.mp3'), '--json')).problems).toMatchObject([
      { field: '--out', code: 'contradicts' },
    ]);
    writeFileSync(at('kept.csv'), 'kept');
    const taken = await sound('tide', '--out', at('kept.wav'), '--json');
    expect(taken.problems).toMatchObject([{ field: '--out', code: 'repeated', got: at('kept.csv') }]);
    expect(readFileSync(at('kept.csv'), 'utf8')).toBe('kept');
    expect(readdirSync(folder)).not.toContain('kept.wav');
    const nowhere = await sound('tide', '--out', at('none/x.wav'), '--json');
    expect([nowhere.code, nowhere.problems[0]?.field]).toEqual([2, '--out']);
    const replaced = await sound('tide', '--rate', '20', '--out', at('kept.wav'), '--replace');
    expect(replaced.code).toBe(0);
    expect(readFileSync(at('kept.csv'), 'utf8')).toMatch(/^schema,notice/);
  });

  test('a file of a scenario is refused by its fields, and named', async () => {
    writeFileSync(at('bad.json'), JSON.stringify({ ...BLANK, armCm: 400 }));
    const ended = await sound(at('bad.json'), '--out', at('never.wav'), '--json');
    expect(ended.code).toBe(2);
    expect(ended.problems).toMatchObject([{ file: at('bad.json'), field: '/armCm', code: 'out-of-range' }]);
    const none = await sound(at('none.json'), '--out', at('never.wav'), '--json');
    expect(none.problems).toMatchObject([{ file: at('none.json'), code: 'missing' }]);
  });
});

test('every person of the book is listed with a title, in both languages', async () => {
  for (const language of ['en', 'es']) {
    const { json } = await typedArgs(['sound', '--list', '--json', '--language', language]);
    const items = json[0]?.items as { id: string; title: string }[];
    expect(items.map(({ id }) => id)).toEqual(SCENARIOS.map(({ id }) => id));
    for (const { id, title } of items) expect(title, id).not.toMatch(/^$|^[a-z-]+$/);
  }
});
