import { describe, expect, test } from 'vitest';
import type { RoundEvidence } from '../content/round.js';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import { at, frame, idOf, kept, NO_EVIDENCE, runContent, signingContent } from '../testing/work.js';
import { projectDuties } from './duties.js';
import { projectLatest } from './latest.js';
import { projectChart } from './projectChart.js';

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
  const more = { id: idOf(id + 1), sequence: id + 1, schema: 2, ...place };
  return [kept(run, minute), kept(frame('round', { ...content, status }, more), minute)];
}

function closing(id: number, of: number, conditions: string[], minute: number): StoredEntry {
  const toldAt = { at: at(minute), zone: 'UTC', asEntered: null };
  const content = { conditions, toldWhom: 'Dr Larch (invented)', toldAt, saidBack: 'comes at once' };
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

  test('is not closed by a later normal round, nor by one that closes it elsewhere', () => {
    const later = round(30, [118, 72], 60, PREGNANT);
    expect(conditions([...severe, ...later, closing(40, 30, ['severe-in-pregnancy'], 61)])).toEqual([
      'severe-in-pregnancy',
    ]);
  });

  test('goes with a round that was entered in error', () => {
    const amends = { entry: idOf(11), reason: 'wrong-person' as const, text: null };
    const error = kept(frame('entered-in-error', { note: null }, { id: idOf(50), sequence: 50, amends }), 9);
    expect(conditions([...severe, error])).toEqual([]);
  });

  test('comes of a slip put right after signing, and goes with one', () => {
    const slip = round(10, [116, 104], 0, PREGNANT);
    expect(conditions(slip)).toEqual([]);
    expect(conditions([...slip, amending(60, 10, [166, 104])])).toEqual(['severe-in-pregnancy']);
    expect(conditions([...severe, amending(60, 10, [116, 74])])).toEqual([]);
  });
});

describe('a recheck', () => {
  // Bedside handbook 3.16: severe in pregnancy, repeat within 15 min; severe without features, rest 5 min.
  test('is due from the end of the reading, until the pressure is taken again', () => {
    const severe = round(10, [166, 104], 0, PREGNANT);
    expect(projectDuties(severe).rechecks).toMatchObject([
      { code: 'recheck-pregnancy', fromAt: at(0), byAt: at(15) },
    ]);
    expect(projectLatest(severe).recheck).toEqual({ fromAt: at(0), byAt: at(15) });
    expect(projectDuties(round(10, [186, 104], 0, { features: [] })).rechecks).toMatchObject([
      { code: 'recheck-severe', fromAt: at(5), byAt: null },
    ]);
    expect(projectDuties([...severe, ...round(30, [118, 72], 12, PREGNANT)]).rechecks).toEqual([]);
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
});
