import type { Levels } from '../scenario/scenario.js';

export const EFFECT_CODES = [
  'sitting-down',
  'first-reading',
  'white-coat',
  'standing-up',
  'other-arm',
  'talking',
  'legs-crossed',
  'back-unsupported',
  'full-bladder',
  'caffeine',
  'nicotine',
  'cold',
  'arm-muscles',
  'arm-height',
  'cuff-size',
  'cuff-loose',
  'tight-sleeve',
  'pressed-hard',
  'under-cuff',
  'congestion',
] as const;
export type EffectCode = (typeof EFFECT_CODES)[number];

/** One thing that moves a reading away from the person at rest, mmHg. */
export type Effect = Levels & {
  readonly code: EffectCode;
  /** `person`: the pressure itself is different; `cuff`: only what the cuff gets to see of it; `sound`: only what is heard. */
  readonly actsOn: 'person' | 'cuff' | 'sound';
};

/** What a simulated person really has at an instant. Source of the two truths: physiology handbook 1.1, 1.2. */
export type Truth = {
  readonly atSeconds: number;
  /** At rest, properly measured: the number that a scenario is written with. */
  readonly rest: Levels;
  /**
   * Mean of what a perfect listener would get on each beat of the 60 s about the instant, effects on the person
   * included. Weak beats (premature ones, every second one of alternans) are left out, and in a paradox it is the
   * pressure while breathing out, at which sounds begin.
   */
  readonly longRun: Levels;
  /** The same, inside the artery. */
  readonly arterial: Levels;
  /** Where the muffling would be heard; null: it cannot be heard. */
  readonly muffled: number | null;
  readonly pulsePerMinute: number;
  /** Beats a practised finger feels at the open wrist. */
  readonly wristPerMinute: number;
  readonly breathsPerMinute: number;
  /** Every effect at work at that instant, largest systolic first. */
  readonly effects: readonly Effect[];
};
