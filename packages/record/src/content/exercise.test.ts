import { bladderFor, PROPER, SCENARIOS, SOUND_INSTRUMENT } from '@evenfall/physiology';
import { debrief, demonstrate, GOOD_OBSERVER } from '@evenfall/practice';
import { describe, expect, test } from 'vitest';
import type { EntryFrame } from '../entry/entry.js';
import { readEntry } from '../entry/readEntry.js';
import { frame, idOf, placesOf } from '../testing/work.js';

// Source: docs/conventions.md section 9 (books never mix; evidence keeps what was done).
const AIDS = { hasHearingAid: false, isAmplified: false, isLoudspeakerVoice: false, hadSound: true };
const [scenario] = SCENARIOS;
if (scenario === undefined) throw new Error('no scenario');
const shown = demonstrate(GOOD_OBSERVER, scenario, 7, PROPER, {
  ...SOUND_INSTRUMENT,
  bladder: bladderFor(scenario.armCm),
});
const content = { ...JSON.parse(JSON.stringify(shown)), aids: AIDS, judgedBy: { presetVersion: null } };
const EXERCISE = frame('exercise', content, { book: 'simulated', person: null, round: null });
const placesIn = (entry: object) => placesOf(readEntry(entry));
const withContent = (more: object) => placesIn({ ...EXERCISE, content: { ...content, ...more } });

test('an exercise is read as it was done, and what came of it is the same as before', () => {
  const read = readEntry(EXERCISE);
  if (!read.ok || read.value.kind !== 'exercise') throw new Error(JSON.stringify(read));
  expect(read.value.content).toEqual(content);
  expect(debrief(read.value.content).reference).toEqual(debrief(shown).reference);
});

// Source: docs/conventions.md section 9 (a reader accepts every older schema number; the value names its protocol version).
describe('what was kept before several readings and the protocol were', () => {
  const { earlier: _, judgedBy: __, ...older } = content;
  const first = { ...EXERCISE, schema: 1, content: { ...older, schema: 1 } };

  test('is read as one of one reading, of no known protocol, and played again as it was', () => {
    const read = readEntry(first);
    if (!read.ok || read.value.kind !== 'exercise') throw new Error(JSON.stringify(read));
    expect(read.value.content).toEqual({ ...content, earlier: [], judgedBy: null });
    expect(debrief(read.value.content)).toEqual(debrief(shown));
  });

  test.each([2, 3])('one of number %i is the same under the newest', (schema) => {
    const older = { ...EXERCISE, schema, content: { ...content, schema } };
    const read = readEntry(older);
    if (!read.ok || read.value.kind !== 'exercise') throw new Error(JSON.stringify(read));
    expect(read.value.content).toEqual({ ...content, schema: 4 });
    expect(placesIn({ ...older, schema: 4 })).toEqual(['/content/schema']);
    expect(placesIn({ ...EXERCISE, schema })).toEqual(['/content/schema']);
  });

  test('is not what is kept now, nor the other way round', () => {
    expect(placesIn({ ...first, schema: 2 })).toEqual(
      expect.arrayContaining(['/content/schema', '/content/judgedBy']),
    );
    expect(placesIn({ ...EXERCISE, schema: 1 })).not.toEqual([]);
    expect(placesIn({ ...first, content: { ...older, schema: 1, earlier: [] } })).toEqual([
      '/content/earlier',
    ]);
  });
});

test('the protocol that it is judged by is named by its hash, or none was chosen', () => {
  expect(withContent({ judgedBy: { presetVersion: 'ab'.repeat(32) } })).toEqual([]);
  expect(withContent({ judgedBy: { presetVersion: 'mine' } })).toEqual(['/content/judgedBy/presetVersion']);
  expect(withContent({ judgedBy: null })).toEqual(['/content/judgedBy']);
});

describe('nothing of it stands in a chart', () => {
  test.each([
    ['in the book of charts', { book: 'care' }, ['/book']],
    ['in the book of a class', { book: 'class' }, ['/book']],
    ['about a person', { person: idOf(9) }, ['/person']],
    ['in a round', { round: idOf(9) }, ['/round']],
    ['of a session', { session: idOf(9) }, ['/session']],
    ['over another entry', { amends: { entry: idOf(8), reason: 'typing-slip', text: null } }, ['/amends']],
  ] satisfies [string, Partial<Record<keyof EntryFrame, unknown>>, string[]][])(
    '%s it is refused',
    (_, more, places) => expect(placesIn({ ...EXERCISE, ...more })).toEqual(places),
  );
});

test('movements stand in their order, and a valve turns no further than it can', () => {
  const shut = { tick: 10, kind: 'valve', degrees: 0 };
  const open = (degrees: number, tick = 10) => ({ tick, kind: 'valve', degrees });
  expect(withContent({ actions: [shut, open(120)] })).toEqual([]);
  expect(withContent({ actions: [shut, open(120.1)] })).toEqual(['/content/actions/1/degrees']);
  expect(withContent({ actions: [shut, open(-0.1)] })).toEqual(['/content/actions/1/degrees']);
  expect(withContent({ actions: [shut, open(5, 9)] })).toEqual(['/content/actions/1/tick']);
  expect(withContent({ actions: [{ tick: 1, kind: 'squeeze', share: 1 }] })).toEqual([]);
  expect(withContent({ actions: [{ tick: 1, kind: 'squeeze', share: 1.01 }] })).toEqual([
    '/content/actions/0/share',
  ]);
});

test('a scenario that no simulated person can have is refused by its field', () => {
  expect(withContent({ scenario: { ...scenario, systolic: 261 } })).toContain('/content/scenario/systolic');
  expect(withContent({ scenario: { ...scenario, systolic: 260, gap: null } })).toEqual([]);
  expect(withContent({ scenario: null })).not.toEqual([]);
});

test('a visit is kept up to twenty minutes, and its seed as it was', () => {
  expect(withContent({ seconds: 1200 })).toEqual([]);
  expect(withContent({ seconds: 1200.1 })).toEqual(['/content/seconds']);
  expect(withContent({ seed: 4294967295 })).toEqual([]);
  expect(withContent({ seed: 4294967296 })).toEqual(['/content/seed']);
});
