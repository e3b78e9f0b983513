import { NO_ROUND_FACTS } from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addedEvidence } from '../content/continuedSeries.js';
import type { StoredEntry } from '../entry/entry.js';
import { H1, homeEvidence, inForceBy, keptReading, seriesContentOf } from '../testing/series.js';
import { at, frame, idOf, kept } from '../testing/work.js';
import { chartSeries } from './chartSeries.js';
import { projectDuties } from './duties.js';
import { projectLatest } from './latest.js';

const ISH = inForceBy({ home: 'ish-2020' });
const JSH = inForceBy({ home: 'jsh-2019' });
const rulesOf = (version: string | null) =>
  [ISH, JSH].find(({ presetVersion }) => presetVersion === version) ?? null;

function series(id: number, readings = H1, minute = 0, more = {}): StoredEntry {
  const content = seriesContentOf(homeEvidence(readings, more), ISH);
  return kept(frame('series', content, { id: idOf(id), round: idOf(id + 500), sequence: id }), minute);
}

function decided(
  id: number,
  of: number,
  decision: 'out' | 'in' | 'by-rule',
  indexes: number[],
  minute: number,
) {
  const content = { series: idOf(of), decision, indexes, reason: 'arm was moving' };
  return kept(frame('series-decided', content, { id: idOf(id), sequence: id }), minute);
}

/** With what it saw in schema 2, without in schema 1. */
const closing = (id: number, of: number, conditions: string[], minute: number, saw?: number[]) =>
  kept(
    frame(
      'act-now-closed',
      {
        conditions,
        toldWhom: 'Dr Larch (invented)',
        toldAt: { at: at(minute), zone: 'UTC', asEntered: null },
        saidBack: 'will call',
        saw: saw?.map(idOf) ?? null,
      },
      { id: idOf(id), round: idOf(of + 500), sequence: id, schema: saw === undefined ? 1 : 2 },
    ),
    minute,
  );

const inError = (id: number, of: number, minute: number) =>
  kept(
    frame(
      'entered-in-error',
      { note: null },
      { id: idOf(id), sequence: id, amends: { entry: idOf(of), reason: 'wrong-person', text: null } },
    ),
    minute,
  );

// Out-of-office handbook 19, H1: day 1 dropped 136.5833 (n 24); everything 138.1071 (n 28).
test('a series stands under the protocol of its time, and beside it under the one in force', () => {
  const [one] = chartSeries([series(1)], rulesOf, JSH);
  expect(one).toMatchObject({ id: idOf(1), from: '2026-07-01', until: '2026-07-07', isInError: false });
  expect(one?.value.mean.systolic).toBeCloseTo(136.5833, 4);
  expect(one?.now.mean.systolic).toBeCloseTo(138.1071, 4);
  expect(one?.value).toBe(one?.atEntry);
});

test('a reading is taken out and put back by hand; the newest decision of each stands', () => {
  const used = (...more: StoredEntry[]) => {
    const [one] = chartSeries([...more, series(1)], rulesOf, ISH);
    return [one?.value.used, one?.decided.map(({ index, decision }) => `${index} ${decision}`)];
  };
  expect(used()).toEqual([24, []]);
  expect(used(decided(2, 1, 'out', [5, 6], 5))).toEqual([22, ['5 out', '6 out']]);
  expect(used(decided(2, 1, 'out', [5, 6], 5), decided(3, 1, 'by-rule', [5], 6))).toEqual([23, ['6 out']]);
  // A reading that the rule leaves out (day 1) is put in.
  expect(used(decided(2, 1, 'in', [1], 5))).toEqual([25, ['1 in']]);
  expect(used(decided(3, 1, 'out', [1], 6), decided(2, 1, 'in', [1], 5))).toEqual([24, ['1 out']]);
  // A decision that was entered in error decides nothing.
  expect(used(decided(2, 1, 'out', [5], 5), inError(9, 2, 7))).toEqual([24, []]);
});

describe('an alert of a series', () => {
  const severe = [...H1, keptReading('2026-07-05T08:00:00+01:00', '214/128 90')];
  const open = (...entries: StoredEntry[]) =>
    projectDuties(entries, rulesOf).actNow.map(({ condition, round, series: of }) => [condition, round, of]);
  const OPEN = [['severe-away', idOf(501), idOf(1)]];

  test('is open until whom was told is kept in its round, whatever a hand takes out', () => {
    expect(open(series(1, severe))).toEqual(OPEN);
    expect(open(series(1, severe), decided(2, 1, 'out', [29], 5))).toEqual(OPEN);
    expect(open(series(1, severe), closing(3, 1, ['very-low-pressure'], 5))).toEqual(OPEN);
    expect(open(series(1, severe), closing(3, 2, ['severe-away'], 5))).toEqual(OPEN);
    expect(open(series(1, severe), closing(3, 1, ['severe-away'], 5))).toEqual([]);
    expect(projectLatest([series(1, severe)], rulesOf).actNow).toBe(1);
  });

  test('says until when there are readings from away, and nothing of one that was entered in error', () => {
    const [one] = chartSeries([series(1, severe)], rulesOf, ISH);
    expect(one?.until).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(projectLatest([series(1, severe)], rulesOf).awayUntil).toBe(one?.until);
    expect(projectLatest([series(1, severe), inError(4, 1, 5)], rulesOf).awayUntil).toBeNull();
    expect(projectLatest([], rulesOf).awayUntil).toBeNull();
  });

  test('ends with the series that was entered in error, and comes again with other figures', () => {
    expect(open(series(1, severe), inError(4, 1, 5))).toEqual([]);
    const more = [...H1, keptReading('2026-07-05T08:00:00+01:00', '224/128 90')];
    const amended = {
      ...series(7, more, 9),
      round: idOf(501),
      amends: { entry: idOf(1), reason: 'typing-slip', text: null },
    } as StoredEntry;
    expect(open(series(1, severe), closing(3, 1, ['severe-away'], 5), amended)).toEqual(OPEN);
    expect(open(series(1, severe), amended, closing(3, 1, ['severe-away'], 10))).toEqual([]);
  });

  test('that was closed is open again for a severe reading of days that were added since, with its own figures', () => {
    const added = (readings: typeof H1, minute: number, id = 7, to = 1) =>
      ({
        ...series(id, readings, minute),
        round: idOf(501),
        amends: { entry: idOf(to), reason: 'other', text: 'more days' },
      }) as StoredEntry;
    const told = closing(3, 1, ['severe-away'], 5);
    const calm = [...severe, keptReading('2026-07-08T07:30:00+01:00', '138/86 74')];
    const again = [...calm, keptReading('2026-07-09T07:30:00+01:00', '200/124 88')];
    expect(open(series(1, severe), told, added(calm, 9))).toEqual([]);
    expect(open(series(1, severe), told, added(again, 9))).toEqual(OPEN);
    expect(open(series(1, severe), told, added(calm, 9), added(again, 12, 8, 7))).toEqual(OPEN);
    const { actNow } = projectDuties([series(1, severe), told, added(again, 9)], rulesOf);
    expect(actNow[0]?.figures).toEqual({ systolic: 200, diastolic: 124 });
    expect(open(series(1, severe), told, added(again, 9), closing(4, 1, ['severe-away'], 10))).toEqual([]);
    // Told of both at once; and the last one told of what was added alone.
    expect(open(series(1, severe), added(again, 3), told)).toEqual([]);
  });

  test('is closed for the entries that the telling names alone, whenever the server got it', () => {
    const added = (readings: typeof H1, minute: number) =>
      ({
        ...series(7, readings, minute),
        round: idOf(501),
        amends: { entry: idOf(1), reason: 'other', text: 'more days' },
      }) as StoredEntry;
    const again = added([...severe, keptReading('2026-07-09T07:30:00+01:00', '200/124 88')], 9);
    // Told without network of the first days, and sent after others were added.
    const late = (saw?: number[]) => open(series(1, severe), again, closing(4, 1, ['severe-away'], 20, saw));
    expect(late([1])).toEqual(OPEN);
    expect(late([1, 7])).toEqual([]);
    expect(late([9])).toEqual(OPEN);
    // In schema 1 the telling names nothing and goes by when it came.
    expect(late()).toEqual([]);
    // A clock of the server that stood behind takes nothing away from what it names.
    expect(open(series(1, severe, 10), closing(4, 1, ['severe-away'], 5, [1]))).toEqual([]);
  });

  // Bedside handbook 3.16: 160/110 in pregnancy; that nobody knew of it when the series came in hides nothing.
  test('is raised by what the record learns of that day', () => {
    const high = [keptReading('2026-07-05T08:00:00+01:00', '164/104 80')];
    const about = { about: { fact: 'pregnancy', weeks: 30 }, from: '2026-11-01', until: null, text: null };
    const fact = kept(frame('fact', about, { id: idOf(8), sequence: 8 }), 20);
    expect(open(series(1, high))).toEqual([]);
    expect(open(series(1, high), fact)).toEqual([['severe-in-pregnancy', idOf(501), idOf(1)]]);
  });
});

// Bedside handbook 3.16: 160/110 in pregnancy, to 42 days after the birth; the same pressure alerts by nothing else here.
describe('an alert of a pregnancy that ended', () => {
  const pregnant = { ...NO_ROUND_FACTS, arms: [], isPregnant: true };
  const after = { ...pregnant, isPregnant: false };
  const high = keptReading('2026-07-05T08:00:00+01:00', '164/104 80');
  const open = (...entries: StoredEntry[]) =>
    projectDuties(entries, rulesOf).actNow.map(({ condition, figures }) => [condition, figures]);
  const first = series(1, [high], 0, { facts: pregnant });
  const moreDays = (id: number, to: StoredEntry, typed: string, facts = after, minute = id) => {
    if (to.kind !== 'series') throw new Error('no series');
    const reading = keptReading(`2026-07-${10 + id}T08:00:00+01:00`, typed);
    const evidence = addedEvidence(to.content, homeEvidence([reading], { facts }));
    const amends = { entry: to.id, reason: 'other' as const, text: 'more days' };
    const more = { id: idOf(id), round: idOf(501), sequence: id, amends };
    return kept(frame('series', seriesContentOf(evidence, ISH), more), minute);
  };
  const ALERT = ['severe-in-pregnancy', { systolic: 164, diastolic: 104 }];

  test('stays open until it is closed, however many days are added', () => {
    const added = moreDays(7, first, '128/80 72');
    const again = moreDays(8, added, '126/80 72');
    expect(added.kind === 'series' && added.content.value.actNow).toEqual([]);
    expect(open(first)).toEqual([ALERT]);
    expect(open(first, added)).toEqual([ALERT]);
    expect(open(first, added, again)).toEqual([ALERT]);
    expect(projectLatest([first, added, again], rulesOf).actNow).toBe(1);
    const [one] = chartSeries([first, added, again], rulesOf, ISH);
    expect(one?.alerts.map(({ condition }) => condition)).toEqual(['severe-in-pregnancy']);
    expect(open(first, added, closing(9, 1, ['severe-in-pregnancy'], 20, [1, 7]))).toEqual([]);
    expect(open(first, closing(9, 1, ['severe-in-pregnancy'], 5, [1]), added, again)).toEqual([]);
  });

  test('raised by a later day that nobody was told of stays too', () => {
    const second = moreDays(7, first, '166/106 80', pregnant);
    const third = moreDays(8, second, '128/80 72');
    const told = closing(9, 1, ['severe-in-pregnancy'], 20, [1]);
    const SECOND = ['severe-in-pregnancy', { systolic: 166, diastolic: 106 }];
    expect(open(first, second, told)).toEqual([SECOND]);
    expect(open(first, second, third, told)).toEqual([SECOND]);
    expect(open(first, second, third, closing(9, 1, ['severe-in-pregnancy'], 20, [1, 7, 8]))).toEqual([]);
  });

  test('goes with the reading that raised it where that was put right, and with a series in error', () => {
    const calm = keptReading('2026-07-05T08:00:00+01:00', '154/94 80');
    const slip = {
      ...series(7, [calm], 9, { facts: after }),
      round: idOf(501),
      amends: { entry: idOf(1), reason: 'typing-slip', text: null },
    } as StoredEntry;
    expect(open(first, slip)).toEqual([]);
    expect(open(first, moreDays(7, first, '128/80 72'), inError(8, 7, 12))).toEqual([]);
  });

  test('is not raised by days after it: those are judged by their own', () => {
    const calm = series(1, [keptReading('2026-07-05T08:00:00+01:00', '128/80 70')], 0, { facts: pregnant });
    expect(open(calm, moreDays(7, calm, '164/104 80'))).toEqual([]);
  });
});

test('the order in which entries come changes nothing', () => {
  const all = [
    series(1),
    series(2, H1.slice(0, 8), 3),
    decided(3, 1, 'out', [5, 6], 5),
    decided(4, 1, 'in', [5], 5),
    decided(5, 2, 'by-rule', [1], 6),
    inError(6, 3, 9),
    closing(7, 1, ['severe-away'], 9),
  ];
  const wanted = chartSeries(all, rulesOf, ISH);
  expect(wanted).toHaveLength(2);
  fc.assert(
    fc.property(fc.shuffledSubarray(all, { minLength: all.length }), (shuffled) => {
      expect(chartSeries(shuffled, rulesOf, ISH)).toEqual(wanted);
    }),
    { numRuns: 30 },
  );
});

describe("a learner's series", () => {
  const learners = series(1, H1, 0, { status: 'preliminary' });
  const signed = (id: number, agrees: boolean, minute: number, agent = idOf(77)) => {
    const content = { signing: idOf(1), agrees, ownRound: null, note: 'seen' };
    const more = { id: idOf(id), round: idOf(501), sequence: id, agent, role: 'supervisor' as const };
    return kept(frame('countersigned', content, more), minute);
  };
  const standing = (...more: StoredEntry[]) => {
    const entries = [learners, ...more];
    const [one] = chartSeries(entries, rulesOf, ISH);
    return [one?.isPreliminary, projectDuties(entries).toCountersign];
  };

  test('is preliminary and waits for a supervisor until one agrees, and is alerted on all the same', () => {
    expect(standing()).toEqual([true, [idOf(501)]]);
    // Looked at and not relied on: it stays preliminary, and nothing more is asked of a supervisor.
    expect(standing(signed(2, false, 5))).toEqual([true, []]);
    expect(standing(signed(2, true, 5))).toEqual([false, []]);
    expect(standing(signed(2, true, 5), signed(3, false, 6))).toEqual([true, []]);
    expect(projectLatest([learners]).toCountersign).toBe(1);
  });

  test('amended by its learner after the supervisor agreed is preliminary again; a final one never was', () => {
    const content = seriesContentOf(homeEvidence(H1.slice(0, 20), { status: 'preliminary' }), ISH);
    const amends = { entry: idOf(1), reason: 'other' as const, text: 'more days' };
    const again = kept(frame('series', content, { id: idOf(9), round: idOf(501), sequence: 9, amends }), 9);
    expect(standing(signed(2, true, 5), again)).toEqual([true, [idOf(501)]]);
    expect(standing(signed(2, false, 5), again)).toEqual([true, [idOf(501)]]);
    expect(chartSeries([series(1)], rulesOf, ISH)[0]?.isPreliminary).toBe(false);
  });
});
