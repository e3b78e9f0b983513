import type { WaveShape } from '../artery/waveShape.js';
import type { Breathing } from '../breathing/pattern.js';
import type { Preparation } from '../circumstances/circumstances.js';
import type { Rhythm } from '../heart/rhythm.js';
import type { RED_FLAGS } from './redFlags.js';
import type { ReportCode } from './report.js';

export type Sex = 'f' | 'm';
export type RedFlag = (typeof RED_FLAGS)[number];

/** A pair of pressures, mmHg. */
export type Levels = { readonly systolic: number; readonly diastolic: number };

/** A silent stretch between the first sounds and the loud ones; in mmHg of cuff pressure, top over bottom. */
export type Gap = { readonly topMmHg: number; readonly bottomMmHg: number };

/**
 * How far above rest the person is at first: mmHg of systolic at the start of each part.
 * Null is drawn from the seed. Source: physiology handbook 4.
 */
export type Alerting = {
  /** Falls away while the person sits, half in 5.8 minutes. */
  readonly sittingMmHg: number | null;
  /** Pulse and breaths above rest that fall away with it. */
  readonly sittingPulsePerMinute: number;
  readonly sittingBreathsPerMinute: number;
  /** Added by the first inflation of a visit, gone in two or three minutes. */
  readonly firstReadingMmHg: number | null;
  /** Because of who is measuring: highest within four minutes of their coming in. */
  readonly whiteCoatMmHg: number;
};

/** What a person may have besides; each is false for most. */
export type Traits = {
  readonly isPregnant: boolean;
  /** Hard arteries: sounds come further below the true systolic, the needle swings wider. */
  readonly isStiff: boolean;
  /** Treated as a heart that fails: strong beat after a pause, slow variation. */
  readonly isFailing: boolean;
  readonly hasColdHands: boolean;
};

/**
 * A simulated person with a lesson, as data: what an editor writes and a file carries. Pressures are those a perfect
 * listener would hear at rest (physiology handbook 1.1), not those inside the artery. Everything null is drawn from
 * the seed when the person is made. Built-in scenarios carry no text: their words are found by id.
 */
export type Scenario = {
  /** 1, before a heart of independent intervals could be chosen, is read as 2. */
  readonly schema: 2;
  /** Lower case with `-`. */
  readonly id: string;
  readonly title: string | null;
  readonly lesson: string | null;
  readonly ageYears: number;
  readonly sex: Sex;
  readonly rhythm: Rhythm;
  readonly breathing: Breathing;
  readonly systolic: number;
  readonly diastolic: number;
  /** Where the sounds are muffled, mmHg; null draws whether and where. */
  readonly muffled: number | null;
  /** How likely the muffling can be heard at all, 0 to 1; null is that of the person's group. */
  readonly muffledChance: number | null;
  /** Below the diastolic sounds may go on, muffled, down to this cuff pressure; null: they end as usual. */
  readonly soundsToMmHg: number | null;
  /** How likely that is in one reading, 0 to 1. */
  readonly soundsToChance: number;
  /** Loudness of the best sounds over a normal listener's threshold, dB; null is drawn. */
  readonly soundDb: number | null;
  readonly armCm: number;
  readonly gap: Gap | null;
  /** How likely somebody of this kind has a gap that is then drawn, 0 to 1; not asked where `gap` says where it is. */
  readonly gapChance: number;
  readonly waveShape: WaveShape;
  readonly alerting: Alerting;
  /** The fall of the systolic while breathing in; null is drawn, 3 to 6. Over 10 is a paradox. */
  readonly breathingSwingMmHg: number | null;
  readonly traits: Traits;
  /** Mean at home, where it is not that of the visit. */
  readonly home: Levels | null;
  /** The left arm, where it is not the right one, in which the levels above are. */
  readonly leftArm: Levels | null;
  /** Standing up: levels one and three minutes after, and the pulse then. The levels above are then those lying. */
  readonly standing: {
    readonly oneMinute: Levels;
    readonly threeMinutes: Levels;
    readonly pulsePerMinute: number;
  } | null;
  /** Under the tongue, degC; null: no fever. */
  readonly temperatureC: number | null;
  /** Noise of the place, dB(A). */
  readonly noiseDbA: number;
  /** The gauge and hose that come with this person; null: sound ones. */
  readonly instrument: { readonly zeroOffsetMmHg: number; readonly leakMmHgPerMinute: number } | null;
  /** How the person comes, always; left out: drawn for each visit. */
  readonly preparation?: Preparation;
  /** A reading this near to the truth is accepted. */
  readonly acceptedWithinMmHg: number;
  readonly redFlag: RedFlag | null;
  /** What a good observer reports of this person, the most telling first; absent: nobody said. */
  readonly report?: readonly ReportCode[];
};
