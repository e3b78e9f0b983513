import type { Gap, Levels, Scenario } from '../scenario/scenario.js';

/**
 * A simulated person: a scenario with everything drawn once from a seed. Plain data; the same scenario and seed give
 * the same person everywhere. Pressures mmHg; levels are what a perfect listener would hear at rest.
 */
export type Person = {
  readonly scenario: Scenario;
  readonly seed: number;
  /** Seed of its beats, breaths and sounds; that of the person but where these were begun afresh. */
  readonly beatSeed: number;
  /** Instant of the visit at which its beats and breaths begin, beat 0; see `movedTo`. */
  readonly originSeconds: number;
  readonly rest: Levels;
  /** How far under the true systolic the artery first opens with a sound, and over the true diastolic the last one is. */
  readonly openingMmHg: number;
  readonly closingMmHg: number;
  readonly soundDb: number;
  /** Muffling starts this far over the diastolic; null: it cannot be heard in this person. */
  readonly muffledAboveMmHg: number | null;
  readonly gap: Gap | null;
  /** Which of the phases II and III this person has. */
  readonly hasSwish: boolean;
  readonly hasCrisp: boolean;
  /** A pulse comes back under the finger when the cuff is this far below the systolic. */
  readonly feelingMmHg: number;
  readonly alerting: {
    readonly sittingMmHg: number;
    readonly sittingPulsePerMinute: number;
    readonly sittingBreathsPerMinute: number;
    readonly firstReadingMmHg: number;
    readonly whiteCoatMmHg: number;
  };
  readonly breathingSwingMmHg: number;
  /** Amplitude of the slow ten-second wave of the systolic. */
  readonly slowWaveMmHg: number;
  /** SD of its slow wandering, and of what is left from beat to beat. */
  readonly slowSdMmHg: number;
  readonly beatSdMmHg: number;
  readonly beatDiastolicSdMmHg: number;
  /** SD of the loudness of the sounds from beat to beat. */
  readonly soundSdDb: number;
  /** Electrical beat to the foot of the pulse in the arm. */
  readonly delaySeconds: number;
  /** Amplitudes of the heart period, seconds: with the breath, with the slow wave, the SD of the slow rest, and of what each beat has for itself. */
  readonly heart: {
    readonly breathSeconds: number;
    readonly slowSeconds: number;
    readonly driftSeconds: number;
    readonly independentSeconds: number;
  };
};
