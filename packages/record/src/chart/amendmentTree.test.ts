import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import { anyHistory } from '../testing/history.js';
import { at, countContent, frame, idOf, kept } from '../testing/work.js';
import { type AmendedEntry, gatherAmendments } from './amendmentTree.js';

type Reason = NonNullable<EntryFrame['amends']>['reason'];

/** A pulse counted over a minute, recorded so many minutes after the start of the day. */
function pulse(id: number, n: number, minute: number, more: Partial<EntryFrame> = {}): StoredEntry {
  const content = countContent({ n, windowSeconds: 60 });
  return kept(frame('count', content, { id: idOf(id), sequence: id, ...more }), minute);
}

/** The same, in place of another. */
function instead(id: number, of: number, n: number, minute: number, agent = 9002): StoredEntry {
  const amends = { entry: idOf(of), reason: 'typing-slip' as Reason, text: null };
  return pulse(id, n, minute, { amends, agent: idOf(agent) });
}

function inError(id: number, of: number, minute: number, reason: Reason = 'wrong-person'): StoredEntry {
  const amends = { entry: idOf(of), reason, text: null };
  return kept(frame('entered-in-error', { note: null }, { id: idOf(id), sequence: id, amends }), minute);
}

const numbersOf = (entries: readonly StoredEntry[]) =>
  entries.map(({ id }) => Number.parseInt(id.slice(-4), 16));

/** The one story that some entries make. */
function storyOf(...entries: StoredEntry[]): AmendedEntry {
  const [story, ...others] = gatherAmendments(entries);
  if (story === undefined || others.length > 0) throw new Error('not one story');
  return story;
}

const SIGNED = pulse(1, 132, 0);

describe('how a value stands', () => {
  test('as it was signed', () => {
    expect(storyOf(SIGNED)).toEqual({
      original: SIGNED,
      current: [SIGNED],
      story: [SIGNED],
      standing: 'as-signed',
    });
  });

  test('amended: both are kept, with who and when (bedside handbook 8, C106; 7.3)', () => {
    // C106: corrected entry 132 -> 123, reason typing slip: both kept, status amended, who and when.
    const right = instead(2, 1, 123, 7, 9005);
    const { original, current, story, standing } = storyOf(right, SIGNED);
    expect(standing).toBe('amended');
    expect(story.map(({ content }) => content)).toMatchObject([
      { value: { perMinute: 132 } },
      { value: { perMinute: 123 } },
    ]);
    expect(original).toBe(SIGNED);
    expect(current).toEqual([right]);
    expect(current[0]).toMatchObject({
      agent: idOf(9005),
      recordedAt: at(7),
      amends: { entry: SIGNED.id, reason: 'typing-slip' },
    });
  });

  test('amended again: only the last stands', () => {
    const story = storyOf(instead(3, 2, 124, 9), SIGNED, instead(2, 1, 123, 7));
    expect(story.standing).toBe('amended');
    expect(numbersOf(story.story)).toEqual([1, 2, 3]);
    expect(numbersOf(story.current)).toEqual([3]);
  });

  test('contested, when two amended one entry: both stand and are shown (conventions 9)', () => {
    const story = storyOf(SIGNED, instead(2, 1, 123, 7, 9005), instead(3, 1, 122, 8, 9006));
    expect(story.standing).toBe('contested');
    expect(numbersOf(story.current)).toEqual([2, 3]);
  });

  test('contested, when one amended what another says is an error', () => {
    const story = storyOf(SIGNED, instead(2, 1, 123, 7), inError(3, 1, 8));
    expect(story.standing).toBe('contested');
    expect(numbersOf(story.current)).toEqual([2]);
  });

  test('no longer contested, once one of the two is withdrawn', () => {
    const story = storyOf(SIGNED, instead(2, 1, 123, 7), instead(3, 1, 122, 8), inError(4, 3, 9));
    expect(story.standing).toBe('amended');
    expect(numbersOf(story.current)).toEqual([2]);
  });

  test('entered in error: nothing stands, everything can be read', () => {
    const story = storyOf(SIGNED, instead(2, 1, 123, 7), inError(3, 2, 8));
    expect(story).toMatchObject({ standing: 'entered-in-error', current: [] });
    expect(numbersOf(story.story)).toEqual([1, 2, 3]);
  });

  test('entered in error by two who agree is no dispute', () => {
    expect(storyOf(SIGNED, inError(2, 1, 7), inError(3, 1, 8))).toMatchObject({
      standing: 'entered-in-error',
      current: [],
    });
  });
});

describe('a mark of error that was wrong', () => {
  test('is taken back by a value in its place: that stands, and everything can be read', () => {
    const story = storyOf(SIGNED, inError(2, 1, 7), instead(3, 2, 132, 8));
    expect(story.standing).toBe('amended');
    expect(numbersOf(story.current)).toEqual([3]);
    expect(numbersOf(story.story)).toEqual([1, 2, 3]);
  });

  test('can be made again', () => {
    const story = storyOf(SIGNED, inError(2, 1, 7), instead(3, 2, 132, 8), inError(4, 3, 9));
    expect(story).toMatchObject({ standing: 'entered-in-error', current: [] });
  });

  test('leaves a dispute where somebody else says so too', () => {
    const story = storyOf(SIGNED, inError(2, 1, 7), inError(3, 1, 8), instead(4, 2, 132, 9));
    expect(story.standing).toBe('contested');
    expect(numbersOf(story.current)).toEqual([4]);
  });
});

// A project decision: what a damaged or hostile record holds must not hold up whoever reads it.
describe('what it costs to read a story of thousands', () => {
  const ofMany = (length: number, amended: (at: number) => number) =>
    Array.from({ length }, (_, at) => (at === 0 ? SIGNED : instead(at + 1, amended(at), 60, at)));

  test.each([
    ['each amending the one before', ofMany(12_000, (at) => at)],
    ['all amending the first', ofMany(12_000, () => 1)],
    [
      'in one ring',
      ofMany(12_000, (at) => at).map((entry, at) => (at === 0 ? instead(1, 12_000, 60, 0) : entry)),
    ],
  ])('%s: read whole, within the patience of a test', (_, entries) => {
    const stories = gatherAmendments(entries);
    expect(stories.flatMap(({ story }) => story)).toHaveLength(12_000);
  });
});

describe('a story', () => {
  test('starts with the original, also when everything was recorded at one instant by two devices', () => {
    const original = pulse(1, 132, 5, { sequence: 900, device: idOf(701) });
    const amends = { entry: idOf(1), reason: 'typing-slip' as Reason, text: null };
    const right = pulse(2, 123, 5, { sequence: 3, device: idOf(702), amends });
    expect(numbersOf(storyOf(right, original).story)).toEqual([1, 2]);
  });

  test('goes by recording, across its branches', () => {
    const story = storyOf(SIGNED, instead(2, 1, 123, 7), instead(3, 1, 122, 12), instead(4, 2, 124, 9));
    expect(numbersOf(story.story)).toEqual([1, 2, 4, 3]);
  });

  test('goes by sequence where two were recorded at one instant', () => {
    const amends = { entry: idOf(1), reason: 'typing-slip' as Reason, text: null };
    const later = pulse(2, 123, 7, { sequence: 12, amends });
    const earlier = pulse(3, 122, 7, { sequence: 11, amends });
    expect(numbersOf(storyOf(SIGNED, later, earlier).story)).toEqual([1, 3, 2]);
  });

  test('begins with an amendment whose original is not there, so that nothing disappears', () => {
    const lone = instead(2, 77, 123, 7);
    expect(gatherAmendments([lone])).toMatchObject([{ original: lone, standing: 'as-signed' }]);
  });

  test('ends, and holds each once, when amendments name each other in a ring or themselves', () => {
    const ring = [
      instead(1, 3, 60, 1),
      instead(2, 1, 61, 2),
      instead(3, 2, 62, 3),
      instead(4, 2, 63, 4),
      instead(5, 5, 64, 5),
    ];
    const stories = gatherAmendments(ring).map(({ story }) => numbersOf(story));
    expect(stories).toEqual([[1], [2, 4], [3], [5]]);
  });

  test('holds every entry that was ever charted exactly once, each after what it amends', () => {
    fc.assert(
      fc.property(anyHistory, (entries) => {
        const stories = gatherAmendments(entries);
        expect(
          stories
            .flatMap(({ story }) => story)
            .map(({ id }) => id)
            .sort(),
        ).toEqual(entries.map(({ id }) => id).sort());
        for (const { original, story, current, standing } of stories) {
          expect(story[0]).toBe(original);
          story.slice(1).forEach((entry, index) => {
            const before = story.slice(0, index + 1).map(({ id }) => id);
            expect(before).toContain(entry.amends?.entry);
          });
          expect(current.every((entry) => story.includes(entry))).toBe(true);
          expect(current.length === 0).toBe(standing === 'entered-in-error');
        }
      }),
    );
  });
});
