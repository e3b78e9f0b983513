import { expect, test } from 'vitest';
import { MOST_TOUCHES, SAME_TOUCH_MS } from '../pressure/marks.js';
import { lastMarkUndone, marked, type OwnMarks, shelvedMarks, shelveMarks, withRun } from './ownMarks.js';

const NOTHING: OwnMarks = { code: 'ABCDEF', marker: 'm', version: 0, marks: [], runAtMs: null };
const CLOCK = { offsetMs: 1_000_000, withinMs: 6 };

function memory() {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  };
}

test('a touch is kept with its own time stamp and the clock of its moment; one that bounced is not', () => {
  const once = marked(NOTHING, 'a', 5000, CLOCK);
  expect(once).toMatchObject({
    version: 1,
    marks: [{ id: 'a', atMs: 5000, offsetMs: 1_000_000, withinMs: 6 }],
  });
  expect(marked(once, 'b', 5000 + SAME_TOUCH_MS - 1, CLOCK)).toBe(once);
  expect(marked(once, 'b', 5000 + SAME_TOUCH_MS, CLOCK).marks).toHaveLength(2);
});

test('after the page was loaded again its time stamps begin anew, and marking goes on', () => {
  const once = marked(NOTHING, 'a', 60_000, CLOCK);
  // Two seconds later by the clock of the place, 500 ms after loading by the page's own.
  const again = { offsetMs: 1_061_500, withinMs: 3 };
  expect(marked(once, 'b', 500, again).marks.map(({ id }) => id)).toEqual(['a', 'b']);
});

test('no run has more touches than so many', () => {
  const marks = Array.from({ length: MOST_TOUCHES }, (_, at) => ({ id: `${at}`, atMs: at * 1000, ...CLOCK }));
  const full = { ...NOTHING, marks };
  expect(marked(full, 'x', 99_000, CLOCK)).toBe(full);
  const room = { ...NOTHING, marks: marks.slice(1) };
  expect(marked(room, 'x', 99_000, CLOCK).marks).toHaveLength(MOST_TOUCHES);
});

test('what was touched before the cuff went up is not of the run, and with the run its touches are over', () => {
  const twice = marked(marked(NOTHING, 'a', 5000, CLOCK), 'b', 9000, CLOCK);
  // 5000 + 1,000,000 + 6 of uncertainty is 1,005,006 by the clock of the place.
  expect(withRun(twice, 1_005_006.1).marks.map(({ id }) => id)).toEqual(['b']);
  expect(withRun(twice, 1_005_006).marks.map(({ id }) => id)).toEqual(['a', 'b']);
  const begun = withRun(twice, 1_008_000);
  expect(begun).toMatchObject({ runAtMs: 1_008_000, version: 3 });
  expect(withRun(begun, 1_008_000)).toBe(begun);
  expect(withRun(begun, null)).toMatchObject({ runAtMs: null, marks: [], version: 4 });
});

test('taking one back is a change that is sent too', () => {
  const once = marked(NOTHING, 'a', 5000, CLOCK);
  expect(lastMarkUndone(once)).toMatchObject({ version: 2, marks: [] });
  expect(lastMarkUndone(NOTHING)).toBe(NOTHING);
});

test('the tab keeps them over a reload, and forgets them when it is told', () => {
  const shelf = memory();
  const once = marked(NOTHING, 'a', 5000, CLOCK);
  shelveMarks(shelf, once);
  expect(shelvedMarks(shelf)).toEqual(once);
  shelveMarks(shelf, null);
  expect(shelvedMarks(shelf)).toBeNull();
  shelf.setItem('evenfall.marks', '{"marks":');
  expect(shelvedMarks(shelf)).toBeNull();
  expect(shelvedMarks(null)).toBeNull();
});
