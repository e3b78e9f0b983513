import {
  BREATHING_KINDS,
  PREPARATIONS,
  RED_FLAGS,
  REPORTS,
  RHYTHM_KINDS,
  VARIATIONS,
  WAVE_SHAPES,
} from '@evenfall/physiology';
import type { SentenceKey } from '@evenfall/words';

/** What stands in a field: a number, a line, a text, a yes, one of a list (`isFree`: or nothing), or several of it in order. */
export type FieldShape =
  | { readonly is: 'number' | 'line' | 'text' | 'flag' }
  | { readonly is: 'choice'; readonly choices: readonly Choice[]; readonly isFree: boolean }
  | { readonly is: 'several'; readonly choices: readonly Choice[] };
export type Choice = { readonly id: string; readonly says: SentenceKey };

/** A field by the path of its place in the scenario, which is also the JSON Pointer of a refusal without its first stroke. */
export type ScenarioField = {
  readonly path: string;
  readonly says: SentenceKey;
  readonly shape: FieldShape;
  /** Left blank it is drawn for each visit. */
  readonly isDrawn: boolean;
};
export type FieldGroup = { readonly says: SentenceKey; readonly fields: readonly ScenarioField[] };

type FormKey<Key extends SentenceKey> = Key extends `scenarioForm.${infer Name}` ? Name : never;
type Named = FormKey<SentenceKey>;

const field = (path: Named, shape: FieldShape, isDrawn = false): ScenarioField => ({
  path: path === 'title1' ? 'title' : path,
  says: `scenarioForm.${path}`,
  shape,
  isDrawn,
});
const number = (path: Named) => field(path, { is: 'number' });
const drawn = (path: Named) => field(path, { is: 'number' }, true);
const flag = (path: Named) => field(path, { is: 'flag' });
const choice = <Id extends string>(
  path: Named,
  ids: readonly Id[],
  says: (id: Id) => SentenceKey,
  isFree = false,
) => field(path, { is: 'choice', choices: ids.map((id) => ({ id, says: says(id) })), isFree });

/** Every field of a scenario in groups, in the order in which one thinks of a person. */
export const FIELD_GROUPS: readonly FieldGroup[] = [
  {
    says: 'scenarioForm.group-who',
    fields: [
      field('title1', { is: 'line' }),
      field('id', { is: 'line' }),
      field('lesson', { is: 'text' }),
      number('ageYears'),
      choice('sex', ['f', 'm'], (id) => `scenarioForm.sex-${id}`),
      number('armCm'),
      number('temperatureC'),
    ],
  },
  {
    says: 'scenarioForm.group-pressure',
    fields: [
      number('systolic'),
      number('diastolic'),
      drawn('muffled'),
      drawn('muffledChance'),
      number('soundsToMmHg'),
      number('soundsToChance'),
      choice('waveShape', WAVE_SHAPES, (id) => `scenarioForm.wave-${id}`),
      drawn('breathingSwingMmHg'),
    ],
  },
  {
    says: 'scenarioForm.group-gap',
    fields: [number('gap/topMmHg'), number('gap/bottomMmHg'), number('gapChance')],
  },
  {
    says: 'scenarioForm.group-heart',
    fields: [
      choice('rhythm/kind', RHYTHM_KINDS, (id) => `scenarioForm.rhythm-${id}`),
      number('rhythm/ratePerMinute'),
      choice('rhythm/variation', VARIATIONS, (id) => `scenarioForm.variation-${id}`),
      number('rhythm/ectopicsPerMinute'),
      drawn('rhythm/coupling'),
      number('rhythm/weakSystolic'),
      number('rhythm/alternansMmHg'),
    ],
  },
  {
    says: 'scenarioForm.group-breathing',
    fields: [
      choice('breathing/kind', BREATHING_KINDS, (id) => `scenarioForm.breathing-${id}`),
      number('breathing/ratePerMinute'),
      number('breathing/cycleSeconds'),
    ],
  },
  {
    says: 'scenarioForm.group-preparation',
    fields: PREPARATIONS.map((one) => flag(`preparation/${one}`)),
  },
  { says: 'scenarioForm.group-sound', fields: [drawn('soundDb'), number('noiseDbA')] },
  {
    says: 'scenarioForm.group-alerting',
    fields: [
      drawn('alerting/sittingMmHg'),
      number('alerting/sittingPulsePerMinute'),
      number('alerting/sittingBreathsPerMinute'),
      drawn('alerting/firstReadingMmHg'),
      number('alerting/whiteCoatMmHg'),
    ],
  },
  {
    says: 'scenarioForm.group-traits',
    fields: [
      flag('traits/isPregnant'),
      flag('traits/isStiff'),
      flag('traits/isFailing'),
      flag('traits/hasColdHands'),
    ],
  },
  {
    says: 'scenarioForm.group-elsewhere',
    fields: [
      number('home/systolic'),
      number('home/diastolic'),
      number('leftArm/systolic'),
      number('leftArm/diastolic'),
      number('standing/oneMinute/systolic'),
      number('standing/oneMinute/diastolic'),
      number('standing/threeMinutes/systolic'),
      number('standing/threeMinutes/diastolic'),
      number('standing/pulsePerMinute'),
    ],
  },
  {
    says: 'scenarioForm.group-instrument',
    fields: [number('instrument/zeroOffsetMmHg'), number('instrument/leakMmHgPerMinute')],
  },
  {
    says: 'scenarioForm.group-judged',
    fields: [number('acceptedWithinMmHg'), choice('redFlag', RED_FLAGS, (id) => `debrief.${id}`, true)],
  },
  {
    says: 'scenarioForm.group-report',
    fields: [
      {
        path: 'report',
        says: 'scenarioForm.group-report',
        shape: { is: 'several', choices: REPORTS.map((id) => ({ id, says: `counts.report-${id}` })) },
        isDrawn: false,
      },
    ],
  },
];

export const SCENARIO_FIELDS: readonly ScenarioField[] = FIELD_GROUPS.flatMap(({ fields }) => fields);
