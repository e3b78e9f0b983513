import { DEFAULT_CUFF_RULES, NEVER_FACTS } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { frame, idOf, kept, runContent } from '../testing/work.js';
import { chartedArm } from './chartedArm.js';

const REASON = { by: 'Dr Ines Abara (invented)', reason: 'the other arm is in a cast' };
const DAY = '2026-11-25';

function fact(id: number, name: string, more: { from?: string; until?: string | null } = {}) {
  const about = { fact: name, side: 'left' };
  const content = { about, from: '2020-01-01', until: null, note: null, ...more };
  return kept(frame('fact', content, { id: idOf(id), sequence: id }), id);
}
function run(place: object) {
  const moments = [
    { what: 'first sound', mmHg: 148 },
    { what: 'last sound', mmHg: 92 },
  ];
  const content = runContent({ method: 'auscultation', moments });
  const { evidence } = content as { evidence: { place: object } };
  const bent = { ...content, evidence: { ...evidence, place: { ...evidence.place, ...place } } };
  return kept(frame('run', bent, { id: idOf(50), sequence: 50 }), 50) as StoredEntry & { kind: 'run' };
}
const against = (place: object, ...entries: StoredEntry[]) =>
  chartedArm(run(place), entries, DEFAULT_CUFF_RULES);

// Bedside handbook 3.15.
test.each(NEVER_FACTS)('an arm with %s is said, whatever reason was given', (name) => {
  const said = { against: 'never', because: [name] };
  expect(against({ side: 'left' }, fact(2, name))).toEqual(said);
  expect(against({ side: 'left', override: REASON }, fact(2, name))).toEqual(said);
  expect(against({ side: 'left', site: 'wrist' }, fact(2, name))).toEqual(said);
  expect(against({ side: 'right' }, fact(2, name))).toBeNull();
  expect(against({ side: 'left', site: 'thigh' }, fact(2, name))).toBeNull();
});

test.each(['axillary-surgery', 'lymphoedema', 'weakness', 'injury'])(
  'an arm better left alone for %s is said until there is a name and a reason',
  (name) => {
    expect(against({ side: 'left' }, fact(2, name))).toEqual({ against: 'reason', because: [name] });
    expect(against({ side: 'left', override: REASON }, fact(2, name))).toBeNull();
    expect(against({ side: 'right' }, fact(2, name))).toBeNull();
  },
);

test('a fact counts on its first and its last day and on none beside, and not one that was an error', () => {
  const left = { side: 'left' };
  expect(against(left, fact(2, 'drip', { from: DAY, until: DAY }))?.against).toBe('never');
  expect(against(left, fact(2, 'drip', { from: '2026-11-26' }))).toBeNull();
  expect(against(left, fact(2, 'drip', { from: '2026-11-20', until: '2026-11-24' }))).toBeNull();
  const amends = { entry: idOf(2), reason: 'wrong-person' as const, text: null };
  const error = kept(frame('entered-in-error', { note: null }, { id: idOf(3), amends }), 60);
  expect(against(left, fact(2, 'drip'), error)).toBeNull();
});

test('that the other arm reads higher bars none, and a place may bar more', () => {
  const higher = kept(
    frame(
      'fact',
      { about: { fact: 'higher-arm', side: 'right' }, from: '2020-01-01', until: null, note: null },
      { id: idOf(2) },
    ),
  );
  expect(against({ side: 'left' }, higher)).toBeNull();
  const strict = { ...DEFAULT_CUFF_RULES, neverFor: [...NEVER_FACTS, 'lymphoedema' as const] };
  expect(chartedArm(run({ side: 'left', override: REASON }), [fact(2, 'lymphoedema')], strict)).toEqual({
    against: 'never',
    because: ['lymphoedema'],
  });
});
