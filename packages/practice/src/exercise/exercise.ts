import type { Count, Run } from '@evenfall/clinical';
import type { Action, Circumstances, Instrument, Scenario } from '@evenfall/physiology';

/** A count as it was made, and the second of the visit at which its window began. */
export type Counted = { readonly startSeconds: number; readonly count: Count };

/** What the screens kept of an exercise: the very evidence of the bedside. */
export type Evidence = {
  /** The run as marked; `atSeconds` of its moments count from `startSeconds` of the visit. Null: no reading was made. */
  readonly run: { readonly startSeconds: number; readonly run: Run } | null;
  readonly pulse: Counted | null;
  readonly breaths: Counted | null;
  /** The heart, heard at the apex; absent or null: not counted there. */
  readonly apex?: Counted | null;
  /** Whether the observer said that something here cannot wait; null: was not asked. */
  readonly saysActNow: boolean | null;
  /** Whether sounds were shown instead of heard. */
  readonly wasShown: boolean;
  /** From the loudness check: quietest tap heard, dB over a normal listener's threshold; null: not checked. */
  readonly thresholdDb: number | null;
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
};

/**
 * One exercise as data. From scenario, seed, circumstances, instrument and actions alone the same model plays the whole visit
 * again, to the last bit; evidence and entered numbers are what a person made of it.
 */
export type Exercise = {
  readonly schema: 1;
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
  readonly evidence: Evidence;
  readonly entered: Entered;
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
