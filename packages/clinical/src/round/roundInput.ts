import type { ConsciousnessLevel } from '../sign/sign.js';
import type { EmergencyFeature } from './knownSigns.js';
import type { RoundFacts } from './roundFacts.js';
import type { RoundReading } from './roundReading.js';

/** A reading of the round with whether the pulse was felt irregular then; null is not known. */
export type JudgedReading = RoundReading & { readonly irregular: boolean | null };

/**
 * What a round came to, as its result is made from it: the readings in order, and the newest of each other sign that
 * has a number. Rates per minute, temperature degC, saturation percent, height cm, weight kg; null is not taken or not known.
 */
export type RoundInput = {
  readonly readings: readonly JudgedReading[];
  readonly pulse: number | null;
  readonly breaths: number | null;
  readonly isFeltIrregular: boolean | null;
  readonly temperature: number | null;
  readonly oxygen: {
    readonly percent: number;
    readonly onOxygen: boolean;
    /** Whether its sign was kept with the advice not to rely on it. */
    readonly isDoubtful: boolean;
  } | null;
  readonly consciousness: ConsciousnessLevel | null;
  readonly heightCm: number | null;
  readonly weightKg: number | null;
  /** The emergency features that the person has; empty when all were asked and none is there, null when none was asked. */
  readonly features: readonly EmergencyFeature[] | null;
  readonly unwell: boolean | null;
  readonly facts: RoundFacts;
};
