import type { Flag } from '../contract/flag.js';
import { isAtThird } from '../score/falls.js';
import { SCORE_FIGURES as STANDING } from '../score/figures.js';
import type { ActNowRules } from './actNowRules.js';
import { type ArmCuffsCode, armCuffFlags, type CuffedReading } from './armCuffs.js';
import { isToLieDown } from './lieDown.js';
import { type LyingCode, lyingFlags } from './lyingBefore.js';
import { newestFirst } from './newestFirst.js';
import { type RepeatAtOnce, repeatAtOnce } from './repeatAtOnce.js';
import { NO_ROUND_FACTS } from './roundFacts.js';
import type { RoundReading } from './roundReading.js';
import { isSince, ROUND_RULE, type RoundRuleId } from './roundResult.js';
import { type SpacedReading, type SpacingCode, spacingFlags } from './spacing.js';
import { standingOf } from './standingOf.js';

/** A reading with all that is said of it beside its value and that of its round. Minutes lying are null where nobody said. */
export type NotedReading = RoundReading &
  CuffedReading &
  SpacedReading & {
    readonly lyingMinutes: number | null;
    /** The sounds went on to zero: its diastolic is where they muffled. Absent is no. */
    readonly isMuffledUsed?: boolean;
    /** Its place in the work of the round, as of its counts. */
    readonly sequence: number;
  };

export type NoteCode =
  | ArmCuffsCode
  | LyingCode
  | SpacingCode
  | 'no-pulse-in-posture'
  | 'third-minute-missed'
  | 'fall-lasts'
  | 'diastolic-of-muffling';

/**
 * What is to be said beside a round and is no part of what was made of it: it is made anew whenever it is shown, from the
 * same evidence, so that no kept value changes with it.
 */
export type RoundNotes = {
  /** Beside a reading, by its id; absent for nothing. */
  readonly ofReading: Readonly<Record<string, readonly Flag<NoteCode>[]>>;
  /** Beside the comparison of the two arms. */
  readonly arms: readonly Flag<NoteCode>[];
  /** Beside the test of lying and standing. */
  readonly standing: readonly Flag<NoteCode>[];
  /** Before the category: what it would read without as if all were well. */
  readonly category: readonly Flag<NoteCode>[];
  /** The repeat at once that is in the round already; null for none. */
  readonly repeat: RepeatAtOnce | null;
  /** The id of the reading that scores go by in place of the average ({@link newestFirst}); null where the average goes before. */
  readonly newestFirst: string | null;
};

export const NO_ROUND_NOTES: RoundNotes = {
  ofReading: {},
  arms: [],
  standing: [],
  category: [],
  repeat: null,
  newestFirst: null,
};

type NoteRules = {
  readonly gapSeconds: number;
  readonly actNow: ActNowRules;
  readonly rule?: RoundRuleId;
};

/**
 * @param readings those that stand, in the order in which they were taken
 * @param rules what the protocol leaves between two readings, s, its limits of what is acted on at once, and the version of the
 *   rule by which the round was made, absent for that of today
 * @param pulses the place in the work of each pulse of the round that was counted or tapped to a number
 * @param ageMonths completed months of the person at the round; null is not known
 */
export function roundNotes(
  readings: readonly NotedReading[],
  { gapSeconds, actNow, rule = ROUND_RULE }: NoteRules,
  pulses: readonly number[],
  ageMonths: number | null,
): RoundNotes {
  const spacing = spacingFlags(readings, gapSeconds);
  const firstUp = readings.findIndex(({ posture }) => posture === 'stand');
  const baseline = readings.slice(0, Math.max(0, firstUp)).findLast(isLying);
  const notes = readings.map((reading, at): readonly [string, readonly Flag<NoteCode>[]] => {
    const soon = spacing.get(reading.id);
    return [
      reading.id,
      [
        // Who lies down again after standing is no baseline of the test.
        ...(firstUp >= 0 && at > firstUp ? [] : lyingFlags(reading.lyingMinutes, reading === baseline)),
        ...(soon === undefined ? [] : [soon]),
        ...pulseFlags(reading, readings, pulses),
      ],
    ];
  });
  return {
    ofReading: Object.fromEntries(notes.filter(([, flags]) => flags.length > 0)),
    arms: armCuffFlags(readings),
    standing: [...thirdMinuteFlags(readings, ageMonths, actNow), ...lastingFallFlags(readings)],
    category: readings.some(({ isMuffledUsed }) => isMuffledUsed === true)
      ? [{ code: 'diastolic-of-muffling', figures: {} }]
      : [],
    repeat: repeatAtOnce(readings),
    newestFirst: isSince(rule, 'round-5') ? (newestFirst(readings, ageMonths, actNow)?.id ?? null) : null,
  };
}

function isLying({ posture }: NotedReading): boolean {
  return posture === 'lie' || posture === 'lie-left';
}

/** A pulse was counted in another posture before, and none in this one: neither with a reading nor between two of another. */
function pulseFlags(
  { pulsePerMinute, posture, sequence }: NotedReading,
  readings: readonly NotedReading[],
  pulses: readonly number[],
): Flag<NoteCode>[] {
  if (pulsePerMinute !== null) return [];
  const counted = readings.filter((one) => one.pulsePerMinute !== null);
  const elsewhere = readings.filter((one) => one.posture !== posture).map((one) => one.sequence);
  const from = Math.max(...elsewhere.filter((one) => one < sequence), Number.NEGATIVE_INFINITY);
  const to = Math.min(...elsewhere.filter((one) => one > sequence), Number.POSITIVE_INFINITY);
  const isHere =
    counted.some((one) => one.posture === posture) || pulses.some((one) => one > from && one < to);
  const isElsewhere = counted.some((one) => one.posture !== posture && one.sequence < sequence);
  return isElsewhere && !isHere ? [{ code: 'no-pulse-in-posture', figures: {} }] : [];
}

/**
 * That of a test of lying and standing nothing was measured at the third minute: whether a fall came or lasted until then is
 * not known. Whoever merely stood at a reading was not tested. Whom a reading lays down was rightly not left standing; a fall that is
 * borne lays nobody down. Source: bedside handbook 3.14 (at 1 and 3 min; stop).
 */
function thirdMinuteFlags(
  readings: readonly NotedReading[],
  ageMonths: number | null,
  rules: ActNowRules,
): Flag<NoteCode>[] {
  const upright = readings.filter(({ posture }) => posture === 'stand');
  const minutes = upright.flatMap(({ uprightMinutes }) => uprightMinutes ?? []);
  if (minutes.length === 0 || minutes.some((one) => isAtThird({ minutes: one }))) return [];
  const isTested = standingOf({ readings, isFeltIrregular: null, facts: NO_ROUND_FACTS }) !== null;
  if (!isTested || isToLieDown(readings, ageMonths, rules)) return [];
  return [{ code: 'third-minute-missed', figures: { minutes: STANDING.standingWithinMinutes.value } }];
}

/**
 * That a fall which was met before is still there at the third minute: that tells one that lasts from one that passes.
 * Source: bedside handbook 3.14 (a sustained fall within 3 min).
 */
function lastingFallFlags(readings: readonly NotedReading[]): Flag<NoteCode>[] {
  const falls = standingOf({ readings, isFeltIrregular: null, facts: NO_ROUND_FACTS })?.falls ?? [];
  const third = falls.findLast((fall) => isAtThird(fall));
  if (third?.isFall !== true) return [];
  const isBefore = falls.some(
    (fall) => !isAtThird(fall) && fall.minutes < third.minutes && fall.isFall === true,
  );
  const { minutes, systolicFall, diastolicFall, isSystolicFall, isDiastolicFall } = third;
  const figures = {
    minutes,
    ...(isSystolicFall === true && systolicFall !== null ? { systolicFall } : {}),
    ...(isDiastolicFall === true && diastolicFall !== null ? { diastolicFall } : {}),
  };
  return isBefore ? [{ code: 'fall-lasts', figures }] : [];
}
