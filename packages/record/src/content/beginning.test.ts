import { describe, expect, test } from 'vitest';
import { readEntry } from '../entry/readEntry.js';
import { countContent, frame, idOf, placesOf, signingContent } from '../testing/work.js';

const PULSE = frame('count', countContent({ n: 36, windowSeconds: 30 }), { id: idOf(2), sequence: 2 });
const CONTENT = signingContent([{ sign: 'pulse', entries: [idOf(2)] }], [PULSE]);
const read = (more: object, schema = 4) => readEntry(frame('round', { ...CONTENT, ...more }, { schema }));
const placesIn = (more: object) => placesOf(read(more));

const BEGUN = {
  identifiers: ['name', 'birth-date'],
  consent: 'agreed',
  chaperone: 'not-needed',
  interpreter: 'not-needed',
  who: null,
};
const REST = { seconds: 300, neededSeconds: 300, skipped: null };

test('a round keeps how it began and how long the person rested', () => {
  expect(CONTENT).toMatchObject({ begun: null, rest: null });
  expect(placesIn({ begun: BEGUN, rest: REST })).toEqual([]);
  const skipped = { ...REST, seconds: 40, skipped: { reason: 'urgent', text: null } };
  expect(placesIn({ begun: { ...BEGUN, chaperone: 'present', who: 'Sister Amadi' }, rest: skipped })).toEqual(
    [],
  );
});

test('what is no such beginning is refused where it is wrong', () => {
  expect(placesIn({ begun: { ...BEGUN, identifiers: ['room'] } })).toEqual(['/content/begun/identifiers/0']);
  expect(placesIn({ begun: { ...BEGUN, identifiers: ['name', 'name'] } })).toEqual([
    '/content/begun/identifiers',
  ]);
  expect(placesIn({ begun: { ...BEGUN, consent: 'implied' } })).toEqual(['/content/begun/consent']);
  expect(placesIn({ begun: { ...BEGUN, who: ' ' } })).toEqual(['/content/begun/who']);
});

test('another reason for not waiting needs its words', () => {
  const skipped = (reason: string, text: string | null) =>
    placesIn({ rest: { ...REST, skipped: { reason, text } } });
  expect(skipped('other', null)).toEqual(['/content/rest/skipped/text']);
  expect(skipped('other', 'bus leaves')).toEqual([]);
  expect(skipped('no-time', null)).toEqual([]);
  expect(placesIn({ rest: { ...REST, seconds: -1 } })).toEqual(['/content/rest/seconds']);
});

describe('a round of an older schema', () => {
  test('is read as it was written, with nothing of either', () => {
    const { isCuffAsked: _cuff, ...third } = CONTENT;
    const before = readEntry(frame('round', { ...third, begun: BEGUN, rest: REST }, { schema: 3 }));
    expect(before.ok && before.value.content).toMatchObject({ begun: BEGUN, rest: REST, isCuffAsked: null });
    const { begun: _begun, rest: _rest, ...older } = third;
    const entry = readEntry(frame('round', older, { schema: 2 }));
    expect(entry.ok && entry.value.content).toMatchObject({
      begun: null,
      rest: null,
      isCuffAsked: null,
      signs: CONTENT.signs,
    });
    const { status, signs, protocolVersion, note } = CONTENT;
    const first = readEntry(frame('round', { status, signs, protocolVersion, note }, { schema: 1 }));
    expect(first.ok && first.value.content).toMatchObject({ begun: null, rest: null, evidence: null });
  });

  test('does not carry what it never had', () => {
    expect(placesOf(read({ begun: BEGUN }, 2))).not.toEqual([]);
    expect(placesOf(read({ isCuffAsked: true }, 3))).toEqual(['/content/isCuffAsked']);
  });
});
