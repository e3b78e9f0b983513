import { COUNT_FIGURES, type InflationRules } from '@evenfall/clinical';
import { rateRows } from '../counting/rateRows.js';
import { armsOf } from '../exercise/armsOf.js';
import type { Judged } from '../exercise/debrief.js';
import type { Exercise } from '../exercise/exercise.js';
import { type FallOf, MEANT_MMHG } from '../exercise/fall.js';
import { feltMmHg, isTouched } from '../exercise/felt.js';
import { EXERCISE_FIGURES } from '../exercise/figures.js';
import type { Replay } from '../exercise/replay.js';
import type { DebriefRules } from '../exercise/rules.js';
import { isSilent } from '../exercise/unheard.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import type { Base } from './base.js';

/** What an observer can leave out or overdo, with the one thing to do instead; whether it cost anything this time or not. */
export const CONDUCT = {
  'not-told': 'tell-at-once',
  'muffled-not-written': 'three-numbers',
  'nothing-measured': 'measure-first',
  'nothing-in-ears': 'sound-on',
  'nothing-felt': 'keep-fingers-on',
  'nothing-to-hear': 'by-feel',
  'felt-not-first': 'feel-first',
  'arm-not-rested': 'rest-the-arm',
  'held-on-the-way': 'never-stop',
  'pumped-too-high': 'no-higher',
  'pulse-miscounted': 'count-every-beat',
  'pulse-window-short': 'count-longer-pulse',
  'apex-not-counted': 'count-at-apex',
  'apex-miscounted': 'count-each-pair',
  'apex-window-short': 'count-full-minute',
  'breaths-miscounted': 'count-whole-breaths',
  'breaths-window-short': 'count-longer-breaths',
  'pulse-rhythm-not-said': 'say-irregular',
  'breaths-rhythm-not-said': 'say-irregular',
  'not-marked': 'mark-in-time',
  'first-not-marked': 'mark-in-time',
  'last-not-marked': 'mark-in-time',
} as const;
export type ConductCode = keyof typeof CONDUCT;
export const CONDUCT_CODES = Object.keys(CONDUCT) as readonly ConductCode[];
export type ConductDo = (typeof CONDUCT)[ConductCode];

/** One such thing, with its numbers. */
export type Conduct = {
  readonly code: ConductCode;
  readonly doInstead: ConductDo;
  readonly figures: Readonly<Record<string, number>>;
};

/**
 * What was not done by the protocol taught, the gravest first.
 * @param span the part of the visit that goes with this reading, seconds
 * Source: bedside handbook 3.4 to 3.10; assessment handbook 13.
 */
export function conductOf(
  exercise: Exercise,
  played: Replay,
  judged: Judged,
  base: Base | null,
  { runRules }: DebriefRules,
  span: readonly [from: number, to: number],
): Conduct[] {
  const found: Conduct[] = [];
  const add = (code: ConductCode, figures: Conduct['figures'] = {}) =>
    found.push({ code, doInstead: CONDUCT[code], figures });
  const { redFlag, counts, entered, fall, had, isByMuffled, isByFeel } = judged;
  if (redFlag?.isKnowable === true && exercise.evidence.saysActNow === false) add('not-told');
  const hasNumber = entered.systolic !== null || entered.diastolic !== null;
  if (judged.fromNothing === 'unmeasured') add('nothing-measured');
  if (isByMuffled && entered.muffled === null && entered.diastolic !== null) add('muffled-not-written');
  if (fall !== null && hasNumber) {
    if (judged.fromNothing === 'unheard' && isSilent(exercise)) add('nothing-in-ears');
    if (judged.fromNothing === 'unfelt') add('nothing-felt');
    if (had.systolic === null && !isByFeel) add('nothing-to-hear');
    const felt = feltMmHg(exercise, played, fall);
    if (felt === null && !isByFeel && base?.peakFault !== 'not-felt-first') add('felt-not-first');
    const rest = restBefore(exercise, played, fall, runRules.inflation);
    if (rest !== null && rest.waitedSeconds + EXERCISE_FIGURES.restRoomSeconds.value < rest.neededSeconds)
      add('arm-not-rested', rest);
  }
  const held = fall === null || base === null ? null : heldOnTheWay(played, fall, base);
  if (held !== null) add('held-on-the-way', held);
  const high = base === null ? null : pumpedTooHigh(played, base, runRules.inflation.marginMmHg, span);
  if (high !== null) add('pumped-too-high', high);
  const { deficitPerMinute } = judged.rates;
  const isDeficit = deficitPerMinute > COUNT_FIGURES.deficitReportPerMinute.value;
  // A pulse that was counted here; one that only stands beside a pressure was not.
  const hasPulse = counts.pulse !== null;
  const hasApex = counts.apex !== null || (entered.apexPerMinute ?? null) !== null;
  if (isDeficit && hasPulse && !hasApex) add('apex-not-counted', { deficitPerMinute });
  const rates = rateRows(judged, exercise.scenario);
  for (const of of ['pulse', 'apex', 'breaths'] as const) {
    const count = counts[of];
    if (count === null) continue;
    const { n, there, windowSeconds, isRight, better, rhythm, noticed } = count;
    // A count whose rate is accepted was not miscounted, though a beat was lost.
    const withinPerMinute = rates.find((one) => one.of === of)?.withinPerMinute ?? 0;
    const offPerMinute = (60 * Math.abs(n - there)) / windowSeconds;
    if (!isRight && offPerMinute > withinPerMinute) add(`${of}-miscounted`, { n, there, windowSeconds });
    if (better.nextWindowSeconds !== null)
      add(`${of}-window-short`, { windowSeconds, neededSeconds: better.nextWindowSeconds });
    if (of !== 'apex' && rhythm.inWindow === 'irregular' && noticed?.rhythmFelt !== 'irregular')
      add(`${of}-rhythm-not-said`);
  }
  const isTyped = (of: 'systolic' | 'diastolic') =>
    entered[of] !== null && base?.habits[of].isTimed === false;
  const [isFirstTyped, isLastTyped] = [isTyped('systolic'), !isByFeel && isTyped('diastolic')];
  if (fall !== null && isFirstTyped && (isLastTyped || entered.diastolic === null)) add('not-marked');
  else if (fall !== null && isFirstTyped) add('first-not-marked');
  else if (fall !== null && isLastTyped) add(entered.systolic === null ? 'not-marked' : 'last-not-marked');
  return found;
}

/** How long the arm had rested when the cuff went up for a reading, and how long it should have; null: it was not pumped up before. The other arm rests meanwhile. */
function restBefore(
  exercise: Exercise,
  { cuffMmHg, tracePerSecond, inflations }: Replay,
  { inflatedSeconds }: FallOf,
  rules: InflationRules,
): { waitedSeconds: number; neededSeconds: number; inflations: number } | null {
  const armAt = armsOf(exercise);
  const arm = armAt(inflatedSeconds);
  const isHeld = (i: number) => (cuffMmHg[i] as number) >= MEANT_MMHG && armAt(i / tracePerSecond) === arm;
  let i = Math.floor(inflatedSeconds * tracePerSecond) - 1;
  // The last air leaves slowly: the rest begins when the cuff holds the arm no longer.
  while (i >= 0 && !isHeld(i)) i -= 1;
  if (i < 0) return null;
  const emptySeconds = i / tracePerSecond;
  const before = inflations.filter((seconds) => seconds < emptySeconds && armAt(seconds) === arm);
  const begun = before.at(-1) ?? 0;
  return {
    waitedSeconds: inflatedSeconds - emptySeconds,
    neededSeconds: isTouched(exercise, begun, emptySeconds)
      ? rules.waitAfterEstimateSeconds
      : rules.waitAfterReadingSeconds,
    inflations: before.length,
  };
}

/** A hand that lets down evenly stops no longer than this, seconds; in so much time an even fall goes down further than `STILL_MMHG`. */
const HELD_SECONDS = 5;
const STILL_MMHG = 2;

/** The longest stop of the cuff within the sounds; null: none. */
function heldOnTheWay(
  { cuffMmHg, tracePerSecond }: Replay,
  { peakSeconds, endSeconds }: FallOf,
  { sounding }: Base,
): { mmHg: number; heldSeconds: number } | null {
  const last = Math.min(cuffMmHg.length - 1, Math.floor(endSeconds * tracePerSecond));
  let longest = { mmHg: 0, heldSeconds: 0 };
  let from = Math.ceil(peakSeconds * tracePerSecond);
  for (let i = from; i <= last; i++) {
    const now = cuffMmHg[i] as number;
    while (Math.abs((cuffMmHg[from] as number) - now) > STILL_MMHG) from += 1;
    const heldSeconds = (i - from) / tracePerSecond;
    const isWithin = now < sounding.systolic && now > sounding.diastolic;
    if (isWithin && heldSeconds > longest.heldSeconds) longest = { mmHg: now, heldSeconds };
  }
  return longest.heldSeconds >= HELD_SECONDS ? longest : null;
}

/** How high the cuff went, and how often, where it went far over what was needed; null: never. */
function pumpedTooHigh(
  { cuffMmHg, inflations, tracePerSecond }: Replay,
  { sounding }: Base,
  marginMmHg: number,
  [spanFrom, spanTo]: readonly [from: number, to: number],
): { mmHg: number; times: number; neededMmHg: number } | null {
  const neededMmHg = sounding.systolic + marginMmHg;
  const limit = neededMmHg + F.tooHighMmHg.value;
  const tops = inflations.map((from, k) => {
    if (from < spanFrom || from > spanTo) return 0;
    const to = inflations[k + 1] ?? Infinity;
    let top = 0;
    for (let i = Math.floor(from * tracePerSecond); i < cuffMmHg.length && i < to * tracePerSecond; i++)
      top = Math.max(top, cuffMmHg[i] as number);
    return top;
  });
  const over = tops.filter((top) => top > limit);
  return over.length === 0 ? null : { mmHg: Math.max(...over), times: over.length, neededMmHg };
}
