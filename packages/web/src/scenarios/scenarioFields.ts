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
  /** What it means that it is left blank; null: it may not be, or says so by itself. */
  readonly blank: SentenceKey | null;
};
export type FieldGroup = { readonly says: SentenceKey; readonly fields: readonly ScenarioField[] };

type FormKey<Key extends SentenceKey> = Key extends `scenarioForm.${infer Name}` ? Name : never;
type Named = FormKey<SentenceKey>;
type Blank = Extract<Named, 'drawn' | `blank-${string}`>;

const field = (path: Named, shape: FieldShape, blank: Blank | null = null): ScenarioField => ({
  path: path === 'title1' ? 'title' : path,
  says: `scenarioForm.${path}`,
  shape,
  blank: blank === null ? null : `scenarioForm.${blank}`,
});
const number = (path: Named, blank: Blank | null = null) => field(path, { is: 'number' }, blank);
const drawn = (path: Named) => number(path, 'drawn');
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
      field('lesson', { is: 'text' }, 'blank-noLesson'),
      number('ageYears'),
      choice('sex', ['f', 'm'], (id) => `scenarioForm.sex-${id}`),
      number('armCm'),
      number('temperatureC', 'blank-noFever'),
    ],
  },
  {
    says: 'scenarioForm.group-pressure',
    fields: [
      number('systolic'),
      number('diastolic'),
      drawn('muffled'),
      drawn('muffledChance'),
      number('soundsToMmHg', 'blank-usualEnd'),
      number('soundsToChance', 'blank-never'),
      choice('waveShape', WAVE_SHAPES, (id) => `scenarioForm.wave-${id}`),
      drawn('breathingSwingMmHg'),
    ],
  },
  {
    says: 'scenarioForm.group-gap',
    fields: [
      number('gap/topMmHg', 'blank-noGap'),
      number('gap/bottomMmHg', 'blank-noGap'),
      number('gapChance', 'blank-never'),
    ],
  },
  {
    says: 'scenarioForm.group-heart',
    fields: [
      choice('rhythm/kind', RHYTHM_KINDS, (id) => `scenarioForm.rhythm-${id}`),
      number('rhythm/ratePerMinute'),
      choice('rhythm/variation', VARIATIONS, (id) => `scenarioForm.variation-${id}`),
      number('rhythm/ectopicsPerMinute', 'blank-noPremature'),
      drawn('rhythm/coupling'),
      number('rhythm/weakSystolic', 'blank-asRhythm'),
      number('rhythm/alternansMmHg', 'blank-noDifference'),
    ],
  },
  {
    says: 'scenarioForm.group-breathing',
    fields: [
      choice('breathing/kind', BREATHING_KINDS, (id) => `scenarioForm.breathing-${id}`),
      number('breathing/ratePerMinute'),
      number('breathing/cycleSeconds', 'blank-noCycles'),
    ],
  },
  {
    says: 'scenarioForm.group-preparation',
    fields: PREPARATIONS.map((one) => flag(`preparation/${one}`)),
  },
  { says: 'scenarioForm.group-sound', fields: [drawn('soundDb'), number('noiseDbA', 'blank-quietRoom')] },
  {
    says: 'scenarioForm.group-alerting',
    fields: [
      drawn('alerting/sittingMmHg'),
      number('alerting/sittingPulsePerMinute', 'blank-notAtAll'),
      number('alerting/sittingBreathsPerMinute', 'blank-notAtAll'),
      drawn('alerting/firstReadingMmHg'),
      number('alerting/whiteCoatMmHg', 'blank-notAtAll'),
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
      number('home/systolic', 'blank-asHere'),
      number('home/diastolic', 'blank-asHere'),
      number('leftArm/systolic', 'blank-asRight'),
      number('leftArm/diastolic', 'blank-asRight'),
      number('standing/oneMinute/systolic', 'blank-notStood'),
      number('standing/oneMinute/diastolic', 'blank-notStood'),
      number('standing/threeMinutes/systolic', 'blank-notStood'),
      number('standing/threeMinutes/diastolic', 'blank-notStood'),
      number('standing/pulsePerMinute', 'blank-notStood'),
    ],
  },
  {
    says: 'scenarioForm.group-instrument',
    fields: [
      number('instrument/zeroOffsetMmHg', 'blank-atZero'),
      number('instrument/leakMmHgPerMinute', 'blank-holds'),
    ],
  },
  {
    says: 'scenarioForm.group-judged',
    fields: [
      number('acceptedWithinMmHg', 'blank-five'),
      choice('redFlag', RED_FLAGS, (id) => `debrief.${id}`, true),
    ],
  },
  {
    says: 'scenarioForm.group-report',
    fields: [
      {
        path: 'report',
        says: 'scenarioForm.group-report',
        shape: { is: 'several', choices: REPORTS.map((id) => ({ id, says: `counts.report-${id}` })) },
        blank: null,
      },
    ],
  },
];

export const SCENARIO_FIELDS: readonly ScenarioField[] = FIELD_GROUPS.flatMap(({ fields }) => fields);
