import { describe, expect, test } from 'vitest';
import { readEntry } from '../entry/readEntry.js';
import { frame, idOf, placesOf } from '../testing/work.js';
import { FACT_NAMES } from './factNames.js';

const read = (about: object, more: object = {}) =>
  placesOf(readEntry(frame('fact', { about, from: '2026-03-01', until: null, text: null, ...more })));

describe('a fact of a person', () => {
  test.each<[string, object]>([
    ['an arm barred', { fact: 'fistula', side: 'left' }],
    ['the higher arm', { fact: 'higher-arm', side: 'right' }],
    ['a pregnancy', { fact: 'pregnancy', weeks: 31 }],
    ['a pregnancy whose weeks are not known', { fact: 'pregnancy', weeks: null }],
    ['a birth', { fact: 'gave-birth' }],
    ['a rhythm', { fact: 'irregular-rhythm' }],
    ['a gap', { fact: 'gap', fromMmHg: 186, toMmHg: 152 }],
    ['a cuff', { fact: 'usual-cuff', scheme: 'aha-2005', cuff: 'large-adult' }],
    [
      'the second scale, with who prescribes it',
      { fact: 'oxygen-scale-2', prescriber: 'Dr Larch (invented)' },
    ],
    ['the reference tables', { fact: 'reference-sex', sex: 'f' }],
  ])('is %s', (_, about) => {
    expect(read(about)).toEqual([]);
  });

  test('has every name that a form offers, each once', () => {
    expect(new Set(FACT_NAMES).size).toBe(FACT_NAMES.length);
    for (const fact of FACT_NAMES) {
      const about = { fact, side: 'left', weeks: 8, fromMmHg: 180, toMmHg: 150, scheme: 'aha-2005' };
      const places = read({ ...about, cuff: 'adult', prescriber: 'x', sex: 'm' });
      // Only what does not belong to the fact is refused, never the fact itself.
      expect(places).not.toContain('/content/about/fact');
    }
  });

  test.each<[string, object]>([
    ['/content/about/side', { fact: 'fistula' }],
    ['/content/about/side', { fact: 'drip', side: 'both' }],
    ['/content/about/fact', { fact: 'brave' }],
    ['/content/about/prescriber', { fact: 'oxygen-scale-2', prescriber: ' ' }],
    ['/content/about/sex', { fact: 'reference-sex' }],
    ['/content/about/weeks', { fact: 'pregnancy', weeks: -1 }],
    ['/content/about/toMmHg', { fact: 'gap', fromMmHg: 152, toMmHg: 186 }],
  ])('is refused at %s', (place, about) => {
    expect(read(about)).toEqual([place]);
  });

  test('ends on its first day or later, and both days count', () => {
    expect(read({ fact: 'drip', side: 'left' }, { until: '2026-03-01' })).toEqual([]);
    expect(read({ fact: 'drip', side: 'left' }, { until: '2026-02-28' })).toEqual(['/content/until']);
    expect(read({ fact: 'drip', side: 'left' }, { from: '2026-02-30' })).toEqual(['/content/from']);
  });

  test('has its end said by an entry of its own', () => {
    expect(placesOf(readEntry(frame('fact-ended', { fact: idOf(1), until: '2026-04-01' })))).toEqual([]);
    expect(placesOf(readEntry(frame('fact-ended', { fact: idOf(1) })))).toEqual(['/content/until']);
  });
});

describe('what closes and what countersigns', () => {
  const closed = {
    conditions: ['severe-pressure'],
    toldWhom: 'Dr Larch (invented)',
    toldAt: { at: '2026-11-25T09:05:00Z', zone: 'UTC', asEntered: null },
    saidBack: 'comes at once',
  };

  // Bedside handbook 7.1: told whom, when, what was said back.
  test('an act-now closes only with whom was told, when, and what was said back', () => {
    expect(placesOf(readEntry(frame('act-now-closed', closed)))).toEqual([]);
    for (const key of ['conditions', 'toldWhom', 'toldAt', 'saidBack'] as const) {
      const { [key]: _left, ...rest } = closed;
      expect(placesOf(readEntry(frame('act-now-closed', rest)))).toEqual([`/content/${key}`]);
    }
    expect(placesOf(readEntry(frame('act-now-closed', { ...closed, saidBack: '  ' })))).toEqual([
      '/content/saidBack',
    ]);
    expect(placesOf(readEntry(frame('act-now-closed', { ...closed, conditions: [] })))).toEqual([
      '/content/conditions',
    ]);
    expect(placesOf(readEntry(frame('act-now-closed', closed, { round: null })))).toEqual(['/round']);
  });

  test('since schema 2 it names the entries that were seen, and one of schema 1 reads as naming none', () => {
    const newer = (content: object) => readEntry(frame('act-now-closed', content, { schema: 2 }));
    expect(placesOf(newer({ ...closed, saw: [idOf(2), idOf(3)] }))).toEqual([]);
    for (const saw of [undefined, [], ['the first']])
      expect(placesOf(newer({ ...closed, saw }))[0]).toMatch(/^\/content\/saw/);
    expect(placesOf(readEntry(frame('act-now-closed', { ...closed, saw: [idOf(2)] })))).toHaveLength(1);
    const older = readEntry(frame('act-now-closed', closed));
    expect(older).toMatchObject({ ok: true, value: { content: { ...closed, saw: null } } });
  });

  test('a countersigning that does not agree says why', () => {
    const content = { signing: idOf(2), agrees: true, ownRound: null, note: null };
    expect(placesOf(readEntry(frame('countersigned', content)))).toEqual([]);
    const without = { ...content, agrees: false };
    expect(placesOf(readEntry(frame('countersigned', without)))).toEqual(['/content/note']);
    expect(placesOf(readEntry(frame('countersigned', { ...without, note: 'cuff over a sleeve' })))).toEqual(
      [],
    );
  });
});
