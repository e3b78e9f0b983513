import { wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { elementsOf, stretchesOf, withClass } from '../../testing/svgParts.js';
import type { ExerciseDrawn, SoundDrawn } from './exerciseDrawn.js';
import { exerciseFigure } from './exerciseFigure.js';

const words = wordsFor('en-GB');
const PER_SECOND = 50;
const RATE = 2.5;
const PEAK = 160;
const PEAK_SECONDS = 4;

/** A cuff that falls at 2.5 mmHg a second from second 4 on; a sound each second between two pressures. Invented. */
function fallen(more: Partial<ExerciseDrawn> = {}): ExerciseDrawn {
  const cuffAt = (seconds: number) =>
    seconds < PEAK_SECONDS
      ? (PEAK * seconds) / PEAK_SECONDS
      : Math.max(0, PEAK - RATE * (seconds - PEAK_SECONDS));
  const points = 70 * PER_SECOND;
  const sounds: SoundDrawn[] = [];
  for (let at = PEAK_SECONDS; at < 60; at++) {
    const cuffMmHg = cuffAt(at);
    if (cuffMmHg > 120 || cuffMmHg < 76) continue;
    const phase = cuffMmHg > 110 ? 1 : cuffMmHg > 100 ? 2 : cuffMmHg > 82 ? 3 : 4;
    sounds.push({ atSeconds: at, cuffMmHg, phase, levelDb: cuffMmHg - 80, isAudible: cuffMmHg >= 80 });
  }
  return {
    tracePerSecond: PER_SECOND,
    cuffMmHg: Float64Array.from({ length: points }, (_, i) => cuffAt(i / PER_SECOND)),
    arterialMmHg: Float64Array.from({ length: points }, (_, i) => 100 + 24 * Math.sin(i / 8)),
    sounds,
    marks: [
      { what: 'first sound', atSeconds: 20.4, mmHg: 120 },
      { what: 'last sound', atSeconds: 36.2, mmHg: 80 },
    ],
    fall: { peakSeconds: PEAK_SECONDS, peakMmHg: PEAK, endSeconds: 64 },
    reference: { systolic: 121, diastolic: 79 },
    gap: null,
    ...more,
  };
}

const near = (a: number, b: number, by = 0.6) => expect(Math.abs(a - b)).toBeLessThan(by);

describe('the letting down of an exercise', () => {
  const { svg, marks, table, description } = exerciseFigure(fallen(), words);
  const grid = elementsOf(svg).filter(({ at }) => at.class === 'figure-grid' && at.y1 === at.y2);
  const yOf = (mmHg: number) => {
    // Grid lines stand every 20 mmHg, lowest first.
    const [first, second] = [Number(grid[0]!.at.y1), Number(grid[1]!.at.y1)];
    const lowest = 60;
    return first + ((mmHg - lowest) / 20) * (second - first);
  };

  test('the cuff falls as it fell, the lines of what is true stand at their pressures', () => {
    const cuff = stretchesOf(withClass(svg, 'figure-cuff')[0]!.at.d!)[0]!;
    near(Math.min(...cuff.map(([, y]) => y)), yOf(PEAK), 1);
    const [systolic, diastolic] = [withClass(svg, 'is-systolic'), withClass(svg, 'is-diastolic')];
    near(Number(systolic.find(({ name }) => name === 'line')!.at.y1), yOf(121));
    near(Number(diastolic.find(({ name }) => name === 'line')!.at.y1), yOf(79));
  });

  test('every sound of the fall is a mark with its phase, loudness and time, in order of time', () => {
    const audible = fallen().sounds.filter(({ isAudible }) => isAudible);
    expect(withClass(svg, 'figure-stem').length).toBe(audible.length);
    expect(withClass(svg, 'is-faint').length).toBe(fallen().sounds.length - audible.length);
    const times = marks.map(({ x }) => x);
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    expect(table.rows.length).toBe(fallen().sounds.length + 2);
    expect(marks[0]?.text).toBe(
      '16.0 s: sound of phase I, 120 mmHg in the cuff, 40 dB above what a normal ear just hears.',
    );
    expect(description).toContain('True: 121/79 mmHg.');
    expect(description).toContain('You marked: first sound 120 mmHg.');
  });

  test('a louder sound has a longer stem, and the four phases differ without colour', () => {
    const lengths = withClass(svg, 'figure-stem').map(({ at }) => Number(at.y1) - Number(at.y2));
    expect(lengths).toEqual(lengths.toSorted((a, b) => b - a));
    const heads = [1, 2, 3, 4].map((phase) => {
      const { name, at } = withClass(svg, `is-phase-${phase}`)[0]!;
      return `${name} ${at.fill}`;
    });
    expect(new Set(heads).size).toBe(4);
  });
});

test('the pressure inside the artery is drawn to scale only where it is asked for', () => {
  expect(withClass(exerciseFigure(fallen(), words).svg, 'figure-artery')).toEqual([]);
  const shown = exerciseFigure(fallen(), words, { showsArtery: true }).svg;
  expect(withClass(shown, 'figure-artery').length).toBe(1);
});

test('a gap is shaded and hatched over the stretch of the fall that lies in it', () => {
  const gap = { topMmHg: 110, bottomMmHg: 100 };
  const { svg, description } = exerciseFigure(fallen({ gap }), words);
  const [shade] = withClass(svg, 'figure-gap');
  const stems = withClass(svg, 'figure-stem').map(({ at }) => Number(at.x1));
  const inside = stems.filter(
    (x) => x >= Number(shade!.at.x) - 0.5 && x <= Number(shade!.at.x) + Number(shade!.at.width) + 0.5,
  );
  // 10 mmHg at 2.5 a second are 4 seconds: the sounds at 110, 107.5, 105, 102.5 and 100.
  expect(inside.length).toBe(5);
  expect(withClass(svg, 'figure-hatch').length).toBeGreaterThan(2);
  expect(description).toContain('Silent gap between 110 and 100 mmHg.');
  expect(withClass(exerciseFigure(fallen(), words).svg, 'figure-gap')).toEqual([]);
});

test('nothing heard and nothing timed still draws, and says so', () => {
  const { svg, description, marks } = exerciseFigure(
    fallen({ sounds: [], marks: [{ what: 'first sound', atSeconds: null, mmHg: 118 }] }),
    words,
  );
  expect(svg).not.toMatch(/NaN|Infinity/);
  expect(description).toContain('No sound that a normal ear hears.');
  expect(marks.map(({ text }) => text)).toEqual(['Your first sound: 118 mmHg, without a time.']);
});

test('the names of two moments do not lie on each other, wherever they were', () => {
  const WIDTH = 90;
  for (const [width, height] of [
    [540, 255],
    [263, 345],
  ] as const)
    for (let mmHg = 66; mmHg <= 150; mmHg += 2) {
      const { svg } = exerciseFigure(
        fallen({
          marks: [
            { what: 'first sound', atSeconds: null, mmHg: width === 263 ? 130 : 170 },
            { what: 'last sound', atSeconds: null, mmHg },
          ],
        }),
        words,
        { width, height, showsKey: false },
      );
      const [one, other] = elementsOf(svg)
        .filter(({ name, text }) => name === 'text' && /sound \d/.test(text))
        .map(({ at }) => {
          const x = Number(at.x);
          return { from: at['text-anchor'] === 'end' ? x - WIDTH : x, y: Number(at.y) };
        });
      const isBeside = Math.abs(one!.from - other!.from) >= WIDTH;
      expect(isBeside || Math.abs(one!.y - other!.y) >= 11, `${width} ${mmHg}`).toBe(true);
    }
});

test('as narrow as on a phone all of it is within its edges, and the pulse and what is true keep their names', () => {
  const width = 263;
  const { svg } = exerciseFigure(fallen(), words, { width, height: 345, showsKey: false });
  const texts = elementsOf(svg).filter(({ name, at }) => name === 'text' && at.transform === undefined);
  expect(texts.map(({ text }) => text)).toEqual(
    expect.arrayContaining(['true 121', 'true 79', 'pulse in the arm, without a scale']),
  );
  for (const { at, text } of texts) {
    // A letter is no wider than 0.62 of its size on the mean.
    const long = 0.62 * Number(at['font-size']) * (text?.length ?? 0);
    const from =
      Number(at.x) - (at['text-anchor'] === 'end' ? long : at['text-anchor'] === 'middle' ? long / 2 : 0);
    expect(from, text).toBeGreaterThanOrEqual(0);
    expect(from + long, text).toBeLessThanOrEqual(width);
  }
  for (const { at } of withClass(svg, 'figure-stem')) expect(Number(at.x1)).toBeLessThan(width - 12);
});

test('no name of a marked moment lies on a line of what is true, wherever the moment was', () => {
  for (let off = -14; off <= 14; off++) {
    for (const atSeconds of [null, 9, 20.4]) {
      const { svg } = exerciseFigure(
        fallen({
          marks: [
            { what: 'first sound', atSeconds, mmHg: 121 + off },
            { what: 'last sound', atSeconds: atSeconds === null ? null : 36.2, mmHg: 79 + off },
          ],
        }),
        words,
      );
      const lines = withClass(svg, 'figure-reference').map(({ at }) => Number(at.y1));
      const names = elementsOf(svg).filter(({ name, text }) => name === 'text' && /sound \d/.test(text));
      expect(lines).toHaveLength(2);
      expect(names).toHaveLength(2);
      // Letters of a dozen px reach about nine over their foot and two under it.
      for (const { at } of names)
        for (const line of lines)
          expect(line > Number(at.y) - 9 && line < Number(at.y) + 2, `${off} ${atSeconds}`).toBe(false);
    }
  }
});
