import { type Override, overrideFields, presetProtocol, protocolVersion } from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chartRound } from '../content/chartRound.js';
import { type InForce, inForceUnder } from '../content/inForce.js';
import type { RoundEvidence } from '../content/round.js';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import {
  at,
  countContent,
  frame,
  idOf,
  kept,
  NO_EVIDENCE,
  runContent,
  signingContent,
  USUAL_PLACE,
} from '../testing/work.js';
import { projectDuties } from './duties.js';
import { GENERAL_RULES } from './generalRules.js';
import { projectLatest } from './latest.js';
import { projectChart } from './projectChart.js';
import { resultsStanding } from './valueStanding.js';

const PREGNANT = { facts: { ...NO_EVIDENCE.facts, isPregnant: true } };
const written = (systolic: number, diastolic: number) =>
  runContent({
    method: 'auscultation',
    moments: [
      { what: 'first sound', mmHg: systolic },
      { what: 'last sound', mmHg: diastolic },
    ],
  });

/** A round with one reading, taken at a minute of the day and signed. Ids: the reading `id`, the signing `id + 1`. */
function round(
  id: number,
  pressure: [number, number],
  minute: number,
  evidence: Partial<RoundEvidence> = {},
  status: 'preliminary' | 'final' = 'final',
): [StoredEntry, StoredEntry] {
  const place = { round: idOf(id + 100), measuredAt: { at: at(minute), zone: 'UTC', asEntered: null } };
  const run = frame('run', written(...pressure), { id: idOf(id), sequence: id, ...place });
  const content = signingContent([{ sign: 'pressure', entries: [run.id] }], [run], evidence);
  const more = { id: idOf(id + 1), sequence: id + 1, schema: 4, ...place };
  return [kept(run, minute), kept(frame('round', { ...content, status }, more), minute)];
}

function closing(
  id: number,
  of: number,
  conditions: string[],
  minute: number,
  saw: number[] | null = null,
): StoredEntry {
  const toldAt = { at: at(minute), zone: 'UTC', asEntered: null };
  const content = {
    conditions,
    toldWhom: 'Dr Larch (invented)',
    toldAt,
    saidBack: 'comes at once',
    saw: saw?.map(idOf) ?? null,
  };
  return kept(
    frame('act-now-closed', content, { id: idOf(id), sequence: id, round: idOf(of + 100) }),
    minute,
  );
}

const amending = (id: number, of: number, pressure: [number, number]): StoredEntry => {
  const amends = { entry: idOf(of), reason: 'typing-slip' as const, text: null };
  const more: Partial<EntryFrame> = { id: idOf(id), sequence: id, round: idOf(of + 100), amends };
  return kept(frame('run', written(...pressure), more), 90);
};
const gone = (id: number, of: number, minute: number): StoredEntry => {
  const amends = { entry: idOf(of), reason: 'wrong-person' as const, text: null };
  return kept(frame('entered-in-error', { note: null }, { id: idOf(id), sequence: id, amends }), minute);
};
const conditions = (entries: StoredEntry[]) =>
  projectDuties(entries).actNow.map(({ condition }) => condition);

describe('an act-now', () => {
  const severe = round(10, [166, 104], 0, PREGNANT);

  // DESIGN section 6: closes only with whom was told, when, and what was said back.
  test('stays open until it is closed by name, and another condition does not close it', () => {
    expect(conditions(severe)).toEqual(['severe-in-pregnancy']);
    expect(conditions([...severe, closing(20, 10, ['very-slow-pulse'], 5)])).toEqual(['severe-in-pregnancy']);
    expect(conditions([...severe, closing(20, 10, ['severe-in-pregnancy'], 5)])).toEqual([]);
    expect(projectLatest(severe).actNow).toBe(1);
  });

  // Bedside handbook 3.14: faint or unsteady on the feet is charted and reported.
  test('comes of somebody who felt unwell on their feet, and closes by name', () => {
    const [run] = round(10, [112, 70], 0);
    if (run.kind !== 'run') throw new Error('a reading');
    const { evidence } = run.content;
    const stood = (unwellUpright: boolean | null) => {
      const place = { ...evidence.place, posture: 'stand' as const };
      const circumstances = { ...evidence.circumstances, uprightMinutes: 1, unwellUpright };
      const up = { ...run, content: { ...run.content, evidence: { ...evidence, place, circumstances } } };
      const content = signingContent([{ sign: 'pressure', entries: [run.id] }], [up]);
      return [
        up,
        kept(frame('round', content, { id: idOf(11), sequence: 11, schema: 4, round: idOf(110) }), 0),
      ];
    };
    expect(conditions(stood(null))).toEqual([]);
    expect(conditions(stood(false))).toEqual([]);
    expect(conditions(stood(true))).toEqual(['unwell-upright']);
    expect(conditions([...stood(true), closing(20, 10, ['unwell-upright'], 5)])).toEqual([]);
  });

  test('is not closed by a later normal round, nor by one that closes it elsewhere', () => {
    const later = round(30, [118, 72], 60, PREGNANT);
    expect(conditions([...severe, ...later, closing(40, 30, ['severe-in-pregnancy'], 61)])).toEqual([
      'severe-in-pregnancy',
    ]);
  });

  test('goes with a round that was entered in error', () => {
    expect(conditions([...severe, gone(50, 11, 9)])).toEqual([]);
  });

  test('comes of a slip put right after signing, and goes with one', () => {
    const slip = round(10, [116, 104], 0, PREGNANT);
    expect(conditions(slip)).toEqual([]);
    expect(conditions([...slip, amending(60, 10, [166, 104])])).toEqual(['severe-in-pregnancy']);
    expect(conditions([...severe, amending(60, 10, [116, 74])])).toEqual([]);
  });

  // DESIGN section 6: two devices can sign one round; both signings are kept, and what one of them asked must be heard.
  test('of one of two signings of a round is not hidden by the other, nor lost when the other was an error', () => {
    const [run, signing] = round(10, [182, 112], 0, { features: [] });
    const signs = [{ sign: 'pressure' as const, entries: [run.id] }];
    const content = signingContent(signs, [run], { features: ['chest-or-back-pain'] });
    const more = { id: idOf(12), sequence: 12, schema: 4, round: idOf(110), device: idOf(702) };
    const again = kept(frame('round', content, more), 3);
    expect(conditions([run, signing])).toEqual([]);
    expect(conditions([run, signing, again])).toEqual(['severe-with-chest-or-back-pain']);
    expect(conditions([run, signing, again, gone(50, 11, 9)])).toEqual(['severe-with-chest-or-back-pain']);
    expect(conditions([run, signing, again, gone(50, 12, 9)])).toEqual([]);
    expect(projectDuties([run, signing, again]).rechecks.map(({ code }) => code)).toEqual([
      'recheck-at-once',
      'recheck-severe',
    ]);
  });

  test('of one of two amendments that disagree is not hidden by the other, whichever came last', () => {
    for (const [one, other] of [
      [166, 116],
      [116, 166],
    ] as const) {
      const entries = [...severe, amending(60, 10, [one, 74]), amending(61, 10, [other, 74])];
      expect(conditions(entries)).toEqual(['severe-in-pregnancy']);
    }
  });

  test('what such a round comes to is shown once for each amendment, and once where all agree', () => {
    const alerts = (...entries: StoredEntry[]) =>
      projectChart(entries).rounds.flatMap((one) =>
        resultsStanding(one, GENERAL_RULES).map(({ actNow }) => actNow.length),
      );
    const [one, other] = [amending(60, 10, [166, 74]), amending(61, 10, [116, 74])];
    expect(alerts(...severe)).toEqual([1]);
    expect(alerts(...severe, other)).toEqual([0]);
    expect(alerts(...severe, one, other)).toEqual([0, 1]);
    expect(alerts(...severe, one, amending(62, 10, [166, 74]))).toEqual([1]);
  });

  test('comes of an amendment that the signing itself was amended to name', () => {
    const [run, signing] = round(10, [116, 104], 0, PREGNANT);
    const put = amending(60, 10, [166, 104]);
    const signs = [{ sign: 'pressure' as const, entries: [put.id] }];
    const amends = { entry: signing.id, reason: 'typing-slip' as const, text: null };
    const more = { id: idOf(61), sequence: 61, schema: 4, round: idOf(110), amends };
    const again = kept(frame('round', signingContent(signs, [put], PREGNANT), more), 91);
    const entries = [run, signing, put, again];
    expect(conditions(entries)).toEqual(['severe-in-pregnancy']);
    expect(projectChart(entries).rounds[0]?.unsigned).toEqual([]);
  });

  test('opens again where it was amended to other figures after somebody was told, and not where it was not', () => {
    const told = closing(20, 10, ['severe-in-pregnancy'], 5);
    const worse = amending(60, 10, [206, 128]);
    expect(conditions([...severe, told, worse])).toEqual(['severe-in-pregnancy']);
    const toldAgain = closing(21, 10, ['severe-in-pregnancy'], 95);
    expect(conditions([...severe, told, worse, toldAgain])).toEqual([]);
    // Told of what was read first, without network: the server got it after the amendment.
    const late = closing(22, 10, ['severe-in-pregnancy'], 95, [10, 11]);
    expect(conditions([...severe, late])).toEqual([]);
    expect(conditions([...severe, late, worse])).toEqual(['severe-in-pregnancy']);
    const ofAll = closing(22, 10, ['severe-in-pregnancy'], 95, [10, 11, 60]);
    expect(conditions([...severe, ofAll, worse])).toEqual([]);
    // Amended after it was told, to the figures that were told.
    expect(conditions([...severe, told, amending(60, 10, [166, 104])])).toEqual([]);
  });

  test('is not closed before there was one', () => {
    const slip = round(10, [116, 104], 0, PREGNANT);
    const early = closing(20, 10, ['severe-in-pregnancy'], 5);
    expect(conditions([...slip, early, amending(60, 10, [166, 104])])).toEqual(['severe-in-pregnancy']);
  });

  test('opens again where what closed it was entered in error, and where a mark of error is taken back', () => {
    const told = closing(20, 10, ['severe-in-pregnancy'], 5);
    expect(conditions([...severe, told, gone(50, 20, 9)])).toEqual(['severe-in-pregnancy']);
    const back = frame('run', written(166, 104), {
      id: idOf(51),
      sequence: 51,
      round: idOf(110),
      amends: { entry: idOf(50), reason: 'other', text: 'it was her' },
    });
    expect(conditions([...severe, gone(50, 10, 9)])).toEqual([]);
    expect(conditions([...severe, gone(50, 10, 9), kept(back, 12)])).toEqual(['severe-in-pregnancy']);
  });

  test('of an amended round whose rules are not at hand is judged by the general rules, and by what was signed', () => {
    const unknown = () => null;
    const slip = round(10, [116, 104], 0, PREGNANT);
    const put = amending(60, 10, [166, 104]);
    expect(projectDuties([...slip, put], unknown).actNow).toMatchObject([
      { condition: 'severe-in-pregnancy', figures: { systolic: 166, diastolic: 104 } },
    ]);
    expect(projectDuties([...severe, amending(60, 10, [116, 74])], unknown).actNow).toHaveLength(1);
  });

  // Bedside handbook 3.16: from 160/110 in pregnancy and six weeks after. A device that was offline may not know of it.
  test('comes of a pregnancy or a birth that the record knows of that day and the signing did not', () => {
    const unaware = round(10, [166, 104], 0);
    const fact = (about: object, from: string, until: string | null = null) =>
      kept(
        frame('fact', { about, from, until, text: null }, { id: idOf(80), sequence: 80, round: null }),
        30,
      );
    const pregnancy = { fact: 'pregnancy', weeks: 30 };
    expect(conditions(unaware)).toEqual([]);
    expect(conditions([...unaware, fact(pregnancy, '2026-11-25')])).toEqual(['severe-in-pregnancy']);
    expect(conditions([...unaware, fact(pregnancy, '2026-11-26')])).toEqual([]);
    expect(conditions([...unaware, fact(pregnancy, '2026-11-01', '2026-11-24')])).toEqual([]);
    expect(conditions([...unaware, fact({ fact: 'gave-birth' }, '2026-11-01')])).toEqual([
      'severe-after-birth',
    ]);
    const known = [...unaware, fact(pregnancy, '2026-11-01')];
    expect(projectDuties(known).rechecks.map(({ code }) => code)).toContain('recheck-pregnancy');
    expect(conditions([...known, closing(20, 10, ['severe-in-pregnancy'], 40)])).toEqual([]);
    // Amended after it was told, to what was told: it stays closed; a mark of error takes the fact back.
    expect(
      conditions([...known, closing(20, 10, ['severe-in-pregnancy'], 40), amending(60, 10, [166, 104])]),
    ).toEqual([]);
    expect(conditions([...known, { ...gone(81, 80, 50), round: null }])).toEqual([]);
  });

  test('of two rounds signed in one minute stays open in each', () => {
    const [one, other] = [round(10, [166, 104], 0, PREGNANT), round(30, [168, 112], 0, PREGNANT)];
    const told = closing(20, 10, ['severe-in-pregnancy'], 5);
    expect(projectDuties([...one, ...other, told]).actNow.map((open) => open.round)).toEqual([idOf(130)]);
  });
});

describe('a recheck', () => {
  // Bedside handbook 3.16: severe in pregnancy, repeat within 15 min; severe without features, rest 5 min.
  test('is due from the end of the reading, until the pressure is taken again', () => {
    const severe = round(10, [166, 104], 0, PREGNANT);
    expect(projectDuties(severe).rechecks).toMatchObject([
      { code: 'recheck-pregnancy', fromAt: at(0), byAt: at(15) },
    ]);
    expect(projectLatest(severe).recheck).toEqual({
      code: 'recheck-pregnancy',
      fromAt: at(0),
      byAt: at(15),
    });
    expect(projectDuties(round(10, [186, 104], 0, { features: [] })).rechecks).toMatchObject([
      { code: 'recheck-severe', fromAt: at(5), byAt: null },
    ]);
    expect(projectDuties([...severe, ...round(30, [118, 72], 12, PREGNANT)]).rechecks).toEqual([]);
  });

  const severe = round(10, [166, 104], 0, PREGNANT);
  const codes = (entries: StoredEntry[]) => projectDuties(entries).rechecks.map(({ code }) => code);
  const DUE = ['recheck-pregnancy'];

  /** A round with one run of any shape, at a minute. */
  function other(id: number, minute: number, input: object, place: object = {}): [StoredEntry, StoredEntry] {
    const [run, signing] = round(id, [118, 72], minute, PREGNANT);
    const content = runContent(input as Record<string, unknown>, { place: { ...USUAL_PLACE, ...place } });
    const taken = { ...run, content } as unknown as StoredEntry;
    const signs = [{ sign: 'pressure' as const, entries: [run.id] }];
    const made = signingContent(signs, [taken as unknown as EntryFrame], PREGNANT);
    return [taken, { ...signing, content: made } as StoredEntry];
  }
  const byEar = {
    method: 'auscultation',
    moments: [
      { what: 'first sound', mmHg: 118 },
      { what: 'last sound', mmHg: 72 },
    ],
  };
  const byFeel = { method: 'palpation', moments: [{ what: 'pulse back', mmHg: 118 }] };

  test('of a very low one felt after a severe one the list says the very low one: the most urgent, not the oldest', () => {
    const felt = { ...byFeel, moments: [{ what: 'pulse back', mmHg: 84 }] };
    const { recheck } = projectLatest([...severe, ...other(30, 12, felt)]);
    expect(recheck).toMatchObject({ code: 'recheck-at-once', fromAt: at(12) });
  });

  // Conventions 6: a site other than the upper arm is charted and never averaged or categorised with it.
  test('is not ended by a wrist, by a palpated systolic, nor by what nobody signed', () => {
    expect(codes([...severe, ...other(30, 12, byEar)])).toEqual([]);
    expect(codes([...severe, ...other(30, 12, byEar, { site: 'wrist' })])).toEqual(DUE);
    expect(codes([...severe, ...other(30, 12, byFeel)])).toEqual(DUE);
    expect(codes([...severe, round(30, [118, 72], 12, PREGNANT)[0]])).toEqual(DUE);
    // What was only felt may be felt again.
    const low = other(50, 0, { method: 'palpation', moments: [{ what: 'pulse back', mmHg: 70 }] });
    expect(codes(low)).toEqual(['recheck-at-once']);
    expect(codes([...low, ...other(30, 12, byFeel)])).toEqual([]);
  });

  test('is not ended by a learner’s reading until it is countersigned, save one of a learner’s own', () => {
    const [run, signing] = round(30, [118, 72], 12, PREGNANT, 'preliminary');
    const content = { signing: signing.id, agrees: true, ownRound: null, note: null };
    const more = { id: idOf(40), round: idOf(130), agent: idOf(9009), role: 'supervisor' as const };
    const agreed = kept(frame('countersigned', content, more), 20);
    expect(codes([...severe, run, signing])).toEqual(DUE);
    expect(codes([...severe, run, signing, agreed])).toEqual([]);
    expect(codes([...round(10, [166, 104], 0, PREGNANT, 'preliminary'), run, signing])).toEqual([]);
  });

  test('is not ended by a clock that was ahead: nothing was measured after it was kept', () => {
    // Signed on a device two hours ahead, and kept at minute 0; the severe one comes at minute 30.
    const ahead = round(10, [118, 72], 120, PREGNANT).map((entry) => ({ ...entry, recordedAt: at(0) }));
    const later = round(30, [166, 104], 30, PREGNANT);
    expect(codes([...(ahead as StoredEntry[]), ...later])).toEqual(DUE);
    const severeAhead = round(10, [166, 104], 120, PREGNANT).map((entry) => ({
      ...entry,
      recordedAt: at(0),
    }));
    expect(projectDuties(severeAhead as StoredEntry[]).rechecks).toMatchObject([
      { fromAt: at(0), byAt: at(15) },
    ]);
    // By the wall clock where it was measured: 11:00 +02:00, ahead, is kept when it is 11:00 there in truth, an hour later.
    const there = severeAhead.map((entry) => ({
      ...entry,
      measuredAt: { ...entry.measuredAt, at: entry.measuredAt.at.replace(/(\.\d+)?Z$/, '+00:30') },
    }));
    expect(projectDuties(there as StoredEntry[]).rechecks[0]?.fromAt).toBe(
      `${at(30).slice(0, 16)}:00.000+00:30`,
    );
    expect(codes([...(severeAhead as StoredEntry[]), ...round(30, [118, 72], 30, PREGNANT)])).toEqual([]);
  });

  test('is due in each of two rounds of one minute, and ends with the next', () => {
    const two = [...severe, ...round(30, [168, 112], 0, PREGNANT)];
    expect(codes(two)).toEqual([...DUE, ...DUE]);
    expect(codes([...two, ...round(50, [118, 72], 9, PREGNANT)])).toEqual([]);
  });

  // Bedside handbook 3.16: very low or unwell, at once.
  test('is due of somebody unwell of whom no pressure was taken, until one is', () => {
    const measuredAt = { at: at(3), zone: 'UTC', asEntered: null };
    const pulse = frame('count', countContent({ n: 19, windowSeconds: 15 }), {
      id: idOf(10),
      round: idOf(110),
      measuredAt,
    });
    const content = signingContent([{ sign: 'pulse', entries: [pulse.id] }], [pulse], { unwell: true });
    const more = { id: idOf(11), sequence: 2, schema: 4, round: idOf(110), measuredAt };
    const unwell = [kept(pulse, 3), kept(frame('round', content, more), 3)];
    expect(projectDuties(unwell).rechecks).toMatchObject([{ code: 'recheck-at-once', fromAt: at(3) }]);
    expect(codes([...unwell, ...round(30, [118, 72], 9)])).toEqual([]);
  });
});

describe('a learner’s round', () => {
  const learnt = round(10, [128, 76], 0, {}, 'preliminary');
  const countersigning = (id: number, agrees: boolean, minute: number) =>
    kept(
      frame(
        'countersigned',
        { signing: idOf(11), agrees, ownRound: null, note: agrees ? null : 'cuff over a sleeve' },
        { id: idOf(id), sequence: id, round: idOf(110), role: 'supervisor', agent: idOf(9009) },
      ),
      minute,
    );

  test('is preliminary until a supervisor agrees, and again where one then does not', () => {
    const isPreliminary = (entries: StoredEntry[]) => projectChart(entries).rounds[0]?.isPreliminary;
    expect(isPreliminary(learnt)).toBe(true);
    expect(projectDuties(learnt).toCountersign).toEqual([idOf(110)]);
    expect(isPreliminary([...learnt, countersigning(20, false, 5)])).toBe(true);
    const agreed = [...learnt, countersigning(20, false, 5), countersigning(21, true, 8)];
    expect(isPreliminary(agreed)).toBe(false);
    expect(projectLatest(agreed)).toMatchObject({ toCountersign: 0, pressure: { preliminary: false } });
    expect(projectChart(agreed).rounds[0]?.countersigned).toHaveLength(2);
    expect(isPreliminary([...agreed, countersigning(22, false, 9)])).toBe(true);
  });

  const isPreliminary = (entries: StoredEntry[]) => projectChart(entries).rounds[0]?.isPreliminary;
  const resigned = (id: number, minute: number, more: Partial<EntryFrame> = {}) => {
    const [, signing] = learnt;
    const amends = { entry: idOf(11), reason: 'other' as const, text: 'it is right' };
    const content = { ...signing.content, status: 'final' };
    return kept(
      frame('round', content, { id: idOf(id), sequence: id, schema: 4, round: idOf(110), amends, ...more }),
      minute,
    );
  };

  test('is not made final by amending its signing', () => {
    expect(isPreliminary([...learnt, resigned(20, 5)])).toBe(true);
    expect(isPreliminary([...learnt, resigned(20, 5), countersigning(21, true, 8)])).toBe(false);
  });

  test('waits again where somebody but a supervisor of it amends what was agreed to', () => {
    const agreed = [...learnt, countersigning(21, true, 8)];
    const put = amending(60, 10, [118, 72]);
    expect(isPreliminary([...agreed, put])).toBe(true);
    expect(isPreliminary([...agreed, resigned(20, 9)])).toBe(true);
    expect(isPreliminary([...agreed, put, countersigning(61, true, 95)])).toBe(false);
    expect(isPreliminary([...agreed, { ...put, agent: idOf(9009) }])).toBe(false);
    // Amended before anybody agreed: what was agreed to is what stands.
    expect(isPreliminary([...learnt, { ...put, recordedAt: at(5) }, countersigning(21, true, 8)])).toBe(
      false,
    );
  });

  test('that a supervisor does not rely on waits for nobody, until it is amended; it stays preliminary', () => {
    const waits = (entries: StoredEntry[]) => projectDuties(entries).toCountersign;
    const refused = [...learnt, countersigning(20, false, 5)];
    expect([isPreliminary(refused), waits(refused)]).toEqual([true, []]);
    expect(projectLatest(refused)).toMatchObject({ toCountersign: 0, pressure: { preliminary: true } });
    expect(waits([...learnt, countersigning(20, true, 5), countersigning(21, false, 8)])).toEqual([]);
    const put = amending(60, 10, [118, 72]);
    expect(waits([...refused, put])).toEqual([idOf(110)]);
    expect(waits([...refused, resigned(22, 9)])).toEqual([idOf(110)]);
    // Also by the supervisor who said no: else nobody would ever be asked to rely on it.
    expect(waits([...refused, { ...put, agent: idOf(9009) }])).toEqual([idOf(110)]);
    expect(waits([...learnt, countersigning(20, true, 5), { ...put, agent: idOf(9009) }])).toEqual([]);
    expect(waits([...refused, put, countersigning(61, false, 95)])).toEqual([]);
  });

  test('that was countersigned in error waits again', () => {
    expect(isPreliminary([...learnt, countersigning(21, true, 8), gone(50, 21, 9)])).toBe(true);
    const refused = [...learnt, countersigning(21, false, 8), gone(50, 21, 9)];
    expect(projectDuties(refused).toCountersign).toEqual([idOf(110)]);
  });
});

describe('what is to be done', () => {
  const base = round(10, [166, 104], 0, PREGNANT, 'preliminary');
  const agreed = { signing: idOf(11), agrees: true, ownRound: null, note: null };
  const by = { id: idOf(70), round: idOf(110), agent: idOf(9009), role: 'supervisor' as const };
  const happenings: readonly StoredEntry[] = [
    amending(60, 10, [206, 128]),
    { ...amending(61, 10, [116, 74]), recordedAt: at(30) },
    gone(50, 10, 40),
    gone(51, 11, 41),
    gone(52, 20, 42),
    closing(20, 10, ['severe-in-pregnancy'], 5),
    closing(21, 10, ['severe-in-pregnancy'], 95),
    kept(frame('countersigned', agreed, by), 50),
    ...round(30, [118, 72], 12, PREGNANT),
    ...round(33, [170, 114], 12, PREGNANT, 'preliminary'),
  ];

  test('does not depend on the order in which entries come', () => {
    const some = fc.subarray([...happenings]).map((chosen) => [...base, ...chosen]);
    const twice = some.chain((entries) =>
      fc.tuple(
        fc.constant(entries),
        fc.shuffledSubarray(entries, { minLength: entries.length, maxLength: entries.length }),
      ),
    );
    fc.assert(
      fc.property(twice, ([entries, shuffled]) => {
        expect(projectDuties(shuffled)).toEqual(projectDuties(entries));
      }),
    );
  });

  test('of an act-now that stands is lost by nothing but a closing', () => {
    const others = happenings.filter(({ kind, id }) => kind !== 'act-now-closed' && id !== idOf(61));
    const some = fc.subarray(others.filter(({ kind }) => kind !== 'entered-in-error'));
    fc.assert(
      fc.property(some, (chosen) => {
        const open = projectDuties([...base, ...chosen]).actNow;
        expect(open.filter((one) => one.round === idOf(110))).toHaveLength(1);
      }),
    );
  });

  test('is found by a few looks at each entry: ten times as many rounds cost about ten times as much', () => {
    /** How often anything of an entry is asked for until the duties of so many rounds are known. */
    const looks = (rounds: number) => {
      let asked = 0;
      const counted = (entry: StoredEntry) =>
        new Proxy(entry, {
          get: (of, key, self) => {
            asked += 1;
            return Reflect.get(of, key, self);
          },
        });
      const many = Array.from({ length: rounds }, (_, n) => [
        ...round(1000 + n * 300, [166, 104], n, PREGNANT),
        closing(1002 + n * 300, 1000 + n * 300, ['very-slow-pulse'], n),
      ]).flat();
      const { actNow, rechecks } = projectDuties(many.map(counted));
      expect([actNow.length, rechecks.length]).toEqual([rounds, 1]);
      return asked;
    };
    // Sorting looks a few times more: n log n of 1000 is 15 times that of 100.
    expect(looks(1000) / looks(100)).toBeLessThan(20);
  }, 60_000);
});

// A place may set its own limit (DESIGN principle 3), and a round keeps the version it was signed under.
describe('a round that was signed under a protocol and amended since', () => {
  const own = inForceOf({ section: 'actNow', key: 'veryLowSystolic', value: 105 });
  const newer = inForceOf({ section: 'actNow', key: 'veryLowSystolic', value: 80 });
  const rulesOf = (version: string | null) =>
    [own, newer].find(({ presetVersion }) => presetVersion === version) ?? null;

  function inForceOf(override: Override): InForce {
    const preset = presetProtocol({ actNow: 'acc-aha-2017' });
    const protocol = preset.ok ? overrideFields(preset.value, [override]) : preset;
    if (!protocol.ok) throw new Error(JSON.stringify(protocol.refusals));
    return inForceUnder(protocol.value, protocolVersion(protocol.value));
  }

  function under(inForce: InForce, systolic: number): StoredEntry[] {
    const [run, signing] = round(10, [118, 72], 0);
    const signed = {
      status: 'final' as const,
      signs: [{ sign: 'pressure' as const, entries: [run.id] }],
      evidence: NO_EVIDENCE,
      note: null,
    };
    const content = chartRound(signed, [run], inForce, 'evenfall test');
    return [run, { ...signing, content } as StoredEntry, amending(60, 10, [systolic, 60])];
  }
  const alerts = (inForce: InForce, systolic: number, rules = rulesOf) =>
    projectDuties(under(inForce, systolic), rules)
      .actNow.map(({ condition }) => condition)
      .filter((condition) => condition === 'very-low-pressure');

  test('is judged by that version, on both sides of its limit, whatever the general rules or a newer one say', () => {
    expect(alerts(own, 104)).toEqual(['very-low-pressure']);
    expect(alerts(own, 106)).toEqual([]);
    expect(alerts(newer, 86)).toEqual([]);
    expect(alerts(newer, 78)).toEqual(['very-low-pressure']);
  });

  test('is judged by the general rules where that version is not at hand', () => {
    // Bedside handbook 5.2: three points for a systolic of 90 or below.
    expect(alerts(newer, 88, () => null)).toContain('very-low-pressure');
    expect(alerts(newer, 118, () => null)).toEqual([]);
  });
});
