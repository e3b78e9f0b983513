import { expect, test } from 'vitest';
import { BLANK } from './blank.js';
import { SCENARIO_LIMITS } from './limits.js';
import { parseScenario } from './parseScenario.js';
import { SCENARIOS } from './scenarios.js';

const whole = (some: object) => JSON.parse(JSON.stringify({ ...BLANK, ...some }));
const fieldsOf = (input: unknown) => {
  const parsed = parseScenario(input);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
};

test('each built-in scenario comes back from its JSON as it was', () => {
  for (const one of SCENARIOS) expect(parseScenario(whole(one))).toEqual({ ok: true, value: one });
});

// docs/conventions.md section 9: a reader accepts every older schema number, and a new choice has the next one.
test('the heart of independent intervals is of the second number; one of the first is read as one of it', () => {
  expect(BLANK.schema).toBe(2);
  expect(parseScenario(whole({ schema: 1 }))).toEqual({ ok: true, value: BLANK });
  expect(fieldsOf(whole({ schema: 3 }))).toEqual(['/schema unknown-id']);
});

test('what may be left out is drawn or has no effect', () => {
  const short = {
    schema: 1,
    id: 'short',
    ageYears: 40,
    sex: 'm',
    rhythm: { ratePerMinute: 70 },
    breathing: { ratePerMinute: 14 },
    systolic: 120,
    diastolic: 80,
    armCm: 30,
  };
  const parsed = parseScenario(short);
  expect(parsed.ok && parsed.value.soundDb).toBe(null);
  expect(parsed.ok && parsed.value.rhythm.kind).toBe('sinus');
});

test('everything wrong is named by its field, all at once', () => {
  expect(
    fieldsOf(
      whole({
        schema: 3,
        id: 'Not An Id',
        rhythm: { ...BLANK.rhythm, kind: 'waltz', ratePerMinute: '7o' },
        gap: { topMmHg: 100, bottomMmHg: 110 },
        armCm: null,
        colour: 'red',
        standing: { oneMinute: { systolic: 100 }, pulsePerMinute: 80 },
      }),
    ).sort(),
  ).toEqual(
    [
      '/schema unknown-id',
      '/id impossible',
      '/rhythm/kind unknown-id',
      '/rhythm/ratePerMinute not-a-number',
      '/gap/bottomMmHg out-of-order',
      '/armCm missing',
      '/colour unknown-field',
      '/standing/oneMinute/diastolic missing',
      '/standing/threeMinutes missing',
    ].sort(),
  );
  expect(fieldsOf([1, 2])).toContain(' missing');
  expect(fieldsOf(null)).toContain('/systolic missing');
});

test.each(
  (
    [
      ['systolic', 'systolic'],
      ['armCm', 'armCm'],
      ['soundDb', 'soundDb'],
      ['noiseDbA', 'noiseDbA'],
      ['ageYears', 'ageYears'],
    ] as const
  ).map(([key, limit]) => [key, ...SCENARIO_LIMITS[limit]] as const),
)('%s from %d to %d, both taken', (key, low, high) => {
  const levels = { diastolic: 30, gap: null };
  expect(fieldsOf(whole({ ...levels, [key]: low }))).toEqual([]);
  expect(fieldsOf(whole({ ...levels, [key]: high }))).toEqual([]);
  expect(fieldsOf(whole({ ...levels, [key]: low - 0.1 }))).toContain(`/${key} out-of-range`);
  expect(fieldsOf(whole({ ...levels, [key]: high + 0.1 }))).toEqual([`/${key} out-of-range`]);
});

test('a diastolic keeps its distance from the systolic', () => {
  expect(fieldsOf(whole({ systolic: 90, diastolic: 82 }))).toEqual([]);
  expect(fieldsOf(whole({ systolic: 90, diastolic: 82.1 }))).toEqual(['/diastolic not-below-systolic']);
});

test('a rhythm says what its kind cannot do without', () => {
  const rhythm = { ...BLANK.rhythm, kind: 'alternans' };
  expect(fieldsOf(whole({ rhythm }))).toEqual(['/rhythm/alternansMmHg missing']);
  expect(fieldsOf(whole({ rhythm: { ...rhythm, alternansMmHg: 14 } }))).toEqual([]);
  expect(fieldsOf(whole({ breathing: { kind: 'cheyne-stokes', ratePerMinute: 22 } }))).toEqual([
    '/breathing/cycleSeconds missing',
  ]);
});

test('how a person comes is left out where it is not said, and each part is yes or no', () => {
  const whole = { ...SCENARIOS[0], preparation: { hadCaffeine: true } };
  const read = parseScenario(whole);
  expect(read.ok && read.value.preparation).toEqual({
    hadCaffeine: true,
    hadNicotine: false,
    isCold: false,
    hasTightSleeve: false,
    isOverSleeve: false,
    isCuffLoose: false,
  });
  const without = parseScenario(SCENARIOS[0]);
  expect(without.ok && 'preparation' in without.value).toBe(false);
  const wrong = parseScenario({ ...SCENARIOS[0], preparation: { isCold: 'yes', hadTea: true } });
  expect(wrong.ok ? [] : wrong.refusals.map(({ field, code }) => `${field} ${code}`).sort()).toEqual([
    '/preparation/hadTea unknown-field',
    '/preparation/isCold unknown-id',
  ]);
});

test('what a good observer reports may be left out; what is no such thing is named by its place in the list', () => {
  const kept = parseScenario(whole({ report: ['gap', 'pulse-rate'] }));
  expect(kept.ok && kept.value.report).toEqual(['gap', 'pulse-rate']);
  const none = parseScenario(whole({}));
  expect(none.ok && 'report' in none.value).toBe(false);
  expect(fieldsOf(whole({ report: ['gap', 'a-hunch', 'gap'] }))).toEqual([
    '/report/1 unknown-id',
    '/report/2 repeated',
  ]);
  expect(fieldsOf(whole({ report: 'gap' }))).toEqual(['/report impossible']);
});
