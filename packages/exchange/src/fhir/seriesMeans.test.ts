import type { Observation } from 'fhir/r4.js';
import { describe, expect, test } from 'vitest';
import { bundleOf, idOf, inError, type Made } from '../../testing/charts.js';
import { homeWeek, recording, takenOut, UNDER_HOME_RULES } from '../../testing/series.js';
import { wrongInBundle } from '../../testing/validate.js';
import { bundleTable } from '../series/bundleTable.js';
import { chartBundle } from './chartBundle.js';
import { readBundle } from './read/readBundle.js';

const LOINC = 'http://loinc.org';

function written(...all: Made[]) {
  const bundle = chartBundle(bundleOf(all));
  expect(wrongInBundle(bundle)).toEqual([]);
  const observations = (bundle.entry ?? []).flatMap(({ resource }) =>
    resource?.resourceType === 'Observation' ? [resource] : [],
  );
  return { bundle, means: observations.filter(({ derivedFrom }) => derivedFrom !== undefined), observations };
}

const codes = (of: Observation) => of.code.coding?.map(({ code }) => code);
const parts = (of?: Observation) =>
  of?.component?.map(({ code, valueQuantity }) => [
    ...(code.coding ?? []).map((coding) => (coding.system === LOINC ? coding.code : null)),
    valueQuantity?.value,
    valueQuantity?.code,
  ]);
const notes = (of?: Observation) => of?.note?.map(({ text }) => text).join(' ') ?? '';

describe('the mean of a series at home', () => {
  // Interoperability handbook 11; the numbers are those of week H1 of the out-of-office handbook 19, the first day left out.
  test('is an average panel of the readings that its rule set uses, from the first to the last of them', () => {
    const { means, observations } = written(homeWeek(1));
    expect(means).toHaveLength(1);
    const [mean] = means;
    expect(mean).toMatchObject({
      status: 'final',
      meta: { profile: ['http://hl7.org/fhir/StructureDefinition/vitalsigns'] },
      effectivePeriod: { start: '2026-07-02T07:30:00.000+01:00', end: '2026-07-07T20:31:00.000+01:00' },
    });
    expect(codes(mean as Observation)).toEqual(['96607-7', '85354-9']);
    expect(parts(mean)).toEqual([
      ['96608-5', '8480-6', 136.6, 'mm[Hg]'],
      ['96609-3', '8462-4', 85, 'mm[Hg]'],
    ]);
    // 84.9583 is under 85: one decimal hides it, so the note says it.
    expect(notes(mean)).toContain('24 readings used on 6 days, 4 left out.');
    expect(notes(mean)).toContain('84.96');
    expect(notes(mean)).toContain('ish-2020');
    expect(notes(mean)).toContain('home-2');
    const sources = new Map(observations.map((one) => [`urn:uuid:${one.id}`, one]));
    const used = mean?.derivedFrom?.map(({ reference }) => sources.get(reference ?? '')?.effectiveDateTime);
    expect(used).toHaveLength(24);
    expect(used?.some((at) => at?.startsWith('2026-07-01'))).toBe(false);
  });

  test('is amended, and made without it, once a hand took a reading out; a learner’s is preliminary', () => {
    const { means } = written(homeWeek(1), takenOut(2, 1, 5, 'talking'));
    expect(means[0]).toMatchObject({ status: 'amended' });
    expect(means[0]?.derivedFrom).toHaveLength(23);
    expect(notes(means[0])).toContain('Decided by hand, in or out of the mean: 1 reading.');
    // The rules that it came in under are not at hand in this file, so the general ones judge what the hand did.
    expect(notes(means[0])).toContain('what it came in under (ish-2020) is not kept here');
    expect(notes(means[0])).not.toContain('Averaged by ISH');
    expect(notes(means[0])).not.toContain('Local protocol version');
    expect(written(homeWeek(1, { status: 'preliminary' })).means[0]?.status).toBe('preliminary');
  });

  test('of an error says so, and of too few readings too', () => {
    expect(written(homeWeek(1), inError(2, 1)).means[0]?.status).toBe('entered-in-error');
    const { readings } = homeWeek(1).frame.content as { readings: never[] };
    const short = written(homeWeek(1, { readings: readings.slice(0, 8) })).means;
    expect(notes(short[0])).toContain('Too few');
    expect(written(homeWeek(1, { readings: readings.slice(0, 5) })).means).toEqual([]);
  });
});

test('a reading says its arm and its device, and that a hand took it out', () => {
  const { readings } = homeWeek(1).frame.content as { readings: object[] };
  const told = { ...readings[4], arm: 'left', device: 'Invented 3', note: 'after tea' };
  const wrist = { ...readings[5], arm: 'right', site: 'wrist' };
  const week = homeWeek(1, { readings: readings.with(4, told).with(5, wrist) as never });
  const { observations, bundle } = written(week, takenOut(2, 1, 5, 'talking'));
  const at = (systolic: number, place: number) =>
    observations.filter(({ component }) => component?.[0]?.valueQuantity?.value === systolic)[place];
  const out = 'Taken out of the mean by hand: talking.';
  expect(wrongInBundle(bundle)).toEqual([]);
  const fifth = observations.filter(({ device }) => device?.display === 'Invented 3');
  expect(fifth.map(({ note }) => note?.map(({ text }) => text))).toEqual([[out, 'after tea'], [out]]);
  expect(fifth[0]).toMatchObject({ bodySite: { text: 'Left upper arm' } });
  expect(observations.filter(({ bodySite }) => bodySite?.text === 'Right wrist')).toHaveLength(1);
  // Nobody said anything of the first.
  expect([at(152, 0)?.bodySite, at(152, 0)?.device, at(152, 0)?.note]).toEqual([undefined, undefined, undefined]); // biome-ignore format: one thought
});

// The numbers of recording A1 of the out-of-office handbook 19: closed trapezoid, awake and asleep.
test('a recording has its means of 24 hours, of the day and of the night, each with its readings', () => {
  const { means } = written(recording(1));
  expect(means.map(codes)).toEqual([
    ['97844-5', '85354-9'],
    ['96607-7', '85354-9'],
    ['96607-7', '85354-9'],
  ]);
  expect(means.map(({ derivedFrom }) => derivedFrom?.length)).toEqual([40, 32, 8]);
  expect(parts(means[0])).toEqual([
    ['8490-5', '8480-6', 129.8, 'mm[Hg]'],
    ['8472-3', '8462-4', 80.1, 'mm[Hg]'],
  ]);
  expect(means.slice(1).map((one) => parts(one)?.map((part) => part[2]))).toEqual([
    [137.3, 86],
    [115.1, 68.5],
  ]);
  // Day and night share their codes: what a reader shows of a mean says which it is.
  expect(means.map(({ code }) => code.text)).toEqual([
    'Mean of blood pressure over 24 hours',
    'Mean of blood pressure by day',
    'Mean of blood pressure by night',
  ]);
  const kept = chartBundle(bundleOf([recording(1)], { rulesOf: () => UNDER_HOME_RULES }));
  expect(JSON.stringify(kept)).toContain('Mean of 24 hours (the mean over time)');
  expect(notes(means[1])).toContain('Mean by day of 32 readings');
  expect(notes(means[2])).toContain('Mean by night of 8 readings; day and night by the diary.');
  expect(means[2]?.effectivePeriod).toEqual({
    start: '2026-07-01T23:30:00+00:00',
    end: '2026-07-02T06:30:00+00:00',
  });
});

test('means are read as made from their entries by their own Evenfall, and as means from elsewhere by any other', () => {
  const { bundle, means } = written(homeWeek(1), recording(200));
  const own = readBundle(JSON.parse(JSON.stringify(bundle)));
  expect(
    own.ok && [own.value.own.length, own.value.reported, own.value.refused, own.value.passedOver],
  ).toEqual([2, [], [], {}]);
  const foreign = {
    ...bundle,
    entry: bundle.entry?.filter(({ resource }) => means.includes(resource as never)),
  };
  const read = readBundle(JSON.parse(JSON.stringify(foreign)));
  expect(read.ok && read.value.reported.map(({ content: { value, until } }) => [value, until])).toEqual([
    [{ of: 'pressure', systolic: 136.6, diastolic: 85 }, '2026-07-07T20:31:00.000+01:00'],
    [{ of: 'pressure', systolic: 129.8, diastolic: 80.1 }, '2026-07-02T08:45:00+00:00'],
    [{ of: 'pressure', systolic: 137.3, diastolic: 86 }, '2026-07-02T08:45:00+00:00'],
    [{ of: 'pressure', systolic: 115.1, diastolic: 68.5 }, '2026-07-02T06:30:00+00:00'],
  ]);
  // A mean is no reading of the series that another Evenfall reads out of the bundle.
  const lines = bundleTable(JSON.stringify(bundle), 'home')?.text.trim().split('\n');
  expect(lines).toHaveLength(1 + 28);
  expect(new Set(means.map(({ id }) => id)).size).toBe(4);
  expect(means.map(({ id }) => id)).not.toContain(idOf(1));
});

test('how a mean over time was weighted is said only where the rules that made it are at hand', () => {
  const weighted = (...all: Made[]) => notes(written(...all).means[0]);
  expect(weighted(recording(1))).toContain('40 readings used, 1 left out.');
  expect(weighted(recording(1))).not.toContain('Mean of 24 hours (');
  expect(weighted(recording(1), takenOut(2, 1, 5, 'talking'))).toContain('Mean of 24 hours (');
});
