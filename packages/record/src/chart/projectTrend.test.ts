import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import { anyHistoryTwice } from '../testing/history.js';
import {
  at,
  countContent,
  frame,
  idOf,
  kept,
  runContent,
  signContent,
  signingContent,
} from '../testing/work.js';
import { GENERAL_RULES } from './generalRules.js';
import { projectChart } from './projectChart.js';
import { projectTrend, signsOfTrend, trendFromElsewhere } from './projectTrend.js';

const ROUND = idOf(500);

function entry(
  kind: EntryFrame['kind'],
  content: object,
  id: number,
  minute: number,
  more: Partial<EntryFrame> = {},
) {
  const measuredAt = { at: at(minute), zone: 'UTC', asEntered: null };
  return kept(
    frame(kind, content, { id: idOf(id), sequence: id, measuredAt, round: ROUND, ...more }),
    minute,
  );
}

const heard = (
  systolic: number,
  diastolic: number,
  id: number,
  minute: number,
  more: Partial<EntryFrame> = {},
) =>
  entry(
    'run',
    runContent({
      method: 'auscultation',
      moments: [
        { what: 'first sound', mmHg: systolic },
        { what: 'last sound', mmHg: diastolic },
      ],
    }),
    id,
    minute,
    more,
  );

const trend = (entries: readonly StoredEntry[]) => projectTrend(projectChart(entries), GENERAL_RULES);
const values = (entries: readonly StoredEntry[]) =>
  trend(entries).flatMap(({ points }) => points.map(({ value }) => value));

describe('a trend', () => {
  test('is empty for an empty chart', () => {
    expect(trend([])).toEqual([]);
    expect(signsOfTrend([])).toEqual([]);
  });

  test('holds each sign that has a number, oldest first, in the order in which signs are drawn', () => {
    const entries = [
      entry('sign', signContent({ of: 'temperature', celsius: 38.4, site: 'tympanic' }), 4, 5),
      entry('count', countContent({ n: 18, windowSeconds: 60, of: 'breaths' }), 2, 2),
      heard(148, 92, 3, 3),
      entry('count', countContent({ n: 19, windowSeconds: 15 }), 1, 1),
    ];
    const [round, ...others] = trend(entries);
    expect(others).toEqual([]);
    expect(round).toMatchObject({ round: ROUND, at: at(1), isPreliminary: false, average: null });
    expect(round?.points.map(({ entry: id, value }) => [id, value])).toEqual([
      [idOf(1), { of: 'pulse', perMinute: 76 }],
      [idOf(2), { of: 'breaths', perMinute: 18 }],
      [
        idOf(3),
        {
          of: 'pressure',
          systolic: 148,
          diastolic: 92,
          written: '148/92',
          isAveraged: true,
          side: 'right',
          posture: 'sit',
        },
      ],
      [idOf(4), { of: 'temperature', celsius: 38.4 }],
    ]);
    expect(signsOfTrend(trend(entries))).toEqual(['pressure', 'pulse', 'breaths', 'temperature']);
  });

  test('a diastolic that is not there is null and never a zero: by palpation, and sounds to zero', () => {
    // Bedside handbook 3.4 and 3.7: 122/P; 118/62/0 is used as 118/62, 118/0 has none to use.
    const felt = runContent({ method: 'palpation', moments: [{ what: 'pulse back', mmHg: 122 }] });
    const moments = [
      { what: 'first sound', mmHg: 118 },
      { what: 'last sound', mmHg: 0 },
    ];
    const muffled = [moments[0], { what: 'muffled', mmHg: 62 }, moments[1]];
    const entries = [
      entry('run', felt, 1, 1),
      entry('run', runContent({ method: 'auscultation', moments: muffled }), 2, 2),
      entry('run', runContent({ method: 'auscultation', moments }), 3, 3),
    ];
    expect(values(entries)).toMatchObject([
      { systolic: 122, diastolic: null, written: '122/P' },
      { systolic: 118, diastolic: 62, written: '118/62/0' },
      { systolic: 118, diastolic: null, written: '118/0' },
    ]);
  });

  test('a void count and what was entered in error are not drawn; what replaced a value is', () => {
    const amends = (of: number) => ({
      amends: { entry: idOf(of), reason: 'typing-slip' as const, text: null },
    });
    const entries = [
      entry(
        'count',
        countContent({ windowSeconds: 30, interrupted: { reason: 'called-away', atSeconds: 12 } }),
        1,
        1,
      ),
      heard(184, 92, 2, 2),
      heard(148, 92, 3, 3, amends(2)),
      heard(150, 90, 4, 4),
      entry('entered-in-error', { note: null }, 5, 5, amends(4)),
    ];
    expect(trend(entries).flatMap(({ points }) => points.map(({ entry: id }) => id))).toEqual([idOf(3)]);
  });

  test('where amendments disagree, every claim is drawn and marked, and there is no average', () => {
    const amends = { amends: { entry: idOf(1), reason: 'typing-slip' as const, text: null } };
    const entries = [
      heard(184, 92, 1, 1),
      heard(148, 92, 2, 1, { ...amends, device: idOf(701) }),
      heard(140, 92, 3, 1, { ...amends, device: idOf(702) }),
    ];
    const [round] = trend(entries);
    expect(round?.points.map(({ isContested }) => isContested)).toEqual([true, true]);
    expect(round?.average).toBeNull();
  });

  test('what a round of several readings comes to stands beside them', () => {
    // Without a protocol: ESC 2024, mean of the second and third (bedside handbook 3.10).
    const runs = [heard(152, 94, 1, 1), heard(146, 90, 2, 3), heard(145, 88, 3, 5)];
    const signs = [{ sign: 'pressure' as const, entries: [idOf(1), idOf(2), idOf(3)] }];
    const signing = entry('round', signingContent(signs, runs as unknown as EntryFrame[]), 4, 6, {
      schema: 2,
    });
    const [round] = trend([...runs, signing]);
    expect(round?.average).toMatchObject({ systolic: 145.5, diastolic: 89, readings: 2, posture: 'sit' });
  });

  test('a mean of readings that were all taken lying is one lying, also where some were amended since', () => {
    const lain = (systolic: number, id: number, minute: number, more: Partial<EntryFrame> = {}) => {
      const reading = heard(systolic, 70, id, minute, more);
      if (reading.kind !== 'run') throw new Error('no reading');
      const { evidence } = reading.content;
      const place = { ...evidence.place, posture: 'lie' as const };
      return { ...reading, content: { ...reading.content, evidence: { ...evidence, place } } };
    };
    const runs = [lain(118, 1, 1), lain(112, 2, 3), lain(110, 3, 5)];
    const signs = [{ sign: 'pressure' as const, entries: [idOf(1), idOf(2), idOf(3)] }];
    const content = signingContent(signs, runs as unknown as EntryFrame[]);
    const signed = [...runs, entry('round', content, 4, 6, { schema: 2 })];
    expect(trend(signed)[0]?.average).toMatchObject({ systolic: 111, posture: 'lie' });
    const amends = [2, 3].map((id) => ({ entry: idOf(id), reason: 'typing-slip' as const, text: null }));
    const put = amends.map((one, at) => lain(114, 10 + at, 9, { amends: one }));
    expect(trend([...signed, ...put])[0]?.average).toMatchObject({ systolic: 114, posture: 'lie' });
  });

  test('is the same whatever the order of the entries, and rises in time', () => {
    fc.assert(
      fc.property(anyHistoryTwice, ([one, other]) => {
        expect(trend(one)).toEqual(trend(other));
        const times = trend(one).map((round) => Date.parse(round.at));
        expect(times).toEqual(times.toSorted((a, b) => a - b));
      }),
    );
  });
});

describe('what others say in a trend', () => {
  const said = (
    id: number,
    minute: number,
    value: object,
    more: object = {},
    around: Partial<EntryFrame> = {},
  ) =>
    entry(
      'reported',
      {
        value,
        asSent: null,
        by: 'Ines Larch (invented)',
        method: null,
        site: null,
        posture: null,
        interpretation: null,
        status: 'final',
        until: null,
        note: null,
        source: { format: 'csv', id: `${id}` },
        saidAt: null,
        ...more,
      },
      id,
      minute,
      { round: null, ...around },
    );
  const pulse = { of: 'pulse', perMinute: 71 };
  const elsewhere = (entries: readonly StoredEntry[]) => trendFromElsewhere(projectChart(entries));

  test('stands apart from the rounds, with who said it and how; a diastolic that nobody gave is no zero', () => {
    const all = [
      heard(148, 92, 1, 0),
      said(2, 5, pulse),
      said(3, 5, { of: 'pressure', systolic: 124, diastolic: null }),
      said(4, 5, { of: 'oxygen-saturation', percent: 94 }, { site: 'finger', method: 'device' }),
      said(5, 2, { of: 'temperature', celsius: 38.1 }, { by: null }),
      said(6, 5, { of: 'weight', kg: 70 }),
    ];
    expect(trend(all).map(({ elsewhere: of }) => of)).toEqual([null]);
    expect(
      elsewhere(all).map(({ elsewhere: of, points }) => [of?.by, of?.how, points.map(({ value }) => value)]),
    ).toEqual([
      [null, [], [{ of: 'temperature', celsius: 38.1 }]],
      [
        'Ines Larch (invented)',
        ['finger', 'device'],
        [{ of: 'oxygen-saturation', percent: 94, onOxygen: null }],
      ],
      [
        'Ines Larch (invented)',
        [],
        [
          expect.objectContaining({ of: 'pressure', systolic: 124, diastolic: null, written: '124/–' }),
          pulse,
        ],
      ],
    ]);
  });

  // FHIR R4, Observation.status: `corrected` changes what was said before; nothing says what.
  test('a value that may have been corrected, and the correction, say so of themselves', () => {
    const order = { source: { format: 'fhir', id: 'urn:orders|7' } } as const;
    const hour = (at: string) => ({ saidAt: `2026-11-25T${at}:00:00Z` });
    const all = [
      said(2, 5, pulse, { ...order, ...hour('20') }),
      said(3, 8, { of: 'pulse', perMinute: 96 }, { ...order, ...hour('21'), status: 'corrected' }),
      said(4, 9, pulse),
    ];
    expect(elsewhere(all).flatMap(({ points }) => points.map(({ unclear }) => unclear))).toEqual([
      'may-be-corrected',
      'correction',
      null,
    ]);
  });

  test('what was taken back is not drawn; what was amended is drawn as it stands', () => {
    const amends = { entry: idOf(2), reason: 'other', text: 'x' } as const;
    const first = said(2, 5, pulse);
    expect(
      elsewhere([first, entry('entered-in-error', { note: null }, 3, 6, { round: null, amends })]),
    ).toEqual([]);
    const second = said(3, 5, { of: 'pulse', perMinute: 74 }, {}, { amends });
    expect(elsewhere([first, second]).flatMap(({ points }) => points.map(({ value }) => value))).toEqual([
      { of: 'pulse', perMinute: 74 },
    ]);
  });
});

test('how a value stands is said of it: amended, of a gauge that failed, in a round that a supervisor did not rely on', () => {
  const gauge = idOf(700);
  const doubt = { of: 'comparison' as const, afterMs: null, failedMs: Date.parse(at(60)), untilMs: null };
  const failed = { id: gauge, named: { name: 'Gauge 3' }, standing: { doubts: [doubt] } };
  const moments = [
    { what: 'first sound', mmHg: 137 },
    { what: 'last sound', mmHg: 77 },
  ];
  const reading = entry('run', runContent({ method: 'auscultation', moments }, { gauge }), 1, 1);
  const pulse = entry('count', countContent({ n: 19, windowSeconds: 15 }), 2, 2);
  const amends = { entry: idOf(2), reason: 'typing-slip' as const, text: null };
  const amended = entry('count', countContent({ n: 18, windowSeconds: 15 }), 3, 3, { amends });
  const signed = entry(
    'round',
    {
      ...signingContent(
        [
          { sign: 'pressure', entries: [idOf(1)] },
          { sign: 'pulse', entries: [idOf(2)] },
        ],
        [reading, pulse] as never,
      ),
      status: 'preliminary',
    },
    9,
    9,
  );
  const said = (agrees: boolean, id: number) =>
    entry('countersigned', { signing: idOf(9), agrees, ownRound: null, note: 'Sleeve.' }, id, id, {
      role: 'supervisor',
      agent: idOf(9010),
    });
  const of = (entries: readonly StoredEntry[]) =>
    projectTrend(projectChart(entries), GENERAL_RULES, [failed as never])[0];
  const all = [reading, pulse, amended, signed];
  expect(of(all)).toMatchObject({
    isNotReliedOn: false,
    points: [
      { isAmended: false, failedGauge: 'Gauge 3' },
      { isAmended: true, failedGauge: null },
    ],
  });
  expect(of([...all, said(false, 10)])?.isNotReliedOn).toBe(true);
  expect(of([...all, said(false, 10), said(true, 11)])?.isNotReliedOn).toBe(false);
});
