import {
  NO_ROUND_FACTS,
  parseRun,
  presetProtocol,
  protocolVersion,
  UNKNOWN_RUN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import {
  chartRound,
  chartRun,
  type Entry,
  GENERAL_RULES,
  inForceUnder,
  NOTHING_CHOSEN,
  projectChart,
  type RunPlace,
} from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { AGENT, AT, DEVICE, ID, PERSON } from '../round/testing.js';
import { openText, openTitles, type PrintedNote, printedNotes, printedResults } from './printedNotes.js';

const words = wordsFor('en-GB');
const linesOf = (notes: readonly PrintedNote[]) => notes.map(({ of, text }) => `${of}: ${text}`);
const BY = { rulesOf: GENERAL_RULES, birthDate: null };
const SITTING: RunPlace = {
  ...{ site: 'upper-arm', side: 'right', posture: 'sit', armCm: null, override: null },
  cuff: null,
};

function entry(id: number, kind: 'run' | 'round', content: object): Entry {
  const at = AT(id);
  return {
    ...{ frame: 1, id: ID(id), book: 'care', kind, schema: 5, person: PERSON, round: ID(50), session: null },
    ...{ agent: AGENT, role: 'observer', device: DEVICE, sequence: id, measuredAt: at, writtenAt: at.at },
    ...{ amends: null, content },
  } as unknown as Entry;
}

function heard(id: number, systolic: number, diastolic: number, place: Partial<RunPlace>, minutes?: number) {
  const moments = [
    { what: 'first sound', mmHg: systolic },
    { what: 'last sound', mmHg: diastolic },
  ];
  const read = parseRun({
    method: 'auscultation',
    moments,
    pulsePerMinute: minutes === undefined ? 70 : null,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const circumstances = { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: minutes ?? null };
  const done = {
    run: read.value,
    place: { ...SITTING, ...place },
    circumstances,
    override: null,
    note: null,
  };
  return entry(id, 'run', chartRun(done, NOTHING_CHOSEN, 'evenfall test'));
}

function signed(runs: readonly Entry[], inForce = NOTHING_CHOSEN) {
  const evidence = { exceptions: null, features: null, unwell: null, facts: { ...NO_ROUND_FACTS, arms: [] } };
  const signs = [{ sign: 'pressure' as const, entries: runs.map(({ id }) => id) }];
  const of = { status: 'final' as const, signs, note: null, evidence };
  const signing = entry(40, 'round', chartRound(of, runs, inForce, 'evenfall test'));
  const kept = [...runs, signing].map((one) => ({ ...one, recordedAt: one.writtenAt }));
  const round = projectChart(kept as never).rounds[0];
  if (round === undefined) throw new Error('no round');
  return round;
}

// Bedside handbook 3.14: a fall of 20 mmHg of the systolic within three minutes of standing.
test('the fall on standing stands on paper with what to do, as it does on the screen', () => {
  const round = signed([
    heard(1, 140, 86, { posture: 'lie' }),
    heard(2, 118, 78, { posture: 'stand' }, 1),
    heard(3, 124, 80, { posture: 'stand' }, 3),
  ]);
  const said = linesOf(printedResults(round, BY, words)).join('\n');
  expect(said).toContain('Lying and standing');
  expect(said).toMatch(/22/);
});

// Bedside handbook 5.2: a systolic of 90 or under is very low; a category of high pressures says nothing of it.
test('no category stands on paper as if all were well beside a low pressure', () => {
  const chosen = presetProtocol({ category: 'acc-aha-2017', readings: 'acc-aha-2017' });
  if (!chosen.ok) throw new Error(JSON.stringify(chosen.refusals));
  const inForce = inForceUnder(chosen.value, protocolVersion(chosen.value));
  const saidOf = (...pressures: readonly [number, number][]) => {
    const runs = pressures.map(([systolic, diastolic], at) => heard(at + 1, systolic, diastolic, {}));
    return linesOf(printedResults(signed(runs, inForce), { ...BY, rulesOf: () => inForce }, words)).join(
      '\n',
    );
  };
  expect(saidOf([88, 52], [86, 50])).toMatch(/^Category: No category of high pressure is given/m);
  expect(saidOf([88, 52], [86, 50])).not.toContain('Normal');
  expect(saidOf([112, 72], [110, 70])).toContain('Normal');
});

// Bedside handbook 3.2: an arm of 36 cm takes a large adult cuff, and a small one reads too high.
test('a cuff that is too small is said once, after every reading that it was used for', () => {
  const cuff = { scheme: 'aha-2005', id: 'adult' } as const;
  const place = { armCm: 36, cuff };
  const round = signed([heard(1, 148, 92, place), heard(2, 144, 90, place)]);
  const found = linesOf(printedNotes(round, BY, words)).filter((text) => /cuff.*small/.test(text));
  expect(found).toEqual([expect.stringMatching(/^Pressure 148\/92, 144\/90: /)]);
});

test('what several readings lack is said once, after all of them', () => {
  const round = signed([
    heard(1, 140, 86, {}),
    heard(2, 118, 78, { posture: 'stand' }, 1),
    heard(3, 124, 80, { posture: 'stand' }, 3),
  ]);
  const found = linesOf(printedNotes(round, BY, words)).filter((text) =>
    text.includes('No pulse was counted'),
  );
  expect(found).toEqual([expect.stringMatching(/^Pressure 118\/78, 124\/80: /)]);
});

// Bedside handbook 3.10 (the gap between two readings), 3.17: at 6 years low under 82, an adult at 90 or under (3.15: at once).
test('on paper a round that came without a signing goes by the age that the birth date says', () => {
  const came = [heard(1, 86, 50, {}), heard(2, 86, 50, {})].map((one, at) => ({
    ...one,
    measuredAt: { ...one.measuredAt, at: `2026-11-25T09:00:0${1 + 5 * at}.000Z` },
    recordedAt: one.writtenAt,
  }));
  const round = projectChart(came as never).rounds[0];
  if (round === undefined) throw new Error('no round');
  const soon = (birthDate: string | null) =>
    linesOf(printedNotes(round, { ...BY, birthDate }, words)).filter((text) => /came 5 s after/.test(text));
  expect(soon('2020-03-01')).toHaveLength(1);
  expect(soon('1970-03-01')).toEqual([]);
});

test('an alert that is open says what to do', () => {
  const figures = { systolic: 182, diastolic: 96 };
  expect(openText({ condition: 'severe-in-pregnancy', figures }, words)).toMatch(
    /^Severe pressure in pregnancy: Act now: not closed\. 182\/96 in pregnancy is severe: call obstetrics urgently/,
  );
});

test('beside its round an open alert is named, and that nobody closed it', () => {
  const open = [{ condition: 'severe-in-pregnancy' }, { condition: 'very-low-pressure' }] as const;
  expect(openTitles(open, words)).toBe(
    'Severe pressure in pregnancy, Very low pressure: Act now: not closed.',
  );
});
