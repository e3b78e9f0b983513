import { describe, expect, test } from 'vitest';
import {
  type Chance,
  generator,
  independentIntervals,
  type NamedRhythm,
  RHYTHMS,
  slowIntervals,
  tapped,
  timesOf,
} from '../../fixtures/people.mjs';
import { type Rhythm, rhythm } from './rhythm.js';
import { type TapResult, tapResult } from './tapResult.js';

function resultOf(intervals: readonly number[], of: 'pulse' | 'breaths' = 'pulse'): TapResult {
  return tapResult({ of, source: 'key', seconds: timesOf(intervals) }, { repair: true });
}

/** How often each word is given to 200 people with this rhythm, at 50 to 80 a minute, tapped with 20 ms of jitter. */
function words(name: NamedRhythm): Map<Rhythm, number> {
  const chance = generator(2024);
  const counts = new Map<Rhythm, number>();
  for (let i = 0; i < 200; i++) {
    const intervals = RHYTHMS[name](chance, chance.whole(45, 80), 60 / chance.uniform(50, 80));
    const seconds = tapped(chance, intervals, 0.02);
    const word = tapResult({ of: 'pulse', source: 'key', seconds }, { repair: true }).rhythm;
    counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return counts;
}

describe('recipes of bedside handbook 1.8', () => {
  test.each(Object.keys(RHYTHMS) as NamedRhythm[])('%s is called so, or nothing', (name) => {
    const counts = words(name);
    const right = counts.get(name) ?? 0;
    expect(right).toBeGreaterThan(180);
    expect(right + (counts.get('undecided') ?? 0)).toBeGreaterThan(190);
  });

  test('an irregular rhythm is never called regular', () => {
    for (const name of ['irregularly-irregular', 'regularly-irregular'] as const) {
      const counts = words(name);
      expect(counts.get('regular') ?? 0).toBe(0);
      expect(counts.get('regular-with-breathing') ?? 0).toBe(0);
    }
  });
});

test('an alternating rhythm repeats in twos, a dropped fourth beat in threes', () => {
  const alternating = Array.from({ length: 40 }, (_, i) => (i % 2 === 0 ? 0.5 : 1));
  expect(resultOf(alternating).rhythm).toBe('regularly-irregular');
  const dropped = Array.from({ length: 40 }, (_, i) => (i % 3 === 2 ? 1.6 : 0.8));
  expect(resultOf(dropped).rhythm).toBe('regularly-irregular');
});

describe('over the irregular limit, but not without pattern', () => {
  /** How many of 100 such people are called irregularly irregular, and how many are over the limit at all. */
  function called(intervalsOf: (chance: Chance) => number[]): { called: number; over: number } {
    const chance = generator(99);
    const counts = { called: 0, over: 0 };
    for (let i = 0; i < 100; i++) {
      const result = resultOf(intervalsOf(chance));
      if ((result.nrmssd as number) > 0.2) counts.over++;
      if (result.rhythm === 'irregularly-irregular') counts.called++;
    }
    return counts;
  }

  test('wandering far and slowly is undecided', () => {
    const how = { correlation: 0.8, breathsPerMinute: 12, breathingShare: 0 };
    const counts = called((chance) => slowIntervals(chance, 60, 0.9, 0.4, how));
    expect(counts.over).toBeGreaterThan(60);
    expect(counts.called).toBeLessThan(5);
  });

  test('a steady beat with an early one in five at random is undecided: most intervals are alike', () => {
    const counts = called((chance) => {
      const intervals = independentIntervals(chance, 60, 0.9, 0.02);
      for (let i = 0; i < 58; i += 2 + chance.whole(0, 6)) {
        intervals[i] = 0.55;
        intervals[i + 1] = 1.25;
      }
      return intervals;
    });
    expect(counts.over).toBeGreaterThan(90);
    expect(counts.called).toBeLessThan(10);
  });
});

describe('under 30 intervals', () => {
  test('nothing but regular or undecided', () => {
    const chance = generator(30);
    for (const name of Object.keys(RHYTHMS) as NamedRhythm[]) {
      for (let i = 0; i < 40; i++) {
        const word = resultOf(RHYTHMS[name](chance, chance.whole(1, 29), 0.8)).rhythm;
        expect(['regular', 'undecided']).toContain(word);
      }
    }
  });

  test('the handbook fixture of a steady pulse is regular, of an irregular one undecided', () => {
    // Bedside handbook 1.12 (derived), 12 intervals each.
    const steady = [830, 840, 835, 825, 830, 840, 830, 835, 825, 830, 840, 835];
    expect(resultOf(steady.map((ms) => ms / 1000)).rhythm).toBe('regular');
    const irregular = [620, 910, 540, 780, 1020, 650, 870, 590, 960, 700, 820, 560];
    const result = resultOf(irregular.map((ms) => ms / 1000));
    expect(result.rhythm).toBe('undecided');
    expect(result.why).toContainEqual({ code: 'too-few-for-rhythm', figures: { intervals: 12, needs: 30 } });
  });

  test('a handful of equal intervals is not yet a regular rhythm', () => {
    expect(resultOf(new Array(9).fill(0.8)).rhythm).toBe('undecided');
    expect(resultOf(new Array(10).fill(0.8)).rhythm).toBe('regular');
  });
});

describe('the tapper', () => {
  test('the limit of an irregular rhythm is twice what a tapper makes of a steady pulse, where that is more', () => {
    // Handbook 1.8: floor = jitter x root 6 / mean interval, jitter 25 ms (from memory); never under 0.15.
    const limitAt = (meanSeconds: number) => {
      const uneven = independentIntervals(generator(5), 60, meanSeconds, 0.09);
      const { why, meanIntervalMs } = resultOf(uneven);
      const unclear = why.find(({ code }) => code === 'rhythm-not-clear');
      return [unclear?.figures.irregularOver, (2 * 25 * Math.sqrt(6)) / (meanIntervalMs as number)] as const;
    };
    const [fast, floors] = limitAt(0.5);
    expect(floors).toBeGreaterThan(0.2);
    expect(fast).toBeCloseTo(floors, 6);
    expect(limitAt(0.9)[0]).toBe(0.15);
  });

  const chance = generator(7);
  const seconds = tapped(chance, new Array(60).fill(0.5), 0.045);

  test('a steady pulse tapped badly is undecided', () => {
    const taps = { of: 'pulse', source: 'key', seconds } as const;
    const unknown = tapResult(taps, { repair: false });
    expect(unknown.rhythm).toBe('undecided');
    expect(unknown.why.map(({ code }) => code)).toContain('rhythm-not-clear');
  });
});

test('breaths are regular or undecided, however many', () => {
  const chance = generator(12);
  const even = tapped(chance, new Array(40).fill(4), 0.15);
  expect(tapResult({ of: 'breaths', source: 'key', seconds: even }, { repair: true }).rhythm).toBe('regular');
  const uneven = Array.from({ length: 40 }, (_, i) => (i % 2 === 0 ? 2 : 5));
  expect(resultOf(uneven, 'breaths').rhythm).toBe('undecided');
});

test('where many taps are missing, beats may be dropping out: undecided, and flagged', () => {
  const intervals = Array.from({ length: 40 }, (_, i) => ([3, 9, 12, 21, 26, 38].includes(i) ? 1.6 : 0.8));
  const result = resultOf(intervals);
  expect(result.repairs).toHaveLength(6);
  expect(result.rhythm).toBe('undecided');
  expect(result.flags).toContainEqual({ code: 'many-missed', figures: { gaps: 6, intervals: 40 } });
});

test.each([5, 6, 8, 10, 12, 15])(
  'a beat dropped at every %sth is the person’s: nothing is put in, not called regular',
  (every) => {
    const intervals = Array.from({ length: 60 }, (_, i) => (i % every === every - 2 ? 1.6 : 0.8));
    const result = resultOf(intervals);
    expect(result.repairs).toEqual([]);
    expect(result.rhythm).not.toMatch(/^regular(-with-breathing)?$/);
    expect(result.flags.map(({ code }) => code).join()).toMatch(/in-turn|too-many/);
  },
);

test.each([
  [170, 0.14, 0.01],
  [160, 0.15, 0.01],
  [150, 0.15, 0.02],
  [140, 0.16, 0.035],
  [120, 0.2, 0.025],
])(
  'a fast pulse without a pattern is never called regular: %s a minute, variation %s, jitter %s s',
  (rate, variation, jitter) => {
    const chance = generator(Math.round(rate * 1000 * variation));
    for (let person = 0; person < 200; person += 1) {
      const beats = independentIntervals(chance, 60, 60 / rate, variation);
      const seconds = tapped(chance, beats, jitter);
      expect(tapResult({ of: 'pulse', source: 'key', seconds }, { repair: true }).rhythm).not.toBe('regular');
    }
  },
);

test('without a pattern nothing is called regular at any rate: 40 to 170 a minute, variation 14 to 25 %, jitter 10 to 35 ms', () => {
  const chance = generator(170);
  const given = Array.from({ length: 3000 }, () => {
    const cv = chance.uniform(0.14, 0.25);
    const beats = independentIntervals(chance, chance.whole(14, 79), 60 / chance.uniform(40, 170), cv);
    const seconds = tapped(chance, beats, chance.uniform(0.01, 0.035));
    return tapResult({ of: 'pulse', source: 'key', seconds }, { repair: true });
  });
  const called = (word: string) => given.filter(({ rhythm }) => rhythm === word).length;
  expect(called('regular')).toBe(0);
  expect(called('regular-with-breathing')).toBeLessThan(0.01 * given.length);
});

test.each([
  [14, 'undecided'],
  [30, 'regular'],
])('one beat put in between %s intervals: %s', (length, rhythm) => {
  const result = resultOf(Array.from({ length }, (_, i) => (i === 7 ? 1.6 : 0.8)));
  expect(result).toMatchObject({ rhythm, repairs: [{ index: 8, what: 'missed', added: 1 }] });
  expect(result.flags).toMatchObject([{ code: 'beats-put-in', figures: { added: 1 } }]);
});

test('without intervals there is nothing to name', () => {
  const statistics = {
    meanIntervalMs: null,
    sdIntervalMs: null,
    cv: null,
    rmssdMs: null,
    nrmssd: null,
    turningPointRatio: null,
    shannonEntropy: null,
  };
  const evidence = { of: 'pulse', intervals: [], statistics, beats: null } as const;
  expect(rhythm(evidence).rhythm).toBe('undecided');
});
