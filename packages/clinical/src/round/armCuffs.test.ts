import { describe, expect, test } from 'vitest';
import { armCuffFlags, type CuffedReading } from './armCuffs.js';

const AHA = (id: string) => ({ scheme: 'aha-2005' as const, id });

const on = (side: 'right' | 'left', more: Partial<CuffedReading> = {}): CuffedReading => ({
  site: 'upper-arm',
  side,
  method: 'auscultation',
  posture: 'sit',
  armCm: 30,
  cuff: AHA('adult'),
  ...more,
});

const codes = (readings: readonly CuffedReading[]) => armCuffFlags(readings).map(({ code }) => code);

// Bedside handbook 3.2: 27 to 34 cm is the adult cuff, 35 to 44 the large adult one.
describe('two arms compared', () => {
  test('with one cuff that fits both say nothing', () => {
    expect(codes([on('right'), on('left')])).toEqual([]);
    expect(codes([])).toEqual([]);
    expect(codes([on('right', { cuff: AHA('thigh') })])).toEqual([]);
  });

  test('with unlike cuffs say so, also where each fits its arm', () => {
    const other = on('left', { armCm: 36, cuff: AHA('large-adult') });
    expect(codes([on('right'), other])).toEqual(['arms-unlike-cuffs']);
    expect(codes([other, on('right')])).toEqual(['arms-unlike-cuffs']);
  });

  test('with a cuff of the same name from another table say so', () => {
    expect(codes([on('right'), on('left', { cuff: { scheme: 'fourth-report-2004', id: 'adult' } })])).toEqual(
      ['arms-unlike-cuffs'],
    );
  });

  // Bedside handbook 3.3 (CUFF23): the regular cuff where a large one is right reads the systolic 4.8 too high.
  test('with a cuff that does not fit say so, and what it is expected to add', () => {
    expect(armCuffFlags([on('right', { armCm: 40 }), on('left')])).toEqual([
      { code: 'arms-cuff-unfitting', figures: { rightMmHg: 4.8 } },
    ]);
    const both = { armCm: 40 };
    expect(armCuffFlags([on('right', both), on('left', both)])).toEqual([
      { code: 'arms-cuff-unfitting', figures: { rightMmHg: 4.8, leftMmHg: 4.8 } },
    ]);
    // Nobody compared this cuff with the right one.
    expect(armCuffFlags([on('right'), on('left', { cuff: AHA('thigh') })])).toEqual([
      { code: 'arms-unlike-cuffs', figures: {} },
      { code: 'arms-cuff-unfitting', figures: {} },
    ]);
  });
});

test('a cuff or an arm that nobody noted is no other one', () => {
  expect(codes([on('right'), on('left', { cuff: null })])).toEqual([]);
  expect(codes([on('right', { armCm: null }), on('left', { armCm: null })])).toEqual([]);
  expect(codes([on('right', { cuff: { scheme: null, id: 'M' } }), on('left')])).toEqual([
    'arms-unlike-cuffs',
  ]);
});

test('the last pair counts, by which the rule goes', () => {
  const wrong = on('left', { cuff: AHA('large-adult') });
  expect(codes([on('right'), wrong, on('right'), on('left')])).toEqual([]);
  expect(codes([on('right'), on('left'), on('right'), wrong])).toEqual([
    'arms-unlike-cuffs',
    'arms-cuff-unfitting',
  ]);
});

test('a reading that is held against none by the rule is none here: by feel, standing, or at the wrist', () => {
  const other = { cuff: AHA('large-adult') };
  for (const apart of [
    { method: 'palpation' },
    { posture: 'stand' },
    { site: 'wrist' },
    { posture: 'lie' },
  ] as const) {
    expect(codes([on('right'), on('left', { ...other, ...apart })])).toEqual([]);
  }
});

// Bedside handbook 3.12: the arms are compared by readings that were taken alike.
test('one arm by ear and the other off a display say so first', () => {
  expect(codes([on('right'), on('left', { method: 'device' })])).toEqual(['arms-unlike-methods']);
  expect(codes([on('right', { method: 'device' }), on('left', { method: 'device' })])).toEqual([]);
});
