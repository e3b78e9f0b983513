import { expect, test } from 'vitest';
import { parseRun } from './parseRun.js';
import { DEFAULT_DEFLATION_RULES } from './rules.js';

const FIRST = { what: 'first sound', mmHg: 148, atSeconds: 13 };
const LAST = { what: 'last sound', mmHg: 92, atSeconds: 35 };
const HEARD = {
  method: 'auscultation',
  gaugeStepMmHg: 2,
  pulsePerMinute: 72,
  palpated: { lostMmHg: 150, backMmHg: 146 },
  peak: { mmHg: 180, atSeconds: 0 },
  moments: [FIRST, LAST],
};
const FELT = {
  method: 'palpation',
  palpated: { lostMmHg: 126, backMmHg: 122 },
  peak: { mmHg: 156, atSeconds: 0 },
};

/** `field code` of each refusal, in the order reported. */
function refused(input: unknown): string[] {
  const parsed = parseRun(input);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
}

test('a whole run is read as it was done', () => {
  expect(parseRun(HEARD)).toEqual({ ok: true, value: { ...HEARD, reinflated: false } });
});

test('numbers may come as text, and what is absent is not known', () => {
  const input = { method: 'auscultation', moments: [{ what: 'first sound', mmHg: '148' }, LAST] };
  expect(parseRun(input)).toEqual({
    ok: true,
    value: {
      method: 'auscultation',
      gaugeStepMmHg: 2,
      pulsePerMinute: null,
      palpated: { lostMmHg: null, backMmHg: null },
      peak: null,
      reinflated: false,
      moments: [{ what: 'first sound', mmHg: 148, atSeconds: null }, LAST],
    },
  });
  const rules = { ...DEFAULT_DEFLATION_RULES, gaugeStepMmHg: 1 };
  expect(parseRun(input, rules)).toMatchObject({ value: { gaugeStepMmHg: 1 } });
});

test('by palpation the return of the pulse may stand in either place, or in both alike', () => {
  // docs/conventions.md section 6: one fact; either will do, two different values are refused.
  const moment = { what: 'pulse back', mmHg: 122, atSeconds: null };
  for (const input of [
    FELT,
    { ...FELT, moments: [moment] },
    { ...FELT, palpated: null, moments: [moment] },
  ]) {
    expect(parseRun(input)).toMatchObject({ ok: true, value: { moments: [moment] } });
  }
  expect(refused({ ...FELT, moments: [{ ...moment, mmHg: 124 }] })).toEqual([
    '/palpated/backMmHg contradicts',
  ]);
});

test('in auscultation the palpated return is the earlier estimate and contradicts nothing', () => {
  expect(refused({ ...HEARD, palpated: { backMmHg: 200 } })).toEqual([]);
});

const moments = (...list: unknown[]) => ({ ...HEARD, moments: list });

test.each<[string, unknown, string[]]>([
  ['nothing', {}, ['/method missing', '/moments missing']],
  ['no moments', { ...HEARD, moments: [] }, ['/moments missing', '/moments missing']],
  ['no last sound', moments(FIRST), ['/moments missing']],
  ['no first sound', moments(LAST), ['/moments missing']],
  ['no return of the pulse', { ...FELT, palpated: { lostMmHg: 126 } }, ['/moments missing']],
  ['moments that are no list', { ...HEARD, moments: 'x' }, ['/moments missing']],
  ['an unknown method', { ...HEARD, method: 'ear' }, ['/method unknown-id']],
  ['an unknown moment', moments(FIRST, LAST, { what: 'K4', mmHg: 90 }), ['/moments/2/what unknown-id']],
  ['an unknown field', { ...HEARD, arm: 'R' }, ['/arm unknown-field']],
  ['no gauge value', moments({ what: 'first sound' }, LAST), ['/moments/0/mmHg missing']],
  ['a blank gauge value', moments({ ...FIRST, mmHg: '' }, LAST), ['/moments/0/mmHg missing']],
  ['a comma', moments({ ...FIRST, mmHg: '148,5' }, LAST), ['/moments/0/mmHg not-a-number']],
  ['off the scale', moments(FIRST, { ...LAST, mmHg: -2 }), ['/moments/1/mmHg out-of-range']],
  ['a first sound at 0', moments({ ...FIRST, mmHg: 0 }, LAST), ['/moments/0/mmHg out-of-range']],
  ['a peak of 301', { ...HEARD, peak: { mmHg: 301 } }, ['/peak/mmHg out-of-range']],
  ['a peak of 300', { ...HEARD, peak: { mmHg: 300 } }, []],
  ['a peak without a value', { ...HEARD, peak: { atSeconds: 0 } }, ['/peak/mmHg missing']],
  ['no graduation', { ...HEARD, gaugeStepMmHg: 0 }, ['/gaugeStepMmHg out-of-range']],
  ['a graduation of 10', { ...HEARD, gaugeStepMmHg: 10 }, []],
  ['a graduation of 11', { ...HEARD, gaugeStepMmHg: 11 }, ['/gaugeStepMmHg out-of-range']],
  ['no pulse', { ...HEARD, pulsePerMinute: 0 }, ['/pulsePerMinute out-of-range']],
  ['a pulse of 400', { ...HEARD, pulsePerMinute: 400 }, []],
  ['a pulse of 401', { ...HEARD, pulsePerMinute: 401 }, ['/pulsePerMinute impossible']],
  [
    'a time before the start',
    moments({ ...FIRST, atSeconds: -1 }, LAST),
    ['/moments/0/atSeconds out-of-range'],
  ],
  ['a switch that is neither', { ...HEARD, reinflated: 'maybe' }, ['/reinflated unknown-id']],
  // Bedside handbook 8, C046 (derived).
  [
    'diastolic above',
    moments({ ...FIRST, mmHg: 80 }, { ...LAST, mmHg: 120 }),
    ['/moments/1/mmHg not-below-systolic'],
  ],
  ['diastolic equal', moments(FIRST, { ...LAST, mmHg: 148 }), ['/moments/1/mmHg not-below-systolic']],
  ['diastolic just below', moments(FIRST, { ...LAST, mmHg: 146 }), []],
  [
    'muffled above the first',
    moments(FIRST, { what: 'muffled', mmHg: 150 }, LAST),
    ['/moments/1/mmHg not-below-systolic'],
  ],
  [
    'muffled below the last',
    moments(FIRST, { what: 'muffled', mmHg: 90 }, LAST),
    ['/moments/2/mmHg out-of-order'],
  ],
  ['muffled as low as the last', moments(FIRST, { what: 'muffled', mmHg: 92 }, LAST), []],
  ['first sound above the peak', { ...HEARD, peak: { mmHg: 146 } }, ['/moments/0/mmHg out-of-order']],
  ['first sound at the peak', { ...HEARD, peak: { mmHg: 148 } }, []],
  [
    'pulse back above the peak',
    { ...FELT, peak: { mmHg: 120 } },
    ['/palpated/lostMmHg contradicts', '/palpated/backMmHg out-of-order'],
  ],
  ['times that fall', moments(FIRST, { ...LAST, atSeconds: 12 }), ['/moments/1/atSeconds out-of-order']],
  [
    'times that stand still',
    moments(FIRST, { ...LAST, atSeconds: 13 }),
    ['/moments/1/atSeconds out-of-order'],
  ],
  [
    'a first sound before the peak',
    { ...HEARD, peak: { mmHg: 180, atSeconds: 13 } },
    ['/moments/0/atSeconds out-of-order'],
  ],
  [
    'a last sound told first',
    moments(LAST, FIRST),
    ['/moments/0/what out-of-order', '/moments/1/what out-of-order', '/moments/1/atSeconds out-of-order'],
  ],
  [
    'two first sounds',
    moments(FIRST, { ...FIRST, mmHg: 146, atSeconds: 14 }, LAST),
    ['/moments/1/what repeated'],
  ],
  [
    'muffling twice',
    moments(FIRST, { what: 'muffled', mmHg: 96 }, { what: 'muffled', mmHg: 94 }, LAST),
    ['/moments/2/what repeated'],
  ],
  [
    'muffling after the end',
    moments(FIRST, LAST, { what: 'muffled', mmHg: 90 }),
    ['/moments/2/what out-of-order'],
  ],
  [
    'a moment of another method',
    moments(FIRST, LAST, { what: 'pulse back', mmHg: 90 }),
    ['/moments/2/what contradicts'],
  ],
  ['sounds by palpation', { ...FELT, moments: [FIRST] }, ['/moments/0/what contradicts']],
  [
    'muffling on a display',
    { ...moments(FIRST, { what: 'muffled', mmHg: 96 }, LAST), method: 'device' },
    ['/moments/1/what contradicts'],
  ],
])('%s', (_what, input, refusals) => {
  expect(refused(input)).toEqual(refusals);
});

test('all that is wrong is reported together, in the order of the fields, unknown ones last', () => {
  const input = {
    extra: 1,
    moments: [
      { what: 'first sound', mmHg: 'x', atSeconds: 'y' },
      { ...LAST, mmHg: 400 },
    ],
    peak: { mmHg: 'high' },
    palpated: { lostMmHg: 'some', at: 2 },
    pulsePerMinute: 'fast',
    gaugeStepMmHg: -2,
    method: '',
  };
  expect(refused(input)).toEqual([
    '/method missing',
    '/gaugeStepMmHg out-of-range',
    '/pulsePerMinute not-a-number',
    '/palpated/at unknown-field',
    '/palpated/lostMmHg not-a-number',
    '/peak/mmHg not-a-number',
    '/moments/0/mmHg not-a-number',
    '/moments/0/atSeconds not-a-number',
    '/moments/1/mmHg out-of-range',
    '/extra unknown-field',
  ]);
});
