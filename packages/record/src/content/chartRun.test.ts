import {
  METHODS,
  presetProtocol,
  protocolVersion,
  type Run,
  UNKNOWN_RUN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chartedPressure } from '../chart/chartedPressure.js';
import { readEntry } from '../entry/readEntry.js';
import { bentByOneKey } from '../testing/shapes.js';
import {
  frame,
  kept,
  NO_PROTOCOL,
  placesOf,
  runContent,
  TEST_PROGRAM,
  USUAL_PLACE,
} from '../testing/work.js';
import { chartRun } from './chartRun.js';
import { inForceUnder } from './inForce.js';
import type { RunContent } from './run.js';

/** 148/92 heard with a pulse of 76, let down at about 2.5 mmHg a second from a peak 30 above the loss of the pulse. */
const TIMED = {
  method: 'auscultation',
  gaugeStepMmHg: 2,
  pulsePerMinute: 76,
  palpated: { lostMmHg: 146, backMmHg: 144 },
  peak: { mmHg: 176, atSeconds: 0 },
  moments: [
    { what: 'first sound', mmHg: 148, atSeconds: 11.2 },
    { what: 'muffled', mmHg: 98, atSeconds: 31.2 },
    { what: 'last sound', mmHg: 92, atSeconds: 33.6 },
  ],
};

const WHOLE = runContent(TIMED, {
  place: {
    ...USUAL_PLACE,
    cuff: { scheme: 'aha-2005', id: 'adult' },
    armCm: 36,
    override: { by: 'Sister Alder (invented)', reason: 'the other arm is in plaster' },
  },
  circumstances: {
    rhythmFelt: 'irregular',
    previous: { was: 'reading', secondsSinceRelease: 40 },
    uprightMinutes: null,
  },
  override: { systolic: 150, diastolic: 92, reason: 'the observer beside me heard it' },
});

const pressures = fc
  .uniqueArray(fc.integer({ min: 20, max: 140 }), { minLength: 3, maxLength: 3 })
  .map((marks) => marks.map((mark) => mark * 2).sort((a, b) => b - a) as [number, number, number]);

/** Any run that can be: three methods, timed or not, with what else may be known. */
const anyRun: fc.Arbitrary<Run> = fc
  .record({
    method: fc.constantFrom(...METHODS),
    numbers: pressures,
    pulsePerMinute: fc.option(fc.integer({ min: 30, max: 180 })),
    isTimed: fc.boolean(),
    seconds: fc.double({ min: 0.5, max: 60, noNaN: true }),
    lostMmHg: fc.option(fc.integer({ min: 60, max: 200 })),
    reinflated: fc.boolean(),
  })
  .map(({ method, numbers: [peak, first, last], pulsePerMinute, isTimed, seconds, lostMmHg, reinflated }) => {
    const at = (index: number) => (isTimed ? index * seconds : null);
    const felt = [{ what: 'pulse back', mmHg: first, atSeconds: at(1) } as const];
    const heard = [
      { what: 'first sound', mmHg: first, atSeconds: at(1) },
      { what: 'last sound', mmHg: last, atSeconds: at(2) },
    ] as const;
    return {
      method,
      gaugeStepMmHg: 2,
      pulsePerMinute,
      palpated: {
        lostMmHg: lostMmHg === null || method === 'palpation' ? null : lostMmHg,
        backMmHg: null,
      },
      peak: { mmHg: peak, atSeconds: at(0) },
      reinflated,
      moments: method === 'palpation' ? felt : heard,
    };
  });

/** How a person felt on their feet: unwell, not, or nobody asked. */
const anyFelt = fc.constantFrom(true, false, null);

describe('the content of a run', () => {
  test('comes back the same from JSON and from its schema, whatever was done', () => {
    fc.assert(
      fc.property(
        anyRun,
        fc.constantFrom('upper-arm', 'wrist', 'thigh'),
        anyFelt,
        fc.constantFrom(0, 4.9, 1440, null),
        (run, site, unwellUpright, lyingMinutes) => {
          const place = { ...USUAL_PLACE, site } as const;
          const minutes = { uprightMinutes: null, lyingMinutes };
          const circumstances = { ...UNKNOWN_RUN_CIRCUMSTANCES, ...minutes, unwellUpright };
          const done = { run, place, circumstances, override: null, note: null };
          const content = chartRun(done, NO_PROTOCOL, TEST_PROGRAM);
          const entry = frame('run', content);
          expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ ok: true, value: entry });
          expect(content.evidence).toEqual({ run, place, circumstances, gauge: null, markedBy: null });
        },
      ),
    );
  });

  test('is a copy: what is charted does not change with what it was made from', () => {
    const content = runContent(TIMED);
    const { run, place, circumstances } = content.evidence;
    const done = { run: run as Run, place, circumstances, override: null, note: null };
    const again = chartRun(done, NO_PROTOCOL, TEST_PROGRAM);
    (run.moments[0] as { mmHg: number }).mmHg = 300;
    (run.palpated as { lostMmHg: number }).lostMmHg = 20;
    (place as { site: string }).site = 'wrist';
    expect(again.evidence).toMatchObject({
      run: { moments: [{ mmHg: 148 }, {}, {}], palpated: { lostMmHg: 146 } },
      place: { site: 'upper-arm' },
    });
  });

  test('names the rule, and the preset of letting down', () => {
    const preset = presetProtocol({ count: 'full-minute', deflation: 'mark-above' });
    if (!preset.ok) throw new Error('the preset is gone');
    const version = protocolVersion(preset.value);
    const { run, place, circumstances } = runContent(TIMED).evidence;
    const done = { run: run as Run, place, circumstances, override: null, note: null };
    const content = chartRun(done, inForceUnder(preset.value, version), TEST_PROGRAM);
    expect(content.computedBy).toEqual({
      program: TEST_PROGRAM,
      rule: 'run-1',
      preset: 'mark-above',
      presetVersion: version,
    });
    // Conventions 6: the mark above reads -2g and 0 in place of -g and +g.
    expect(content.value.systolicRange?.[0]).toBe(146);
    expect(runContent(TIMED).value.systolicRange?.[0]).toBe(147);
  });
});

describe('what a place says of a reading', () => {
  const codes = ({ value }: RunContent) => value.flags.map(({ code }) => code);

  // Conventions 6: sites other than the upper arm are charted and never averaged or categorised with it.
  test.each([
    ['upper-arm', true, []],
    ['forearm', false, ['other-site']],
    ['wrist', false, ['other-site']],
    ['thigh', false, ['other-site', 'thigh-reads-higher']],
    ['calf', false, ['other-site']],
  ] as const)('%s: averaged %j, %j', (site, isAveraged, flags) => {
    const content = runContent(TIMED, { place: { ...USUAL_PLACE, site } });
    expect([content.value.isAveraged, codes(content)]).toEqual([isAveraged, flags]);
    expect(chartedPressure(kept(frame('run', content)))?.isAveraged).toBe(isAveraged);
  });

  // Bedside handbook 8, C034 (Ishigami 2023): the regular cuff on an extra-large arm reads +19.5/+7.4.
  test.each([
    [48, 'adult', ['cuff-too-small'], { systolic: 19.5, diastolic: 7.4 }],
    [24, 'adult', ['cuff-too-large'], { systolic: -3.6, diastolic: -1.3 }],
    [30, 'adult', [], { systolic: 0, diastolic: 0 }],
    [null, 'adult', [], null],
  ])('an arm of %j cm and the %s cuff: %j', (armCm, id, flags, biasMmHg) => {
    const place = { ...USUAL_PLACE, armCm, cuff: { scheme: 'aha-2005', id } as const };
    const content = runContent(TIMED, { place });
    expect([codes(content), content.value.biasMmHg]).toEqual([flags, biasMmHg]);
    // The bias is told and never subtracted.
    expect(content.value.systolic).toBe(148);
  });

  test('an arm better left alone, taken with a name and a reason', () => {
    expect(codes(WHOLE)).toContain('arm-overridden');
  });
});

describe('the charted pressure', () => {
  const pressure = (content: RunContent) => chartedPressure(kept(frame('run', content)));

  test('is the computed one', () => {
    expect(pressure(runContent(TIMED))).toEqual({
      systolic: 148,
      diastolic: 92,
      diastolicUsed: 92,
      byHand: false,
      isAveraged: true,
    });
  });

  test('set by hand wins, says so, and leaves the computed one beside it', () => {
    expect(pressure(WHOLE)).toMatchObject({ systolic: 150, diastolic: 92, byHand: true });
    expect(WHOLE.value).toMatchObject({ systolic: 148, diastolic: 92 });
  });

  // Bedside handbook 8, C044 and C045.
  test('by palpation has no diastolic; down to zero the muffling is used', () => {
    const felt = { method: 'palpation', moments: [{ what: 'pulse back', mmHg: 124 }] };
    expect(pressure(runContent(felt))).toMatchObject({ systolic: 124, diastolic: null, diastolicUsed: null });
    const moments = [
      { what: 'first sound', mmHg: 118 },
      { what: 'muffled', mmHg: 62 },
      { what: 'last sound', mmHg: 0 },
    ];
    const toZero = runContent({ method: 'auscultation', moments });
    expect(pressure(toZero)).toMatchObject({ systolic: 118, diastolic: 0, diastolicUsed: 62 });
    const override = { systolic: 118, diastolic: 0, reason: 'heard to zero' };
    expect(pressure(runContent(TIMED, { override }))).toMatchObject({ diastolic: 0, diastolicUsed: null });
  });
});

describe('the schema of a run takes exactly what is made', () => {
  test('no key less and no key more', () => {
    const bent = bentByOneKey(WHOLE);
    expect(bent.length).toBeGreaterThan(60);
    expect(bent.filter(({ content }) => readEntry(frame('run', content)).ok)).toEqual([]);
  });

  const { evidence } = WHOLE;
  const inPlace = (bent: object) => ({ evidence: { ...evidence, place: { ...evidence.place, ...bent } } });
  const inRun = (bent: object) => ({ evidence: { ...evidence, run: { ...evidence.run, ...bent } } });

  test.each<[string, object]>([
    ['/content/evidence/place/site', inPlace({ site: 'ankle' })],
    ['/content/evidence/place/side', inPlace({ side: null })],
    ['/content/evidence/place/posture', inPlace({ posture: 'kneel' })],
    ['/content/evidence/place/cuff/id', inPlace({ cuff: { scheme: 'aha-2005', id: 'medium' } })],
    ['/content/evidence/place/cuff/id', inPlace({ cuff: { scheme: null, id: 'adult' } })],
    ['/content/evidence/place/armCm', inPlace({ armCm: 3.9 })],
    ['/content/evidence/place/armCm', inPlace({ armCm: 80.1 })],
    ['/content/evidence/place/override/reason', inPlace({ override: { by: 'Alder', reason: ' ' } })],
    ['/content/evidence/run/method', inRun({ method: 'guess' })],
    ['/content/evidence/run/moments', inRun({ moments: [] })],
    [
      '/content/evidence/run/moments/0/mmHg',
      inRun({ moments: [{ what: 'first sound', mmHg: 301, atSeconds: null }] }),
    ],
    ['/content/evidence/run/pulsePerMinute', inRun({ pulsePerMinute: 401 })],
    ['/content/override/reason', { override: { systolic: 150, diastolic: 90, reason: '' } }],
    ['/content/override/diastolic', { override: { systolic: 90, diastolic: 90, reason: 'heard' } }],
    ['/content/override/systolic', { override: { systolic: 0, diastolic: null, reason: 'heard' } }],
    ['/content/value/systolic', { value: { ...WHOLE.value, systolic: '148' } }],
    ['/content/value/systolicRange', { value: { ...WHOLE.value, systolicRange: [147] } }],
  ])('is refused at %s', (place, bent) => {
    expect(placesOf(readEntry(frame('run', { ...WHOLE, ...bent })))).toEqual([place]);
  });

  test.each([[{ scheme: null, id: 'L' }], [{ scheme: 'uk-arm-bands', id: 'medium' }], [null]])(
    'a cuff may be %j',
    (cuff) => {
      expect(placesOf(readEntry(frame('run', { ...WHOLE, ...inPlace({ cuff }) })))).toEqual([]);
    },
  );

  test('a run stands in a round', () => {
    expect(placesOf(readEntry(frame('run', WHOLE, { round: null })))).toEqual(['/round']);
  });
});
