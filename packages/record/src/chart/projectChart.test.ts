import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import { anyHistory, anyHistoryTwice } from '../testing/history.js';
import { at, countContent, frame, idOf, kept, roundContent } from '../testing/work.js';
import { type Chart, projectChart } from './projectChart.js';

const [MORNING, EVENING] = [idOf(501), idOf(502)];

function pulse(id: number, minute: number, more: Partial<EntryFrame> = {}): StoredEntry {
  const measuredAt = { at: at(minute), zone: 'UTC', asEntered: null };
  const content = countContent({ n: 19, windowSeconds: 15 });
  return kept(frame('count', content, { id: idOf(id), sequence: id, measuredAt, ...more }), minute);
}

function signing(id: number, minute: number, round: string, more: Partial<EntryFrame> = {}): StoredEntry {
  const measuredAt = { at: at(minute), zone: 'UTC', asEntered: null };
  const content = roundContent(idOf(1));
  return kept(frame('round', content, { id: idOf(id), sequence: id, measuredAt, round, ...more }), minute);
}

/** Every entry that a chart shows somewhere, by id. */
function shown({ rounds }: Chart): string[] {
  return rounds
    .flatMap(({ signed, signedAgain, values }) => [
      ...(signed === null ? [] : [signed]),
      ...signedAgain,
      ...values,
    ])
    .flatMap(({ story }) => story.map(({ id }) => id))
    .sort();
}

describe('a chart', () => {
  test('has the newest round first, each with its signing and its values in the order of the work', () => {
    const entries = [
      pulse(1, 0, { round: MORNING }),
      pulse(2, 1, { round: MORNING }),
      signing(3, 2, MORNING),
      pulse(4, 600, { round: EVENING }),
      signing(5, 601, EVENING),
    ];
    const chart = projectChart(entries.toReversed());
    expect(chart.entries).toBe(5);
    expect(chart.rounds).toMatchObject([
      { id: EVENING, signed: { original: entries[4] }, signedAgain: [], values: [{ original: entries[3] }] },
      {
        id: MORNING,
        signed: { original: entries[2] },
        values: [{ original: entries[0] }, { original: entries[1] }],
      },
    ]);
  });

  test('has a round for values that came without a signing, and for a value of no round', () => {
    const chart = projectChart([pulse(1, 0, { round: MORNING }), pulse(2, 5)]);
    expect(chart.rounds.map(({ id, signed, values }) => [id, signed, values.length])).toEqual([
      [idOf(2), null, 1],
      [MORNING, null, 1],
    ]);
  });

  test('keeps both signings when two devices signed one round', () => {
    const [first, second] = [signing(1, 0, MORNING), signing(2, 1, MORNING, { device: idOf(702) })];
    expect(projectChart([second, first]).rounds).toMatchObject([
      { signed: { original: first }, signedAgain: [{ original: second }] },
    ]);
  });

  const preliminary = (id: number, minute: number, more: Partial<EntryFrame> = {}) =>
    signing(id, minute, MORNING, { content: { ...roundContent(idOf(1)), status: 'preliminary' }, ...more });
  const gone = (id: number, of: number) =>
    kept(
      frame(
        'entered-in-error',
        { note: null },
        {
          id: idOf(id),
          sequence: id,
          amends: { entry: idOf(of), reason: 'wrong-person', text: null },
        },
      ),
      id,
    );
  const [one, two] = [pulse(1, 0, { round: MORNING }), pulse(2, 1, { round: MORNING })];

  test('says which values no signing names, and what is preliminary', () => {
    const final = signing(3, 2, MORNING);
    expect(projectChart([one, two, final]).rounds).toMatchObject([
      { unsigned: [idOf(2)], isPreliminary: false, isInError: false },
    ]);
    expect(projectChart([one, preliminary(3, 2)]).rounds).toMatchObject([
      { unsigned: [], isPreliminary: true },
    ]);
    expect(projectChart([one]).rounds).toMatchObject([{ unsigned: [idOf(1)], isPreliminary: false }]);
  });

  test('shows the values of a round entered in error as entered in error, each still to be read', () => {
    const [round] = projectChart([one, signing(3, 2, MORNING), gone(4, 3)]).rounds;
    expect(round).toMatchObject({
      isInError: true,
      values: [{ original: one, current: [], standing: 'entered-in-error', story: [one] }],
    });
  });

  test('keeps a round that one of two signings still stands for', () => {
    const again = preliminary(5, 3, { device: idOf(702) });
    const [round] = projectChart([one, signing(3, 2, MORNING), gone(4, 3), again]).rounds;
    expect(round).toMatchObject({ isInError: false, isPreliminary: true, unsigned: [] });
    expect(round?.values).toMatchObject([{ standing: 'as-signed' }]);
  });

  test('puts an amendment where its original stands, whatever round it names', () => {
    const amends = { entry: idOf(1), reason: 'typing-slip' as const, text: null };
    const chart = projectChart([pulse(1, 0, { round: MORNING }), pulse(2, 900, { round: EVENING, amends })]);
    expect(chart.rounds).toMatchObject([{ id: MORNING, values: [{ standing: 'amended' }] }]);
  });

  test('leaves out what is no value, and counts it', () => {
    const person = kept(frame('person', { identifiers: ['name', 'number'] }));
    expect(projectChart([person])).toEqual({ rounds: [], reported: [], entries: 1 });
    expect(projectChart([])).toEqual({ rounds: [], reported: [], entries: 0 });
  });

  test('has no part in a fact of the person, nor in the mark that it was an error', () => {
    const content = { about: { fact: 'tremor' }, from: '2026-03-01', until: null, text: null };
    const fact = kept(frame('fact', content, { id: idOf(9), sequence: 9, round: null }), 3);
    const amends = { entry: idOf(9), reason: 'typing-slip' as const, text: null };
    const mark = frame(
      'entered-in-error',
      { note: null },
      { id: idOf(10), sequence: 10, round: null, amends },
    );
    const round = [pulse(1, 0, { round: MORNING }), signing(2, 1, MORNING)];
    expect(projectChart([...round, fact, kept(mark, 4)]).rounds).toEqual(projectChart(round).rounds);
    // A mark of something that is not here is still shown: nothing disappears.
    expect(projectChart([...round, kept(mark, 4)]).rounds).toHaveLength(2);
  });

  test('is the same for any order in which its entries come', () => {
    fc.assert(
      fc.property(anyHistoryTwice, ([entries, shuffled]) => {
        expect(projectChart(shuffled)).toEqual(projectChart(entries));
      }),
    );
  });

  test('shows every entry that was ever charted exactly once', () => {
    fc.assert(
      fc.property(anyHistory, (entries) => {
        expect(shown(projectChart(entries))).toEqual(entries.map(({ id }) => id).sort());
      }),
    );
  });

  test('has rounds whose beginnings never rise on the way down', () => {
    fc.assert(
      fc.property(anyHistory, (entries) => {
        const begun = projectChart(entries).rounds.map(({ id }) =>
          Math.min(
            ...entries
              .filter((entry) => (entry.round ?? entry.id) === id)
              .map((entry) => Date.parse(entry.measuredAt.at)),
          ),
        );
        expect(begun).toEqual(begun.toSorted((a, b) => b - a));
      }),
    );
  });
});
