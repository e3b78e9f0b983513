import {
  DEFAULT_DEFLATION_RULES,
  DEFAULT_RUN_RULES,
  runResult,
  UNKNOWN_RUN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { AT } from '../round/testing.js';
import {
  type Listening,
  lastTouchUndone,
  listened,
  listeningBroken,
  MOST_TOUCHES,
  markedAs,
  markedByOf,
  marksOf,
  nextToRead,
  readMarks,
  SAME_TOUCH_MS,
  stepped,
  takenOver,
  touched,
  touchesOf,
  withMark,
  withSecond,
  withWhat,
} from './marks.js';

const GAUGE = { stepMmHg: 2, topMmHg: 300 };
const AROUND = { pulsePerMinute: 72, lostMmHg: 130 };
const RULES = DEFAULT_DEFLATION_RULES;

const listening = (...touchesMs: number[]): Listening => ({
  at: 'listening',
  session: 's',
  measuredAt: AT(1),
  inflatedAt: { session: 's', atMs: 0 },
  touchesMs,
});

/** A run read back: the gauge of each mark in order. */
const readBack = (touchesMs: number[], ...gauge: string[]) =>
  gauge.reduce((back, typed, at) => withMark(back, at, { typed }), listened(listening(...touchesMs)));

test('a touch is kept by its time, one that bounced is not', () => {
  const once = touched(listening(), 1000);
  expect(once.touchesMs).toEqual([1000]);
  expect(touched(once, 1000 + SAME_TOUCH_MS - 1)).toBe(once);
  expect(touched(once, 1000 + SAME_TOUCH_MS).touchesMs).toEqual([1000, 1150]);
  expect(lastTouchUndone(touched(once, 5000)).touchesMs).toEqual([1000]);
  const full = listening(...Array.from({ length: MOST_TOUCHES }, (_, touch) => touch * 1000));
  expect(touched(full, 99_000)).toBe(full);
});

test('what the touches were of, by how many there are', () => {
  expect(marksOf(1)).toEqual(['first sound']);
  expect(marksOf(2)).toEqual(['first sound', 'last sound']);
  expect(marksOf(3)).toEqual(['peak', 'first sound', 'last sound']);
  expect(marksOf(4)).toEqual(['peak', 'first sound', 'muffled', 'last sound']);
  expect(marksOf(6)).toEqual(['peak', 'first sound', 'slip', 'slip', 'slip', 'last sound']);
});

test('where the opening of the valve is known no touch is of it', () => {
  expect(marksOf(1, true)).toEqual(['first sound']);
  expect(marksOf(2, true)).toEqual(['first sound', 'last sound']);
  expect(marksOf(3, true)).toEqual(['first sound', 'muffled', 'last sound']);
  expect(marksOf(4, true)).toEqual(['first sound', 'slip', 'slip', 'last sound']);
});

test('a pulse that came back while one listened is no sound, and is kept beside them', () => {
  const named = withWhat(readBack([0, 6000, 9000, 30_000], '', '148', '140', '92'), 2, 'pulse back');
  const { run } = readMarks(named, AROUND, RULES);
  expect(run?.palpated).toEqual({ lostMmHg: 130, backMmHg: 140 });
  expect(run?.moments.map(({ what }) => what)).toEqual(['first sound', 'last sound']);
  const wrong = readMarks(withMark(named, 2, { typed: '999' }), AROUND, RULES).wrong;
  expect([...(wrong ?? [])].map(([at, { code }]) => [at, code])).toEqual([[2, 'out-of-range']]);
});

test('times count from the first touch; a sound that was not touched has none', () => {
  expect(
    listened(listening(5000, 11_500, 36_004)).marks.map(({ what, atSeconds }) => [what, atSeconds]),
  ).toEqual([
    ['peak', 0],
    ['first sound', 6.5],
    ['last sound', 31.004],
  ]);
  expect(listened(listening(5000)).marks.map(({ what, atSeconds }) => [what, atSeconds])).toEqual([
    ['first sound', 0],
    ['last sound', null],
  ]);
});

test('a marked run is judged by its rates: 148 to 92 in 23 s is 2.43 mmHg a second', () => {
  // By hand: (162 - 148) / 6 = 2.333, (148 - 92) / 23 = 2.4348, per beat at 72 a minute 2.029.
  const { run } = readMarks(readBack([1000, 7000, 30_000], '162', '148', '92'), AROUND, RULES);
  if (run === null) throw new Error('148/92');
  const result = runResult(run, UNKNOWN_RUN_CIRCUMSTANCES, DEFAULT_RUN_RULES);
  expect(result).toMatchObject({ systolic: 148, diastolic: 92, marginMmHg: 32 });
  expect(result.earlyDeflationRateMmHgPerSecond).toBeCloseTo(2.333, 3);
  expect(result.deflationRateMmHgPerSecond).toBeCloseTo(2.4348, 4);
  expect(result.dropPerBeatMmHg).toBeCloseTo(2.029, 3);
  expect(result.flags).toEqual([]);
});

test('muffling makes three numbers; a slip and an unread opening of the valve make none', () => {
  const three = readMarks(readBack([0, 6000, 30_000, 52_000], '150', '118', '62', '0'), AROUND, RULES);
  expect(three.run?.moments.map(({ what, mmHg }) => [what, mmHg])).toEqual([
    ['first sound', 118],
    ['muffled', 62],
    ['last sound', 0],
  ]);
  const slip = withMark(readBack([0, 6000, 30_000, 31_000], '', '148', '', '92'), 2, { what: 'slip' });
  expect(readMarks(slip, AROUND, RULES).run).toMatchObject({ peak: null, moments: { length: 2 } });
});

test('what is wrong stands beside the mark that it is wrong with', () => {
  const wrongWith = (...given: Parameters<typeof readBack>) => {
    const { wrong } = readMarks(readBack(...given), AROUND, RULES);
    return [...(wrong ?? [])].map(([at, { code }]) => `${at} ${code}`);
  };
  expect(wrongWith([0, 6000, 30_000], '160', '148', '')).toEqual(['2 missing']);
  expect(wrongWith([0, 6000, 30_000], '160', '92', '148')).toEqual(['2 not-below-systolic']);
  expect(wrongWith([0, 6000, 30_000], '140', '148', '92')).toEqual(['1 out-of-order']);
  expect(wrongWith([0, 6000, 30_000], '301', '148', '92')).toEqual(['0 out-of-range']);
  expect(wrongWith([0, 6000, 30_000], '300', '148', '92')).toEqual([]);
});

test('a screen that was left leaves the numbers to be kept, and no time', () => {
  const broken = listeningBroken(listening(0, 6000));
  expect(broken.areTimesVoid).toBe(true);
  const typed = withMark(withMark(broken, 0, { typed: '148' }), 1, { typed: '92' });
  const { run } = readMarks(typed, AROUND, RULES);
  expect(run?.moments.map(({ mmHg, atSeconds }) => [mmHg, atSeconds])).toEqual([
    [148, null],
    [92, null],
  ]);
});

test('the gauge asks for the sounds in order, the opening of the valve never', () => {
  const blank = listened(listening(0, 6000, 30_000));
  expect(blank.chosen).toBe(1);
  expect(nextToRead(blank)).toBe(2);
  expect(nextToRead({ ...withMark(blank, 1, { typed: '148' }), chosen: 2 })).toBeNull();
  expect(nextToRead({ ...withMark(blank, 2, { typed: '92' }), chosen: 2 })).toBe(1);
});

test('a step is one mark of the graduation, from the moment before where nothing was read yet, and stays on the scale', () => {
  const back = readBack([0, 6000, 30_000], '', '148');
  expect(stepped(back, 1, GAUGE)).toBe(150);
  expect(stepped({ ...back, chosen: 2 }, -1, GAUGE)).toBe(146);
  expect(stepped({ ...back, chosen: 0 }, 1, GAUGE)).toBe(2);
  expect(stepped({ ...back, chosen: 0 }, -1, GAUGE)).toBe(0);
  expect(stepped(withMark(back, 1, { typed: '300' }), 1, GAUGE)).toBe(300);
  expect(stepped(withMark(back, 1, { typed: '147' }), 1, GAUGE)).toBe(150);
});

test('a touch that was of something else leaves a place for the sound that it was not of', () => {
  const two = listened(listening(0, 6000));
  const opened = withWhat(withWhat(two, 0, 'peak'), 2, 'first sound');
  expect(opened.marks.map(({ what, atSeconds }) => [what, atSeconds])).toEqual([
    ['peak', 0],
    ['first sound', 6],
    ['last sound', null],
  ]);
  const back = withWhat(withWhat(opened, 0, 'first sound'), 1, 'last sound');
  expect(back.marks).toEqual(two.marks);
});

describe('a second person marks on another device', () => {
  const waiting: Listening = {
    ...listening(),
    inflatedAt: { session: 's', atMs: 1000 },
    second: { touches: [], takenOverAtMs: null },
  };
  const told = (...atMs: number[]) => atMs.map((at) => ({ id: `t${at}`, atMs: at, withinMs: 8.04 }));
  const read = (run: Listening, ...gauge: string[]) =>
    gauge.reduce((back, typed, at) => withMark(back, at, { typed }), listened(run));

  test('each touch counts once, however often it is told', () => {
    const once = withSecond(waiting, told(5000, 11_000));
    expect(withSecond(once, told(5000, 11_000))).toBe(once);
    expect(touchesOf(withSecond(once, told(5000, 11_000, 33_000)))).toHaveLength(3);
    // Taken back there, it is taken back here.
    expect(touchesOf(withSecond(once, told(5000)))).toHaveLength(1);
  });

  test('a touch from before this cuff went up is not of this run, within what the clocks allow', () => {
    // 1000 ms less 8.04 ms of uncertainty is 991.96.
    expect(touchesOf(withSecond(waiting, told(991.9)))).toEqual([]);
    expect(touchesOf(withSecond(waiting, told(992)))).toHaveLength(1);
  });

  test('where nobody was asked to mark, nothing that is told is taken', () => {
    expect(withSecond(listening(), told(5000))).toEqual(listening());
  });

  test('no run has more touches than so many, on both devices together', () => {
    const all = Array.from({ length: MOST_TOUCHES }, (_, at) => (at + 2) * 1000);
    const full = withSecond(waiting, told(...all));
    expect(touchesOf(full)).toHaveLength(MOST_TOUCHES);
    expect(touched(full, 99_000)).toBe(full);
    const own = touched(waiting, 50_000);
    expect(touchesOf(withSecond(own, told(...all)))).toHaveLength(MOST_TOUCHES);
  });

  test('the run says who marked each time, and how far the clocks agree', () => {
    const back = read(withSecond(waiting, told(5000, 11_000, 34_000)), '162', '148', '92');
    const { run } = readMarks(back, AROUND, RULES);
    if (run === null) throw new Error('148/92');
    // Differences of one device's own time stamps: the clocks take nothing from them.
    expect([run.peak?.atSeconds, ...run.moments.map(({ atSeconds }) => atSeconds)]).toEqual([0, 6, 29]);
    expect(markedByOf(markedAs(back), run)).toEqual({
      peak: 'second-person',
      moments: ['second-person', 'second-person'],
      clocksWithinMs: 8,
    });
  });

  test('taken over, what was marked there stays, what is marked there later does not come', () => {
    const over = touched(takenOver(withSecond(waiting, told(5000, 11_000)), 20_000), 34_000);
    const late = withSecond(over, told(5000, 11_000, 20_000, 20_001));
    expect(touchesOf(late).map(({ atMs, by }) => [atMs, by])).toEqual([
      [5000, 'second-person'],
      [11_000, 'second-person'],
      [20_000, 'second-person'],
      [34_000, 'observer'],
    ]);
    const back = read(over, '', '148', '92');
    const { run } = readMarks(back, AROUND, RULES);
    if (run === null) throw new Error('148/92');
    // An opening of the valve that was not read is no peak, and nobody's.
    expect(markedByOf(back, run)).toMatchObject({ peak: null, moments: ['second-person', 'observer'] });
    expect(takenOver(over, 40_000)).toBe(over);
  });

  test('nothing is said of a run that one device marked alone, nor of one whose times are void', () => {
    const alone = readBack([1000, 7000, 30_000], '162', '148', '92');
    const { run } = readMarks(alone, AROUND, RULES);
    if (run === null) throw new Error('148/92');
    expect(markedByOf(alone, run)).toBeNull();
    const broken = listeningBroken(withSecond(waiting, told(5000)));
    expect('clocksWithinMs' in broken).toBe(false);
    // Somebody marked there, but a slip.
    const slip = withMark(read(withSecond(touched(waiting, 9000), told(5000)), '148', '92'), 0, {
      what: 'slip',
    });
    const after = readMarks(withMark(slip, 1, { what: 'first sound', typed: '148' }), AROUND, RULES);
    expect(after.run === null ? null : markedByOf(slip, after.run)).toBeNull();
  });
});
