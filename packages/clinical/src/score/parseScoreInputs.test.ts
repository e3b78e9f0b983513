import { describe, expect, test } from 'vitest';
import { parseScoreInputs } from './parseScoreInputs.js';
import { DEFAULT_SCORE_RULES } from './rules.js';
import type { ScoreId } from './scores.js';

function refused(of: ScoreId, input: unknown): string[] {
  const parsed = parseScoreInputs(of, input);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
}

describe('whom a score is not for', () => {
  test.each<[ScoreId, object, string[]]>([
    // Bedside handbook 5.2 (second-hand): from 16 years, not in pregnancy, not with a spinal injury.
    ['early-warning', { age: 15 }, ['/age out-of-range']],
    ['early-warning', { age: 16 }, []],
    ['early-warning', { pregnant: true }, ['/pregnant contradicts']],
    ['early-warning', { pregnant: false }, []],
    ['early-warning', { spinalInjury: true }, ['/spinalInjury contradicts']],
    ['early-warning', { spinalInjury: false }, []],
    // From memory: an adult's screen.
    ['sepsis-screen', { age: 17 }, ['/age out-of-range']],
    ['sepsis-screen', { age: 18 }, []],
    ['shock-index', { age: 3 }, []],
  ])('%s %j: %j', (of, input, expected) => {
    expect(refused(of, input)).toEqual(expected);
  });
});

test.each<[ScoreId, unknown, string[]]>([
  ['early-warning', { respirations: '22', systolic: '108.5' }, []],
  ['early-warning', { respirations: -1 }, ['/respirations out-of-range']],
  ['early-warning', { pulse: 400 }, []],
  ['early-warning', { pulse: 401 }, ['/pulse impossible']],
  ['early-warning', { oxygenSaturation: 100.5 }, ['/oxygenSaturation out-of-range']],
  ['early-warning', { systolic: 0 }, ['/systolic out-of-range']],
  ['early-warning', { systolic: 301 }, ['/systolic out-of-range']],
  ['early-warning', { temperature: 24.9 }, ['/temperature out-of-range']],
  ['early-warning', { temperature: 45 }, []],
  ['early-warning', { temperature: '38,4' }, ['/temperature not-a-number']],
  ['early-warning', { consciousness: 'awake' }, ['/consciousness unknown-id']],
  ['early-warning', { onOxygen: 'no' }, ['/onOxygen unknown-id']],
  ['early-warning', { scale: 3 }, ['/scale unknown-id']],
  ['early-warning', { age: 50.5 }, ['/age not-whole']],
  ['early-warning', { age: 131 }, ['/age out-of-range']],
  ['early-warning', { diastolic: 60 }, ['/diastolic unknown-field']],
  ['early-warning', { temperature: 'x', respirations: 'y' }, ['/respirations not-a-number', '/temperature not-a-number']], // biome-ignore format: one case
  ['mean-pressure', { systolic: 80, diastolic: 80 }, ['/diastolic not-below-systolic']],
  ['mean-pressure', { systolic: 81, diastolic: 80 }, []],
  ['mean-pressure', { systolic: 120, diastolic: -1 }, ['/diastolic out-of-range']],
  ['sepsis-screen', { glasgow: 2 }, ['/glasgow out-of-range']],
  ['sepsis-screen', { glasgow: 3 }, []],
  ['sepsis-screen', { glasgow: 15 }, []],
  ['sepsis-screen', { glasgow: 16 }, ['/glasgow out-of-range']],
  ['glasgow', { eyes: 5, verbal: 6, motor: 7 }, ['/eyes out-of-range', '/verbal out-of-range', '/motor out-of-range']], // biome-ignore format: one case
  ['glasgow', { eyes: 4, verbal: 'NT', motor: 'not-testable' }, []],
  ['body-mass-index', { weightKg: 0, heightCm: 10 }, ['/weightKg out-of-range', '/heightCm out-of-range']],
  ['pulse-pressure', 'x', [' missing']],
])('%s of %j: %j', (of, input, expected) => {
  expect(refused(of, input)).toEqual(expected);
});

test('a scale that is not said is that of the local rules; what else is absent is not known', () => {
  const local = parseScoreInputs('early-warning', {}, { ...DEFAULT_SCORE_RULES, oxygenScale: 2 });
  expect(local).toMatchObject({ ok: true, value: { scale: 2, onOxygen: null, age: null, pregnant: null } });
  expect(parseScoreInputs('early-warning', {})).toMatchObject({ ok: true, value: { scale: 1 } });
});
