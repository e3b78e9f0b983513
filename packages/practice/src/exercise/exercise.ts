import type { Count, Circumstances as CountCircumstances, Run } from '@evenfall/clinical';
import type { Action, Circumstances, Instrument, Scenario } from '@evenfall/physiology';

/** What was noticed with a count; null is not said. */
export type CountNoticed = Pick<CountCircumstances, 'rhythmFelt' | 'strength' | 'site'>;

/** A count as it was made, the second of the visit at which its window began, and what was noticed; absent: nothing was said. */
export type Counted = {
  readonly startSeconds: number;
  readonly count: Count;
  readonly noticed?: CountNoticed;
};

/** Taps, one for each beat or breath as it came: when the first was made, and each in seconds from it; what was noticed. */
export type Tapped = {
  readonly startSeconds: number;
  readonly seconds: readonly number[];
  readonly noticed?: CountNoticed;
};

/** What can be counted or tapped. */
export type CountedSign = 'pulse' | 'apex' | 'breaths';

/** What the screens kept of an exercise: the very evidence of the bedside. */
export type Evidence = {
  /** The last run as marked; `atSeconds` of its moments count from `startSeconds` of the visit. Null: no reading was made. */
  readonly run: { readonly startSeconds: number; readonly run: Run } | null;
  readonly pulse: Counted | null;
  readonly breaths: Counted | null;
  /** The heart, heard at the apex; absent or null: not counted there. */
  readonly apex?: Counted | null;
  /** What was tapped instead of counted; absent: nothing. */
  readonly taps?: Readonly<Partial<Record<CountedSign, Tapped>>>;
  /** Whether the observer said that something here cannot wait; null: was not asked. */
  readonly saysActNow: boolean | null;
  /** Whether sounds were shown instead of heard. */
  readonly wasShown: boolean;
  /** From the loudness check: quietest tap heard, dB over a normal listener's threshold; null: not checked. */
  readonly thresholdDb: number | null;
};

/** A reading that was made before the last one of its exercise. */
export type EarlierReading = NonNullable<Evidence['run']> & {
  readonly entered: Pick<Entered, 'systolic' | 'muffled' | 'diastolic'>;
};

/** The numbers that were charted; null is not given. */
export type Entered = {
  readonly systolic: number | null;
  readonly muffled: number | null;
  readonly diastolic: number | null;
  readonly pulsePerMinute: number | null;
  readonly breathsPerMinute: number | null;
  /** Heard at the apex; absent or null: not given. */
  readonly apexPerMinute?: number | null;
  /** Under the tongue, degC; absent or null: not given. */
  readonly temperatureC?: number | null;
};

/** The number of the shape of an exercise, of the one before somebody could sit down anew, before taps were kept, and before several readings were. */
export const EXERCISE_SCHEMA = 4;
export const THIRD_EXERCISE_SCHEMA = 3;
export const SECOND_EXERCISE_SCHEMA = 2;
export const FIRST_EXERCISE_SCHEMA = 1;

/**
 * One exercise as data. From scenario, seed, circumstances, instrument and actions alone the same model plays the whole visit
 * again, to the last bit; evidence and entered numbers are what a person made of it: the last reading of the pressure stands in
 * `evidence.run` and `entered`, those before it in `earlier`.
 *
 * Schema 1 kept the last reading alone; schema 2 is read as 3, which has taps (`evidence.taps`), an asked quiet (`isQuieter`)
 * and a raised arm (`wasArmRaised`) beside it; 3 as 4, in which somebody may get up and sit down anew (`isSeatedAnew`).
 */
export type Exercise = {
  readonly schema: typeof EXERCISE_SCHEMA;
  /** The number of the model that it was practised with (`MODEL`): another one plays another visit. */
  readonly model: number;
  readonly scenario: Scenario;
  readonly seed: number;
  readonly circumstances: Circumstances;
  readonly instrument: Instrument;
  /** In order of their ticks. */
  readonly actions: readonly Action[];
  /** Length of the visit. */
  readonly seconds: number;
  /** Readings of the pressure before the last one, in order; on the other arm and on the feet, too. */
  readonly earlier: readonly EarlierReading[];
  readonly evidence: Evidence;
  readonly entered: Entered;
  /** Whether there was any sound at all, where that was kept beside the exercise; absent: not known. */
  readonly aids?: { readonly hadSound: boolean };
};

export const NO_EVIDENCE: Evidence = {
  run: null,
  pulse: null,
  breaths: null,
  saysActNow: null,
  wasShown: false,
  thresholdDb: null,
};

export const NOTHING_ENTERED: Entered = {
  systolic: null,
  muffled: null,
  diastolic: null,
  pulsePerMinute: null,
  breathsPerMinute: null,
};
