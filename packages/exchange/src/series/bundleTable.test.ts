import { NO_ROUND_FACTS } from '@evenfall/clinical';
import { loadWords } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { bundleOf, idOf, inError, made } from '../../testing/charts.js';
import { sketches } from '../../testing/sketches.js';
import { wrongInBundle } from '../../testing/validate.js';
import { chartBundle } from '../fhir/chartBundle.js';
import { readBundle } from '../fhir/read/readBundle.js';
import { bundleTable } from './bundleTable.js';
import { readSeries } from './readSeries.js';
import { NOTHING_SAID } from './seriesRead.js';

const MMHG = { system: 'http://unitsofmeasure.org', code: 'mm[Hg]' };
const loinc = (code: string) => ({ coding: [{ system: 'http://loinc.org', code }] });

function pressure(at: string, systolic: number, diastolic: number, more: object = {}) {
  return {
    resourceType: 'Observation',
    status: 'final',
    code: loinc('85354-9'),
    subject: { display: 'Wren (invented)' },
    effectiveDateTime: at,
    component: [
      { code: loinc('8480-6'), valueQuantity: { value: systolic, ...MMHG } },
      { code: loinc('8462-4'), valueQuantity: { value: diastolic, ...MMHG } },
    ],
    ...more,
  };
}

function pulse(at: string, perMinute: number) {
  const { component: _, ...rest } = pressure(at, 1, 0);
  return {
    ...rest,
    code: loinc('8867-4'),
    valueQuantity: { value: perMinute, system: 'http://unitsofmeasure.org', code: '/min' },
  };
}

const bundle = (...resources: object[]) =>
  JSON.stringify({ resourceType: 'Bundle', type: 'collection', entry: resources.map((resource) => ({ resource })) }); // biome-ignore format: one thought

const AT = '2026-07-01T07:30:00+01:00';
const LATER = '2026-07-01T20:30:00+01:00';

describe('pressures of a bundle', () => {
  // LOINC codes and units: interoperability handbook 4 and 5.
  test('are a table; a heart rate of the same instant is a pulse, what cannot be used a line that is refused', () => {
    const text = bundle(
      pressure(AT, 142, 88, { note: [{ text: 'after, "tea"' }] }),
      pulse(AT, 74),
      pressure(LATER, 220, 130, { status: 'entered-in-error' }),
      pressure(LATER, 210, 125, { modifierExtension: [{ url: 'urn:x' }] }),
      pulse('2026-07-02T07:30:00+01:00', 70),
    );
    const table = bundleTable(text, 'home');
    if (table === null) throw new Error('a bundle was taken for none');
    const read = readSeries(table.text, { ...NOTHING_SAID, kind: 'home' });
    expect(read.readings.map((one) => [one.atMs, one.systolic, one.diastolic, one.pulse])).toEqual([
      [Date.parse(AT), 142, 88, 74],
    ]);
    expect(read.beside).toMatchObject([{ note: 'after, "tea"' }]);
    // A dangerous one is seen all the same.
    expect(read.refused.map((one) => [one.line, one.systolic, one.diastolic])).toEqual([
      [3, 220, 130],
      [4, 210, 125],
      [5, null, null],
    ]);
    expect([...table.problems].map(([line, of]) => [line, ...of.map(({ expected }) => expected)])).toEqual([
      [3, 'pressure-that-stands'],
      [4, 'no-modifier'],
      [5, 'pressure-that-stands'],
    ]);
  });

  // Interoperability handbook 9 and 11: an average has a period and the codes of both panels.
  test('a mean of several is no reading of a series: its line is refused', () => {
    const table = bundleTable(
      bundle(
        { ...pressure(AT, 142, 88), subject: sketches.homeMean.subject },
        sketches.homeMean,
        sketches.dayMean,
      ),
      'home',
    );
    const read = readSeries(table?.text ?? '', { ...NOTHING_SAID, kind: 'home' });
    expect(read.readings.map((one) => one.systolic)).toEqual([142]);
    expect([...(table?.problems ?? [])].map(([line, [of]]) => [line, of?.expected])).toEqual([
      [3, 'one-reading'],
      [4, 'one-reading'],
    ]);
  });

  // FHIR R4: a component without a value says why in `dataAbsentReason`. Interoperability handbook 3.
  test('a measurement that failed is a failed reading of a recording; at home there is none', () => {
    const dataAbsentReason = { coding: [{ code: 'error' }] };
    const absent = (code: string) => ({ code: loinc(code), dataAbsentReason });
    const failed = pressure(LATER, 1, 0, { component: [absent('8480-6'), absent('8462-4')] });
    const { component: _, ...whole } = pressure('2026-07-01T21:00:00+01:00', 1, 0, { dataAbsentReason });
    const wrong = { ...failed, status: 'entered-in-error' };
    const half = { ...failed, component: [absent('8480-6'), pressure(AT, 1, 80).component[1]] };
    const text = bundle(pressure(AT, 142, 88), failed, whole, wrong, half);
    const read = readSeries(bundleTable(text, 'ambulatory')?.text ?? '', {
      ...NOTHING_SAID,
      kind: 'ambulatory',
    });
    expect(read.readings.map(({ systolic, diastolic }) => [systolic, diastolic])).toEqual([
      [142, 88],
      [null, null],
      [null, null],
    ]);
    expect(read.refused).toHaveLength(2);
    expect(bundleTable(bundle(failed), 'home')?.problems.size).toBe(1);
  });

  test.each(['time,systolic\n', '{', '{"resourceType":"Patient"}', '[]', ''])('%j is no bundle', (text) => {
    expect(bundleTable(text, 'home')).toBeNull();
  });
});

describe('a series that is written', () => {
  const reading = (at: string, systolic: number | null, diastolic: number | null, beats: number | null) => ({
    at: { at, zone: 'Europe/Lisbon', asEntered: null },
    ...{
      systolic,
      diastolic,
      pulse: beats,
      asleep: null,
      part: null,
      site: 'upper-arm',
      arm: null,
      note: null,
    },
    ...{
      device: null,
      line: null,
      how: 'typed',
      irregular: null,
      clock: null,
      mended: null,
      startedByHand: null,
    },
  });
  const blank = { systolic: null, diastolic: null, pulse: null };
  const series = made(1, 'series', {
    of: 'home',
    status: 'final',
    diary: null,
    readings: [reading(AT, 142, 88, 74), reading(LATER, 136, 84, null)],
    refused: [],
    asleep: null,
    nap: null,
    scheduled: null,
    treated: null,
    features: null,
    facts: { ...NO_ROUND_FACTS, arms: [] },
    note: null,
    value: {
      ...{ valid: false, why: [], used: 0, days: 0, mean: blank, morning: blank, evening: blank },
      ...{ day: null, night: null, counts: null, dayNightBy: null, dip: null, high: null, category: null },
      ...{ shown: { systolic: null, diastolic: null }, dropped: [], flags: [], actNow: [] },
    },
    computedBy: { program: 'evenfall 0.1.0', rule: 'home-1', preset: null, presetVersion: null },
  });

  test('is valid FHIR, read by its own Evenfall as its entry alone and by any other as the same readings', () => {
    const written = chartBundle(bundleOf([series]));
    expect(wrongInBundle(written)).toEqual([]);
    const own = readBundle(JSON.parse(JSON.stringify(written)));
    if (!own.ok) throw new Error('not read');
    expect([own.value.own.map(({ frame }) => frame.kind), own.value.reported]).toEqual([['series'], []]);
    const table = bundleTable(JSON.stringify(written), 'home');
    const read = readSeries(table?.text ?? '', { ...NOTHING_SAID, kind: 'home' });
    expect([
      read.refused,
      read.readings.map((one) => [one.atMs, one.systolic, one.diastolic, one.pulse]),
    ]).toEqual([
      [],
      [
        [Date.parse(AT), 142, 88, 74],
        [Date.parse(LATER), 136, 84, null],
      ],
    ]);
  });

  test('with days added keeps the id of each reading that was there, and its own Evenfall reads none twice', () => {
    const grown = (id: number, extra: object[]) => {
      const content = series.frame.content as { readings: object[] };
      const amends = { entry: idOf(1), reason: 'other' as const, text: 'more days' };
      return made(id, 'series', { ...content, readings: [...content.readings, ...extra] }, { amends });
    };
    const third = reading('2026-07-02T07:30:00+01:00', 133, 82, 70);
    const idsOf = (...of: (typeof series)[]) => {
      const { entry = [] } = chartBundle(bundleOf(of));
      return entry.flatMap(({ resource }) =>
        resource?.resourceType === 'Observation' ? [resource.id as string] : [],
      );
    };
    const before = idsOf(series);
    const after = idsOf(series, grown(7, [third]));
    expect(before).toHaveLength(3);
    expect(after).toHaveLength(5);
    expect(after).toEqual(expect.arrayContaining(before));
    expect(new Set(after).size).toBe(5);
    const written = chartBundle(bundleOf([series, grown(7, [third])]));
    expect(wrongInBundle(written)).toEqual([]);
    const own = readBundle(JSON.parse(JSON.stringify(written)));
    if (!own.ok) throw new Error('not read');
    expect([own.value.own.length, own.value.reported]).toEqual([2, []]);
    // Contested: each of the two has ids of its own, and nothing is read twice.
    const both = [series, grown(7, [third]), grown(90, [])];
    const contested = idsOf(...both);
    expect(new Set(contested).size).toBe(contested.length);
    const read = readBundle(JSON.parse(JSON.stringify(chartBundle(bundleOf(both)))));
    expect(read.ok && read.value.reported).toEqual([]);
  });

  test('at home is no reading of a recorder: of the other kind nothing is taken', () => {
    const table = bundleTable(JSON.stringify(chartBundle(bundleOf([series]))), 'ambulatory');
    expect(table?.text.trim().split('\n')).toEqual([
      'time,systolic,diastolic,pulse,site,arm,device,note,started',
    ]);
  });

  // Out-of-office handbook 5: a flag is kept of what the person started by hand.
  test('of a recorder says which reading a hand started, beside its note', async () => {
    const content = series.frame.content as { readings: object[] };
    const readings = content.readings.map((one, at) => ({
      ...one,
      ...(at === 0 ? { startedByHand: true, note: 'felt dizzy' } : {}),
    }));
    const written = chartBundle(bundleOf([made(1, 'series', { ...content, of: 'ambulatory', readings })]));
    expect(wrongInBundle(written)).toEqual([]);
    const table = bundleTable(JSON.stringify(written), 'ambulatory');
    const read = readSeries(table?.text ?? '', { ...NOTHING_SAID, kind: 'ambulatory' });
    expect(read.readings.map(({ startedByHand = null }) => startedByHand)).toEqual([true, null]);
    // The sentence that this program wrote beside the note is no part of it, however often it goes out and comes back.
    expect(read.beside.map(({ note }) => note)).toEqual(['felt dizzy']);
    const spanish = {
      ...bundleOf([made(1, 'series', { ...content, of: 'ambulatory', readings })]),
      words: await loadWords('es'),
    };
    const back = bundleTable(JSON.stringify(chartBundle(spanish)), 'ambulatory');
    expect(back?.text).toBe(table?.text);
  });

  test('entered in error is written as that, and is no reading of anybody’s', () => {
    const written = chartBundle(bundleOf([series, inError(2, 1)]));
    expect(wrongInBundle(written)).toEqual([]);
    const table = bundleTable(JSON.stringify(written), 'home');
    const read = readSeries(table?.text ?? '', { ...NOTHING_SAID, kind: 'home' });
    expect([read.readings, read.refused.length]).toEqual([[], 3]);
    expect(idOf(1)).toBe(series.frame.id);
  });
});
