import {
  CONSCIOUSNESS_LEVELS,
  type Refusal,
  SCORE_IDS,
  type ScoreId,
  type ScoreInput,
} from '@evenfall/clinical';
import type { Given, Option } from '../options/option.js';

/** The options that a score may take, each with the input it gives. */
const INPUTS: readonly (readonly [ScoreInput, Option])[] = [
  ['respirations', value('respirations', 'options.respirations', 'RATE')],
  ['oxygenSaturation', value('oxygen-saturation', 'options.oxygenSaturation', 'PERCENT')],
  ['scale', { ...value('scale', 'options.oxygenScale', 'SCALE'), choices: ['1', '2'] }],
  ['onOxygen', { name: 'on-oxygen', kind: 'switch', means: 'options.onOxygen' }],
  ['systolic', value('systolic', 'options.systolic', 'MMHG')],
  ['diastolic', value('diastolic', 'options.diastolic', 'MMHG')],
  ['pulse', value('pulse', 'options.pulsePerMinute', 'RATE')],
  [
    'consciousness',
    { ...value('consciousness', 'options.consciousness', 'LEVEL'), choices: CONSCIOUSNESS_LEVELS },
  ],
  ['temperature', value('temperature', 'options.temperature', 'CELSIUS')],
  ['glasgow', value('glasgow', 'options.glasgow', 'TOTAL')],
  ['eyes', value('eyes', 'options.eyes', 'POINTS')],
  ['verbal', value('verbal', 'options.verbal', 'POINTS')],
  ['motor', value('motor', 'options.motor', 'POINTS')],
  ['age', value('age', 'options.age', 'YEARS')],
  ['pregnant', { name: 'pregnant', kind: 'switch', means: 'options.scorePregnant' }],
  ['spinalInjury', { name: 'spinal-injury', kind: 'switch', means: 'options.spinalInjury' }],
  ['weightKg', value('weight-kg', 'options.weightKg', 'KG')],
  ['heightCm', value('height-cm', 'options.scoreHeightCm', 'CM')],
];

/** All options of `evenfall score`. A refusal names its field in camelCase; the option is found by it. */
export const SCORE_OPTIONS: readonly Option[] = [
  {
    name: 'of',
    kind: 'value',
    means: 'options.scoreOf',
    hint: 'SCORE',
    choices: SCORE_IDS,
    required: true,
  },
  ...INPUTS.map(([input, option]) => ({ ...option, field: `/${input}` })),
];

function value(name: string, means: Option['means'], hint: string): Option {
  return { name, kind: 'value', means, hint };
}

/**
 * What was typed for a score. A value that was not typed is absent; a switch that was not is off where the score asks
 * for it, and absent where it does not.
 */
export function typedFor(takes: readonly ScoreInput[], given: Given): Record<string, unknown> {
  const typed = INPUTS.flatMap(([input, { name, kind }]): [string, unknown][] => {
    if (kind === 'value') {
      const text = given.text(name);
      return text === null ? [] : [[input, text]];
    }
    return given.isOn(name) || takes.includes(input) ? [[input, given.isOn(name)]] : [];
  });
  return Object.fromEntries(typed);
}

/** Refusals that name what a score takes as it is typed. */
export function asTyped(refusals: readonly Refusal[]): Refusal[] {
  return refusals.map((one) => ({ ...one, choices: one.choices.map(optionOf) }));
}

function optionOf(input: string): string {
  const found = INPUTS.find(([key]) => key === input);
  return found === undefined ? input : `--${found[1].name}`;
}

/** Narrows the id that the option's choices already held it to. */
export function scoreIdOf(text: string | null): ScoreId | null {
  return SCORE_IDS.find((id) => id === text) ?? null;
}
