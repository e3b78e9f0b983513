import type { StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { AGENT, AT, DEVICE, ID, PERSON } from '../round/testing.js';
import { factsOfPerson, factsOn, prescriberOfScaleTwo } from './factsOn.js';

function entry(id: number, kind: string, content: object, amends: number | null = null): StoredEntry {
  const because = { reason: 'typing-slip', text: null };
  return {
    frame: 1, id: ID(id), book: 'care', kind, schema: 1, person: PERSON, round: null, session: null, agent: AGENT,
    role: 'observer', device: DEVICE, sequence: id, measuredAt: AT(id), writtenAt: AT(id).at,
    amends: amends === null ? null : { entry: ID(amends), ...because }, content, recordedAt: AT(id).at,
  } as unknown as StoredEntry; // biome-ignore format: one frame
}
const fact = (id: number, about: object, from: string, until: string | null = null) =>
  entry(id, 'fact', { about, from, until, text: null });

const TREMOR = fact(20, { fact: 'tremor' }, '2026-03-01');
const FISTULA = fact(21, { fact: 'fistula', side: 'left' }, '2026-03-02');
const DRIP = fact(22, { fact: 'drip', side: 'right' }, '2026-03-01', '2026-03-03');
const SCALE = fact(
  23,
  { fact: 'oxygen-scale-2', prescriber: 'Dr Example, invented' },
  '2026-03-02',
  '2026-03-04',
);
const ALL = [TREMOR, FISTULA, DRIP, SCALE]; // biome-ignore format: one thought

test('the facts that hold on a day, what bars an arm first', () => {
  const on = (day: string) => factsOn(ALL, day).map(({ about }) => about.fact);
  expect(on('2026-03-01')).toEqual(['drip', 'tremor']);
  expect(on('2026-03-03')).toEqual(['fistula', 'drip', 'tremor', 'oxygen-scale-2']);
  expect(on('2026-03-05')).toEqual(['fistula', 'tremor']);
});

test('scale 2 is used on the days for which somebody decided so by name, and on no other', () => {
  const on = (day: string) => prescriberOfScaleTwo(ALL, day);
  expect(['2026-03-01', '2026-03-02', '2026-03-04', '2026-03-05'].map(on)).toEqual([
    null,
    'Dr Example, invented',
    'Dr Example, invented',
    null,
  ]);
});

test('ended, to come and in error stand apart, and none of them is lost', () => {
  const error = entry(24, 'entered-in-error', { note: null }, 21);
  const sorted = factsOfPerson([...ALL, error], '2026-03-04');
  const names = (facts: readonly { about: { fact: string } }[]) => facts.map(({ about }) => about.fact);
  expect(names(sorted.holding)).toEqual(['tremor', 'oxygen-scale-2']);
  expect(names(sorted.ended)).toEqual(['drip']);
  expect(names(sorted.ahead)).toEqual([]);
  expect(sorted.inError).toEqual([{ fact: FISTULA, mark: error }]);
  expect(names(factsOfPerson([...ALL, error], '2026-03-01').ahead)).toEqual(['oxygen-scale-2']);
});

test('an end said later ends a fact the day after it', () => {
  const ended = entry(25, 'fact-ended', { fact: ID(21), until: '2026-03-03' });
  expect(factsOfPerson([FISTULA, ended], '2026-03-03').holding).toHaveLength(1);
  expect(factsOfPerson([FISTULA, ended], '2026-03-04').ended).toHaveLength(1);
});
