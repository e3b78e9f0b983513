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
});

test('an unknown field is refused by its name', () => {
  const made = read('{bloodpressure}', [pulse, signing(9, [pulse])]);
  const [problem] = made.ok ? [] : made.refusals.map((one) => WORDS.problem(one));
  expect(problem?.message).toMatch(/^\{bloodpressure\} is not known here/);
});
