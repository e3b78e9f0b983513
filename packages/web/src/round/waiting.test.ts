import { expect, test } from 'vitest';
import { freshKept, type Kept, type WaitingRound } from '../store/kept.js';
import { begun, complete, DEVICE, ID, PERSON } from './testing.js';
import {
  afterSending,
  closed,
  closingGivenUp,
  closingOf,
  exerciseGivenUp,
  isWorthRepeating,
  pauseMs,
  signed,
  takenBack,
  toSend,
  unsentOf,
} from './waiting.js';

const round = (id: number): WaitingRound => ({
  round: ID(id),
  person: PERSON,
  entries: [],
  draft: complete(),
  tries: 0,
  refused: null,
});
const holding = (...waiting: WaitingRound[]): Kept => ({ ...freshKept(DEVICE), waiting });

test('a signed round leaves the drafts and waits', () => {
  const kept: Kept = { ...freshKept(DEVICE), drafts: { [PERSON]: complete(), [ID(9)]: begun() } };
  const after = signed(kept, round(50));
  expect(Object.keys(after.drafts)).toEqual([ID(9)]);
  expect(after.waiting.map((one) => one.round)).toEqual([ID(50)]);
});

test('a taken round leaves the device; an unanswered one stays, to be sent again', () => {
  const kept = holding(round(50), round(51));
  expect(afterSending(kept, ID(50), { is: 'taken' }).waiting.map((one) => one.round)).toEqual([ID(51)]);
  const after = afterSending(kept, ID(50), { is: 'unanswered' });
  expect(after.waiting[0]).toMatchObject({ tries: 1, refused: null });
  expect(toSend(after)).toHaveLength(2);
});

test('a refused round is not sent again by itself, and can be put right', () => {
  const after = afterSending(holding(round(50)), ID(50), { is: 'refused', why: 'no such person' });
  expect(toSend(after)).toEqual([]);
  const back = takenBack(after, ID(50));
  expect(back.waiting).toEqual([]);
  expect(back.drafts[PERSON]).toEqual(complete());
});

test('a round is never taken back over another one that was begun', () => {
  const refused = afterSending(holding(round(50)), ID(50), { is: 'refused', why: 'x' });
  const busy: Kept = { ...refused, drafts: { [PERSON]: begun() } };
  expect(takenBack(busy, ID(50))).toBe(busy);
});

test('a signed series leaves its form and waits; a refused one goes back into it, to be signed under another id', () => {
  const was = { fields: { pasted: '142/88' }, adds: ID(60), entry: null };
  const form = { name: `away ${PERSON}`, was };
  const series = { ...round(60), draft: null, form };
  const kept: Kept = {
    ...freshKept(DEVICE),
    forms: { [form.name]: was, other: was },
    drafts: { [PERSON]: begun() },
  };
  const after = signed(kept, series);
  expect([Object.keys(after.forms), Object.keys(after.drafts)]).toEqual([['other'], [PERSON]]);
  const refused = afterSending(after, ID(60), { is: 'refused', why: 'x' });
  const back = takenBack(refused, ID(60));
  expect(back.waiting).toEqual([]);
  expect(back.forms[form.name]).toEqual({ ...was, adds: null });
  // Not over another one that was begun in the same form.
  const busy: Kept = { ...refused, forms: { [form.name]: was } };
  expect(takenBack(busy, ID(60))).toBe(busy);
});

test('a round that the server may have is never taken back', () => {
  const unanswered = afterSending(holding(round(50)), ID(50), { is: 'unanswered' });
  expect(takenBack(unanswered, ID(50))).toBe(unanswered);
});

// RFC 9110: 408, 429 and the server's own failures say nothing against what was sent.
test.each([
  [0, true],
  [408, true],
  [429, true],
  [500, true],
  [503, true],
  [400, false],
  [404, false],
  [409, false],
  [422, false],
])('a status of %d is worth sending again: %s', (status, worth) => {
  expect(isWorthRepeating(status)).toBe(worth);
});

test('pauses grow to a minute, and there is none with nothing to send', () => {
  const after = (tries: number) => pauseMs(holding({ ...round(50), tries }));
  expect([1, 2, 3, 5, 6, 40].map(after)).toEqual([2_000, 4_000, 8_000, 32_000, 60_000, 60_000]);
  // One behind it that was not tried makes the pause no shorter.
  expect(pauseMs(holding({ ...round(50), tries: 3 }, round(51)))).toBe(8_000);
  expect(pauseMs(holding(round(50)))).toBe(2_000);
  expect(pauseMs(holding())).toBeNull();
  expect(pauseMs(holding({ ...round(50), refused: 'x' }))).toBeNull();
});

// Design: what was acknowledged is not lost, and each entry is in the record exactly once.
test('an act-now that was closed without an answer waits once, under its own id, until it is taken', () => {
  const entry = { id: ID(70), person: PERSON, round: ID(50), kind: 'act-now-closed' } as never;
  const once = closed(holding(round(51)), entry);
  expect(closed(once, entry)).toBe(once);
  expect(toSend(once).map((one) => one.round)).toEqual([ID(51), ID(70)]);
  expect(closingOf(once, ID(50))?.entries).toEqual([entry]);
  expect(closingOf(once, ID(51))).toBeUndefined();
  expect(pauseMs(once)).not.toBeNull();
  const unanswered = afterSending(once, ID(70), { is: 'unanswered' });
  expect(closingOf(unanswered, ID(50))?.entries).toEqual([entry]);
  expect(closingOf(afterSending(once, ID(70), { is: 'taken' }), ID(50))).toBeUndefined();
});

test('one that was refused is said anew, never taken back to a round; before an answer it is not given up', () => {
  const entry = { id: ID(70), person: PERSON, round: ID(50), kind: 'act-now-closed' } as never;
  const once = closed(holding(), entry);
  expect(closingGivenUp(once, ID(70))).toEqual(once);
  const refused = afterSending(once, ID(70), { is: 'refused', why: 'no such condition' });
  expect(takenBack(refused, ID(70))).toBe(refused);
  // It waits for nothing: the alert stands open with its form.
  expect(closingOf(refused, ID(50))).toBeUndefined();
  expect(closingGivenUp(refused, ID(70)).waiting).toEqual([]);
});

test('an exercise that is over waits like a round, and takes no draft of anybody with it', () => {
  const exercise: WaitingRound = { ...round(54), person: null, draft: null };
  const kept: Kept = { ...freshKept(DEVICE), drafts: { [PERSON]: begun() } };
  const after = signed(kept, exercise);
  expect(after.drafts).toEqual(kept.drafts);
  expect(toSend(after)).toEqual([exercise]);
  expect(exerciseGivenUp(after, ID(54))).toEqual(after);
  const refused = afterSending(after, ID(54), { is: 'refused', why: 'no such agent' });
  expect(takenBack(refused, ID(54))).toBe(refused);
  expect(exerciseGivenUp(refused, ID(54)).waiting).toEqual([]);
});

test('all that waits is counted once one went unanswered, also what was not tried behind it; what was refused is not', () => {
  const series: WaitingRound = {
    ...round(51),
    draft: null,
    form: { name: 'away', was: { fields: {}, adds: null, entry: null } },
  };
  const closing: WaitingRound = { ...round(52), draft: null };
  const exercise: WaitingRound = { ...round(54), person: null, draft: null };
  expect(unsentOf([])).toBeNull();
  expect(unsentOf([round(50), series])).toBeNull();
  expect(
    unsentOf([{ ...series, tries: 1 }, round(50), closing, exercise, { ...round(53), refused: 'no' }]),
  ).toEqual({
    rounds: 1,
    series: 1,
    closings: 1,
    exercises: 1,
  });
  expect(unsentOf([{ ...round(50), tries: 1, refused: 'no' }])).toBeNull();
});
