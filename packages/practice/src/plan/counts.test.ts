import { expect, test } from 'vitest';
import { type Countable, countableOf, countErrorsOf } from './counts.js';
import { type PlanProtocol, parsePlanProtocol, planProtocol } from './planProtocol.js';
import type { CountResultOf } from './planResult.js';
import { breathingAt, subjectOf } from './population.js';
import { runPlan } from './runPlan.js';

const tried = (some: Partial<PlanProtocol>, other: Partial<PlanProtocol>, people = 1600) => {
  const result = runPlan({
    protocol: planProtocol({ readings: 1, ...some }),
    against: planProtocol({ readings: 1, ...other }),
    people,
    seed: 5,
  });
  if (result?.against == null || result.paired === null) throw new Error('not tried');
  return { first: result.protocol.counts, second: result.against.counts, paired: result.paired.counts };
};
const sdOf = ({ sd }: CountResultOf) => sd ?? Number.NaN;
const near = (wanted: number, { bias, standardErrors }: CountResultOf) =>
  expect(Math.abs((bias ?? Number.NaN) - wanted)).toBeLessThan(4 * (standardErrors.bias ?? Number.NaN));

// Bedside handbook 1.4: a clock started on a beat that is called 0 is off by -30/T on average, called 1 by +30/T.
test('a clock started on a beat: called zero two too few in 15 s, called one two too many', () => {
  const { first, second, paired } = tried(
    { pulseWindowSeconds: 15, countClock: 'beat', countFirst: 0 },
    { pulseWindowSeconds: 15, countClock: 'beat', countFirst: 1 },
  );
  near(-2, first.pulse.regular);
  near(2, second.pulse.regular);
  // The same people, and the same moment: one beat, which is 4 a minute, in each of them.
  expect(paired.pulse?.bias.mean).toBeCloseTo(-4, 9);
  expect(paired.pulse?.bias.standardError).toBeCloseTo(0, 6);
});

// The same table: started at any moment and called one it is off by nothing, called zero by -60/T.
test('a clock started at any moment: called one right on average, called zero four too few in 15 s', () => {
  const { first, second } = tried({ pulseWindowSeconds: 15 }, { pulseWindowSeconds: 15, countFirst: 0 });
  near(0, first.pulse.regular);
  near(-4, second.pulse.regular);
});

let windows: ReturnType<typeof tried> | null = null;
/** Pulse and breaths of many, by windows of 15 s and of 30 s. */
const byWindow = () => {
  windows ??= tried(
    { pulseWindowSeconds: 15, breathsWindowSeconds: 15 },
    { pulseWindowSeconds: 30, breathsWindowSeconds: 30 },
    8000,
  );
  return windows;
};

// Physiology handbook 5, perfect counter from a random start: SD 1.41 in 15 s and .88 in 30 s for a steady pulse of 72, 4.60 and 3.14
// in fibrillation of 81. A pulse here wanders too, and the irregular ones are fibrillation and early beats together.
test('a longer window scatters less, and an irregular pulse more than a regular one', () => {
  const { first, second, paired } = byWindow();
  expect(sdOf(first.pulse.regular)).toBeGreaterThan(1.41);
  expect(sdOf(first.pulse.regular)).toBeLessThan(1.41 * 2);
  expect(sdOf(second.pulse.regular)).toBeGreaterThan(0.88);
  expect(sdOf(second.pulse.regular)).toBeLessThan(0.88 * 2.4);
  expect(sdOf(first.pulse.irregular)).toBeGreaterThan(sdOf(first.pulse.regular));
  expect(sdOf(first.pulse.irregular)).toBeLessThan(4.6 * 1.25);
  expect(first.pulse.within4).toBeLessThan(second.pulse.within4 ?? 0);
  const { mean, standardError } = paired.pulse?.size ?? { mean: 0, standardError: 1 };
  expect(mean / standardError).toBeGreaterThan(4);
  const groups = [first.pulse.regular, first.pulse.slow, first.pulse.irregular];
  expect(groups.every(({ people }) => people > 15)).toBe(true);
  expect(groups.reduce((sum, { people }) => sum + people, 0)).toBe(first.pulse.people);
});

// The same table: 16 breaths, CV .208: 2.26, 1.40, .92 in 15, 30 and 60 s; of breathing that comes and goes 5.8 in 30 s.
test('breaths by window', () => {
  const { first, second } = byWindow();
  if (first.breaths === null || second.breaths === null) throw new Error('no breaths');
  expect(Math.abs(sdOf(first.breaths.regular) / 2.26 - 1)).toBeLessThan(0.25);
  expect(Math.abs(sdOf(second.breaths.regular) / 1.4 - 1)).toBeLessThan(0.25);
  expect(Math.abs(sdOf(second.breaths.irregular) / 5.8 - 1)).toBeLessThan(0.35);
  const minute = tried({ breathsWindowSeconds: 60 }, {}, 2400);
  expect(
    Math.abs(sdOf((minute.first.breaths as CountResultOf & { regular: CountResultOf }).regular) / 0.92 - 1),
  ).toBeLessThan(0.25);
  expect(minute.second.breaths).toBeNull();
  expect(minute.paired.breaths).toBeNull();
});

/** Counts of everybody among so many whose breathing comes and goes: the stretch they are of, and the error, per minute. */
function periodic(people: number, seed: number, some: Partial<PlanProtocol>) {
  const protocol = planProtocol({ readings: 1, ...some });
  const found: { there: NonNullable<Countable['breaths']>; error: number }[] = [];
  // One subject in four is counted.
  for (let index = 0; index < people; index += 4) {
    const subject = subjectOf(seed, index);
    if (breathingAt(subject).kind !== 'cheyne-stokes') continue;
    const there = countableOf(subject, [protocol]);
    const error = countErrorsOf(subject, there, protocol).breaths?.error;
    if (error === undefined || there.breaths === null) throw new Error('not counted');
    found.push({ there: there.breaths, error });
  }
  const mean = found.reduce((sum, { error }) => sum + error, 0) / found.length;
  const square = found.reduce((sum, { error }) => sum + (error - mean) ** 2, 0) / (found.length - 1);
  return { found, mean, standardError: Math.sqrt(square / found.length) };
}

// Physiology handbook 5 and 14, row 24: a cycle of 59 s with 13 breaths, 13.2 a minute; counts of 60 s are 13 or 14.
test('breathing that comes and goes has its rate over whole cycles: a perfect count is right on average', () => {
  const minute = periodic(120_000, 5, { breathsWindowSeconds: 60 });
  expect(minute.found.length).toBeGreaterThan(100);
  for (const { there, error } of minute.found) {
    expect(Math.abs(there.truePerMinute - 13.2)).toBeLessThan(0.15);
    expect([13, 14]).toContain(Math.round(there.truePerMinute + error));
  }
  const half = periodic(120_000, 5, { breathsWindowSeconds: 30 });
  for (const { mean, standardError } of [minute, half])
    expect(Math.abs(mean)).toBeLessThan(3 * standardError);
});

test('a clock that waits for a breath through a whole pause still has its full window', () => {
  for (const { there } of periodic(20_000, 5, { breathsWindowSeconds: 300 }).found) {
    const waits = there.seconds.slice(1).map((one, k) => one - (there.seconds[k] ?? one));
    expect(Math.max(...waits)).toBeGreaterThan(23);
    const room = there.toSeconds - there.fromSeconds - 300;
    expect(Math.min(room, there.beyondSeconds)).toBeGreaterThan(Math.max(...waits));
  }
});

test('what the windows are changes nothing of the pressure', () => {
  const of = (some: Partial<PlanProtocol>) => {
    const result = runPlan({ protocol: planProtocol(some), against: null, people: 200, seed: 2 })?.protocol;
    return [result?.systolic, result?.diastolic];
  };
  expect(of({ pulseWindowSeconds: 15, breathsWindowSeconds: 60 })).toEqual(of({}));
});

test.each([
  [{ breathsWindowSeconds: 4 }, '/breathsWindowSeconds out-of-range'],
  [{ breathsWindowSeconds: '30' }, '/breathsWindowSeconds not-a-number'],
  [{ countClock: 'later' }, '/countClock unknown-id'],
  [{ countFirst: 2 }, '/countFirst unknown-id'],
  [{ countFirst: '1' }, '/countFirst unknown-id'],
])('%j is refused by field', (input, wanted) => {
  const got = parsePlanProtocol(input);
  expect(got.ok ? [] : got.refusals.map(({ field, code }) => `${field} ${code}`)).toEqual([wanted]);
});
