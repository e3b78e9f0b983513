import { WAVE_SHAPES } from '../artery/waveShape.js';
import { BREATHING_KINDS } from '../breathing/pattern.js';
import { PREPARATIONS } from '../circumstances/circumstances.js';
import { RHYTHM_KINDS, VARIATIONS } from '../heart/rhythm.js';
import { SCENARIO_LIMITS as L } from './limits.js';
import { RED_FLAGS } from './redFlags.js';
import { REPORTS } from './report.js';

type Range = readonly [number, number];
type Schema = { readonly [key: string]: unknown };

const number = ([minimum, maximum]: Range): Schema => ({ type: 'number', minimum, maximum });
const orNull = (schema: Schema): Schema => ({ anyOf: [schema, { type: 'null' }] });
const choice = (ids: readonly string[]): Schema => ({ enum: [...ids] });
const object = (properties: Schema, required: readonly string[] = []): Schema => ({
  type: 'object',
  properties,
  required: [...required],
  additionalProperties: false,
});

const levels = object({ systolic: number(L.systolic), diastolic: number(L.diastolic) }, [
  'systolic',
  'diastolic',
]);
const text = orNull({ type: 'string', maxLength: 4000 });
const yesOrNo = orNull({ type: 'boolean' });

/**
 * What a scenario may hold, as JSON Schema (draft 2020-12), published as `docs/scenario.schema.json`. It says what each
 * field may be; how fields go together (a diastolic under its systolic, a gap between the sounds) only `parseScenario` says.
 */
export const SCENARIO_SCHEMA: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: 'A simulated person',
  description:
    'Pressures in mmHg are those a perfect listener would hear at rest. What is left out or null is drawn for each visit, or absent.',
  ...object(
    {
      schema: { enum: [1, 2] },
      id: { type: 'string', maxLength: 60, pattern: '^[a-z0-9]+(-[a-z0-9]+)*$' },
      title: text,
      lesson: text,
      ageYears: number(L.ageYears),
      sex: choice(['f', 'm']),
      rhythm: object(
        {
          kind: orNull(choice(RHYTHM_KINDS)),
          ratePerMinute: number(L.ratePerMinute),
          variation: orNull(choice(VARIATIONS)),
          ectopicsPerMinute: orNull(number(L.ectopicsPerMinute)),
          coupling: orNull(number(L.coupling)),
          weakSystolic: orNull(number(L.systolic)),
          alternansMmHg: orNull(number(L.alternansMmHg)),
        },
        ['ratePerMinute'],
      ),
      breathing: object(
        {
          kind: orNull(choice(BREATHING_KINDS)),
          ratePerMinute: number(L.breathsPerMinute),
          cycleSeconds: orNull(number(L.cycleSeconds)),
        },
        ['ratePerMinute'],
      ),
      systolic: number(L.systolic),
      diastolic: number(L.diastolic),
      muffled: orNull(number(L.diastolic)),
      muffledChance: orNull(number(L.chance)),
      soundsToMmHg: orNull(number(L.soundsToMmHg)),
      soundsToChance: orNull(number(L.chance)),
      soundDb: orNull(number(L.soundDb)),
      armCm: number(L.armCm),
      gap: orNull(
        object({ topMmHg: number(L.systolic), bottomMmHg: number(L.systolic) }, ['topMmHg', 'bottomMmHg']),
      ),
      gapChance: orNull(number(L.chance)),
      waveShape: orNull(choice(WAVE_SHAPES)),
      alerting: orNull(
        object({
          sittingMmHg: orNull(number(L.alertingMmHg)),
          sittingPulsePerMinute: orNull(number(L.alertingMmHg)),
          sittingBreathsPerMinute: orNull(number(L.alertingMmHg)),
          firstReadingMmHg: orNull(number(L.alertingMmHg)),
          whiteCoatMmHg: orNull(number(L.alertingMmHg)),
        }),
      ),
      breathingSwingMmHg: orNull(number(L.alertingMmHg)),
      traits: orNull(
        object({ isPregnant: yesOrNo, isStiff: yesOrNo, isFailing: yesOrNo, hasColdHands: yesOrNo }),
      ),
      home: orNull(levels),
      leftArm: orNull(levels),
      standing: orNull(
        object({ oneMinute: levels, threeMinutes: levels, pulsePerMinute: number(L.ratePerMinute) }, [
          'oneMinute',
          'threeMinutes',
          'pulsePerMinute',
        ]),
      ),
      temperatureC: orNull(number(L.temperatureC)),
      noiseDbA: orNull(number(L.noiseDbA)),
      instrument: orNull(
        object({
          zeroOffsetMmHg: orNull(number(L.zeroOffsetMmHg)),
          leakMmHgPerMinute: orNull(number(L.leakMmHgPerMinute)),
        }),
      ),
      preparation: orNull(object(Object.fromEntries(PREPARATIONS.map((key) => [key, yesOrNo])))),
      acceptedWithinMmHg: orNull(number(L.acceptedWithinMmHg)),
      redFlag: orNull(choice(RED_FLAGS)),
      report: orNull({ type: 'array', items: choice(REPORTS), uniqueItems: true }),
    },
    ['schema', 'id', 'ageYears', 'sex', 'rhythm', 'breathing', 'systolic', 'diastolic', 'armCm'],
  ),
};
