import { projectChart } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import {
  amending,
  count,
  FAILED_GAUGE,
  heard,
  idOf,
  type Made,
  made,
  ORLA,
  run,
  signing,
  UNDER_PROTOCOL,
  WREN,
} from '../../testing/charts.js';
import type { TextOf } from './roundFields.js';
import { broughtTemplate, roundText } from './roundText.js';

const WORDS = wordsFor('en');

type Since = { readonly now?: string; readonly gauges?: TextOf['gauges'] };

function read(template: string, all: readonly Made[], since: Since = {}) {
  const { rounds } = projectChart(all.map(({ entry }) => entry));
  const [round] = rounds;
  if (round === undefined) throw new Error('no round');
  const about = {
    round,
    rounds,
    identity: ORLA,
    agents: [WREN],
    rulesOf: (version: string | null) => (version === null ? null : UNDER_PROTOCOL),
    words: WORDS,
    dayText: (date: string) => date,
    now: '2026-11-25T10:00:00+01:00',
    gauges: [],
    ...since,
  };
  return roundText(template, about, []);
}

function text(template: string, all: readonly Made[], since: Since = {}): string {
  const made = read(template, all, since);
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

const pulse = count(1, { n: 19, windowSeconds: 15 });

// What is urgent is said before anything else of the round, and what is past is late (common practice, no source).
describe('what is urgent comes first', () => {
  const low = [
    run(2, heard(84, 50), { inForce: UNDER_PROTOCOL }),
    run(3, heard(86, 52), { inForce: UNDER_PROTOCOL }),
  ];
  const all = [pulse, ...low, signing(9, [pulse, ...low], { inForce: UNDER_PROTOCOL })];

  test('in one line and in the paragraph: who it is, the alert, when it is due, and only then the numbers', () => {
    const line = text(broughtTemplate('line', WORDS), all);
    expect(line).toMatch(
      /^Orla.* number -0001\. Act now, nobody is noted as told yet: .*\. Pressure due again .*\. 2026-11-25 10:09: /,
    );
    const lines = text(broughtTemplate('handover', WORDS), all).split('\n');
    expect(lines.slice(0, 5)).toEqual([
      expect.stringMatching(/^Orla/),
      expect.stringMatching(/^Act now: A systolic of 84 is very low/),
      expect.stringMatching(/^Not closed: /),
      expect.stringMatching(/^Pressure due again /),
      expect.stringMatching(/^2026-11-25, 10:09, by /),
    ]);
  });

  test('a time that has passed is late, by how much, at the time of the text as the clock of the round has it', () => {
    const since = { now: '2026-11-25T12:19:30Z' };
    const said = text('{again}', all, since);
    expect(said.split('\n')[0]).toBe(
      'Pressure was due again by 10:04 (unwell, or very low): late by 3 hours at 13:19.',
    );
  });

  test('one without an end is due since its time has come, and only then', () => {
    const severe = [run(2, heard(192, 112), { inForce: UNDER_PROTOCOL })];
    const round = [...severe, signing(9, severe, { inForce: UNDER_PROTOCOL })];
    const said = (now: string) => text('{again}', round, { now }).split('\n')[0];
    expect(said('2026-11-25T10:00:00+01:00')).toMatch(/^Pressure due again from 10:07 /);
    expect(said('2026-11-25T10:40:00+01:00')).toMatch(
      /^Pressure has been due again since 10:07 .*: for 33 minutes at 10:40\.$/,
    );
  });
});

test('an amended value is called amended, with what it was; its pulse is nowhere said as it was before', () => {
  const under = { inForce: UNDER_PROTOCOL };
  const reading = run(2, { ...heard(148, 92), pulsePerMinute: 76 }, under);
  const all = [pulse, reading, signing(9, [pulse, reading], under)];
  const amended = [
    ...all,
    count(11, { n: 83, windowSeconds: 60 }, amending(1)),
    run(12, { ...heard(138, 92), pulsePerMinute: 76 }, { ...amending(2), ...under }),
  ];
  expect(text('{pressure} mmHg, pulse {pulse}', amended)).toBe(
    '138/92 (amended, was 148/92) mmHg, pulse 83 (amended, was 76)',
  );
  const moved = [...all, run(12, { ...heard(148, 92), pulsePerMinute: 76 }, { ...amending(2), ...under })];
  expect(text('{pressure}', moved)).toBe('148/92 (amended)');
});

describe('a reading from a gauge that failed a check', () => {
  const gauge = FAILED_GAUGE.id;
  const since = { gauges: [FAILED_GAUGE] };
  const said = (template: string, all: readonly Made[]) => text(template, all, since);

  test('says so beside its number and beside a mean of it; one of another gauge does not', () => {
    const one = run(1, heard(137, 77), { gauge });
    const other = run(2, heard(131, 75));
    expect(said('{pressure}', [one, signing(9, [one])])).toBe(
      '137/77 (in doubt: read from Gauge 3, a gauge that failed a check)',
    );
    expect(said('{pressure}', [other, signing(9, [other])])).toBe('131/75');
    const readings = [heard(150, 92), heard(146, 90), heard(142, 88)].map((numbers, at) =>
      run(at + 1, numbers, { gauge, inForce: UNDER_PROTOCOL }),
    );
    const all = [...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })];
    expect(said('{pressure} mmHg', all)).toBe(
      '144/89 (in doubt: read from Gauge 3, a gauge that failed a check) mmHg',
    );
  });
});

test('a learner’s round that a supervisor did not rely on says so, and why', () => {
  const learners = [pulse, signing(9, [pulse], { status: 'preliminary' })];
  const seen = made(
    20,
    'countersigned',
    { signing: idOf(9), agrees: false, ownRound: null, note: 'Counted over a sleeve.' },
    { round: learners[0]?.entry.round ?? idOf(1), role: 'supervisor', agent: idOf(9010) },
  );
  expect(text('{pulse}', [...learners, seen])).toBe(
    'Seen by a supervisor, and not relied on (Counted over a sleeve.): 76',
  );
  // Of the number that was put right since no supervisor has said anything.
  const right = count(30, { n: 20, windowSeconds: 15 }, amending(1));
  expect(text('{pulse}', [...learners, seen, right])).toBe(
    'Preliminary, not countersigned: 80 (amended, was 76)',
  );
});

test('values that nobody signed stay said where a supervisor relied on nothing of the round', () => {
  const signed = [pulse, signing(9, [pulse], { status: 'preliminary' })];
  const seen = made(
    20,
    'countersigned',
    { signing: idOf(9), agrees: false, ownRound: null, note: 'Counted over a sleeve.' },
    { round: signed[0]?.entry.round ?? idOf(1), role: 'supervisor', agent: idOf(9010) },
  );
  const later = count(30, { n: 20, windowSeconds: 15 });
  expect(text('{pulse}', [...signed, seen, later])).toBe(
    'Not signed, Seen by a supervisor, and not relied on (Counted over a sleeve.): 76, 80',
  );
});

test('where the gauges are not known a reading of one of them is not said as if it were fine', () => {
  const reading = run(2, heard(148, 92), { gauge: idOf(7001) });
  const alone = run(2, heard(148, 92));
  // Not known: no list, as yet, or one of another place, which the gauge is not in.
  for (const gauges of [null, [FAILED_GAUGE]]) {
    const said = (one: Made) => text('{pressure}', [one, signing(9, [one])], { gauges });
    expect(said(reading)).toBe('148/92 (whether its gauge failed a check is not known here)');
    expect(said(alone)).toBe('148/92');
  }
});

// Bedside handbook 3.11: a category is of an average of readings; one reading is no average.
test('a category says where it rests on no average', () => {
  const roundOf = (...pressures: readonly (readonly [number, number])[]) => {
    const readings = pressures.map(([systolic, diastolic], at) =>
      run(at + 2, heard(systolic, diastolic), { inForce: UNDER_PROTOCOL }),
    );
    return [...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })];
  };
  expect(text('{category}', roundOf([150, 92]))).toBe('Hypertension range, by one reading');
  expect(text('{category}', roundOf([150, 92], [146, 90], [142, 88]))).toBe('Hypertension range');
  expect(text(broughtTemplate('letter', WORDS), roundOf([150, 92]))).toContain(
    ' Category: Hypertension range, by one reading.',
  );
});

test('an unknown field is refused by its name', () => {
  const made = read('{bloodpressure}', [pulse, signing(9, [pulse])]);
  const [problem] = made.ok ? [] : made.refusals.map((one) => WORDS.problem(one));
  expect(problem?.message).toMatch(/^\{bloodpressure\} is not known here/);
});
