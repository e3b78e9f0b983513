import { DEFAULT_DEFLATION_RULES, DEFAULT_INFLATION_RULES } from '@evenfall/clinical';
import { type LetDownPlan, type Levels, TICKS_PER_SECOND } from '@evenfall/physiology';
import type { Exercise } from '../exercise/exercise.js';
import type { FallOf } from '../exercise/fall.js';
import { type Replay, traceAt } from '../exercise/replay.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import type { FaultCode } from './faults.js';

/** Clocks and rounding: a rate this little beyond the limit is not called a fault, mmHg/s. */
const RATE_ROOM = 0.25;
/** A cuff over this squeezes: a finger on the wrist then feels for the pulse, mmHg. */
const SQUEEZES_MMHG = 40;
/** A cuff that falls slower than this stands still, mmHg/s. */
const STANDS_MMHG_PER_SECOND = 0.3;

/** Whether a fall was too fast, or too slow, where the sounds begin or end. */
export function rateFault(
  plan: LetDownPlan,
  pulsePerMinute: number,
  sounding: Levels,
): 'fast' | 'slow' | 'right' {
  const rules = DEFAULT_DEFLATION_RULES;
  const isSlow = pulsePerMinute < rules.slowPulsePerMinute;
  const most = isSlow
    ? Math.min(rules.fastestMmHgPerSecond, (rules.fastestPerBeatMmHg * pulsePerMinute) / 60)
    : rules.fastestMmHgPerSecond;
  const rates = [rateAt(plan, sounding.systolic), rateAt(plan, sounding.diastolic)];
  if (rates.some((rate) => rate > most + RATE_ROOM)) return 'fast';
  const least = Math.min(rules.slowestMmHgPerSecond, most);
  return rates.every((rate) => rate < least - RATE_ROOM) ? 'slow' : 'right';
}

/** How fast a plan falls at a pressure, mmHg/s. */
function rateAt({ fall }: LetDownPlan, mmHg: number): number {
  if (typeof fall === 'number') return fall;
  return (fall.find(({ toMmHg }) => toMmHg <= mmHg) ?? fall.at(-1))?.mmHgPerSecond ?? 0;
}

/**
 * Whether the cuff was not pumped far enough: within the sounds already, or closer over where the pulse was felt to go
 * than the rules of inflation call enough. Where nobody felt for it, closer over where the sounds begin.
 */
export function isMarginSmall({ peakMmHg }: FallOf, lostMmHg: number | null, sounding: Levels): boolean {
  const { smallMarginMmHg } = DEFAULT_INFLATION_RULES;
  return peakMmHg < sounding.systolic || peakMmHg < (lostMmHg ?? sounding.systolic) + smallMarginMmHg;
}

/** What a hand did that need not move a number, and still is to be done otherwise. */
export function besidesOf(exercise: Exercise, played: Replay, fall: FallOf, sounding: Levels): FaultCode[] {
  const lostMmHg = exercise.evidence.run?.run.palpated.lostMmHg ?? null;
  const most = (lostMmHg ?? sounding.systolic) + F.marginMmHg.value + F.overMmHg.value;
  const rows: readonly (readonly [FaultCode, boolean])[] = [
    ['pumped-too-high', fall.peakMmHg > most],
    ['not-felt-first', lostMmHg === null && !hasFelt(exercise, played, fall)],
    ['stopped', standsSeconds(played, fall, sounding) >= F.stoppedSeconds.value],
  ];
  return rows.flatMap(([code, is]) => (is ? [code] : []));
}

/** Whether a finger was on the wrist while a cuff squeezed, before the reading was begun. */
function hasFelt({ actions, evidence }: Exercise, played: Replay, { peakSeconds }: FallOf): boolean {
  if (evidence.run?.run.method === 'palpation') return true;
  let since: number | null = null;
  const squeezes = (from: number, to: number) => {
    for (let at = from; at <= to; at += 0.5)
      if (traceAt(played.cuffMmHg, played.tracePerSecond, at) > SQUEEZES_MMHG) return true;
    return false;
  };
  for (const action of actions) {
    const seconds = action.tick / TICKS_PER_SECOND;
    if (action.kind !== 'finger' || seconds > peakSeconds) continue;
    if (action.isOn) since ??= seconds;
    else if (since !== null) {
      if (squeezes(since, seconds)) return true;
      since = null;
    }
  }
  return since !== null && squeezes(since, peakSeconds);
}

/** The longest that the cuff stood still where the sounds are, seconds. */
function standsSeconds({ cuffMmHg, tracePerSecond }: Replay, fall: FallOf, sounding: Levels): number {
  let longest = 0;
  let since = Math.ceil(fall.peakSeconds * tracePerSecond);
  for (let i = since; i <= fall.endSeconds * tracePerSecond; i++) {
    const mmHg = cuffMmHg[i] as number;
    const isAmid = mmHg < sounding.systolic && mmHg > sounding.diastolic;
    const seconds = (i - since) / tracePerSecond;
    const hasFallen = (cuffMmHg[since] as number) - mmHg > STANDS_MMHG_PER_SECOND * Math.max(1, seconds);
    if (!isAmid || hasFallen) since = i;
    else longest = Math.max(longest, seconds);
  }
  return longest;
}
