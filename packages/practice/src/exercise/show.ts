import type { CountOf } from '@evenfall/clinical';
import {
  type Action,
  backgroundThresholdDb,
  breaths,
  type Circumstances,
  type Instrument,
  noiseOf,
  type Person,
  type SoundEvent,
  startRig,
  TICKS_PER_SECOND,
  truth,
} from '@evenfall/physiology';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import type { Observer } from '../observer/observer.js';
import type { Manner } from './manner.js';
import { roundedMark } from './roundedMark.js';

/** How long the observer looks on before the first hand movement, seconds. */
const LEAD_SECONDS = 5;
/** While a finger feels for the loss of the pulse the cuff is pumped no faster. Source: no source, decision of this project. */
const FEELING_MMHG_PER_SECOND = 10;
/** Beats without a pulse until it is sure that it is gone: in some rhythms every second or third one is not felt. */
const SURE_BEATS = 4;
/** Always a full minute. Source: bedside handbook 1.1, 1.10. */
const APEX_SECONDS = 60;
/** Before a window begins its fingers are laid on, or its chest is looked at, seconds. */
const READY_SECONDS = 4;
/** And so long to say what came of it. */
const SAID_SECONDS = 6;
const MOST_MMHG = 280;
/** Further than any gap is wide. Source: physiology handbook 8.5. */
const LISTENS_ON_MMHG = 45;
const STEP_TICKS = 4;
const TAIL_SECONDS = 3;
/** Of the wait the first part goes by while the cuff empties, seconds. */
const EMPTIES_SECONDS = 3;

/** What the hands do from a second of the visit on; `mmHg` is where they came to, null where it is no pressure. */
export type HandStep = {
  readonly code:
    | 'other-gauge'
    | 'quieter'
    | 'loud'
    | 'measured'
    | 'pulse'
    | 'pulse-counted'
    | 'breaths'
    | 'breaths-counted'
    | 'looking'
    | 'at-apex'
    | 'both-counted'
    | 'feeling'
    | 'lost'
    | 'waiting'
    | 'pumping'
    | 'falling'
    | 'slowly'
    | 'every-beat'
    | 'emptying';
  readonly atSeconds: number;
  readonly mmHg: number | null;
  readonly perMinute?: { readonly heart: number; readonly wrist: number };
  /** Of a count: its window, and once it is over what was counted. */
  readonly counted?: { readonly windowSeconds: number; readonly n: number | null };
};

/** What comes before the cuff: what is said, a count of a sign, the heart at its apex. */
export type Before = {
  /** Each is said for a moment. */
  readonly said: readonly Pick<HandStep, 'code' | 'mmHg'>[];
  readonly counts: readonly { readonly of: CountOf; readonly windowSeconds: number }[];
  readonly listensAtApex: boolean;
};
export const NOTHING_BEFORE: Before = { said: [], counts: [], listensAtApex: false };

type Shown = {
  readonly actions: Action[];
  readonly steps: readonly HandStep[];
  readonly endSeconds: number;
  readonly lostMmHg: number | null;
};

/**
 * The list of hand movements with their ticks, found on a rig as it goes. At the apex one listens while another feels the wrist, for
 * the same minute (bedside handbook 1.10).
 */
export function show(
  observer: Observer,
  person: Person,
  circumstances: Circumstances,
  instrument: Instrument,
  manner: Manner = 'by-ear',
  before: Before = NOTHING_BEFORE,
): Shown {
  const { hand, reader } = observer;
  const rig = startRig(person, circumstances, instrument);
  const actions: Action[] = [];
  const steps: HandStep[] = [];
  const step = (code: HandStep['code'], mmHg: number | null = null) =>
    steps.push({ code, atSeconds: rig.seconds, mmHg });
  const act = (...done: readonly Action[]) => {
    actions.push(...done);
    return rig.advance(rig.tick + STEP_TICKS, done);
  };
  const wait = (seconds: number) => rig.advance(rig.tick + Math.round(seconds * TICKS_PER_SECOND));
  // While a finger feels the chest piece is in the hand.
  const away: Action = { tick: rig.tick, kind: 'chest-piece', offMm: null, held: circumstances.chestPiece };
  const inHand = hand.palpatesFirst ? [away] : [];
  actions.push(...inHand);
  let begun: readonly Action[] = inHand;
  const look = (seconds: number) => {
    rig.advance(rig.tick + Math.round(seconds * TICKS_PER_SECOND), begun);
    begun = [];
  };
  for (const { code, mmHg } of before.said) {
    step(code, mmHg);
    look(SAID_SECONDS);
  }
  for (const { of, windowSeconds } of before.counts) {
    steps.push({ code: of, atSeconds: rig.seconds, mmHg: null, counted: { windowSeconds, n: null } });
    look(READY_SECONDS);
    if (of === 'pulse') act({ tick: rig.tick, kind: 'finger', isOn: true });
    const from = rig.seconds;
    const { felt } = wait(windowSeconds);
    const n =
      of === 'pulse'
        ? felt.filter(({ isFelt }) => isFelt).length
        : breaths(person, circumstances, from, rig.seconds).filter(({ startSeconds }) => startSeconds >= from)
            .length;
    steps.push({ code: `${of}-counted`, atSeconds: rig.seconds, mmHg: null, counted: { windowSeconds, n } });
    if (of === 'pulse') act({ tick: rig.tick, kind: 'finger', isOn: false });
    wait(SAID_SECONDS);
  }
  step('looking');
  look(LEAD_SECONDS);
  if (before.listensAtApex) {
    step('at-apex');
    const both = [
      act({ tick: rig.tick, kind: 'apex', isOn: true }, { tick: rig.tick, kind: 'finger', isOn: true }),
      wait(APEX_SECONDS - STEP_TICKS / TICKS_PER_SECOND),
    ];
    const heart = both.flatMap((one) => one.heart).filter((one) => one.heart === 'first').length;
    const wrist = both.flatMap(({ felt }) => felt).filter(({ isFelt }) => isFelt).length;
    steps.push({ code: 'both-counted', atSeconds: rig.seconds, mmHg: null, perMinute: { heart, wrist } });
    act({ tick: rig.tick, kind: 'finger', isOn: false }, { tick: rig.tick, kind: 'apex', isOn: false });
    if (!hand.palpatesFirst) {
      const { chestPiece, chestPieceOffMm } = circumstances;
      act({ tick: rig.tick, kind: 'chest-piece', offMm: chestPieceOffMm, held: chestPiece });
    }
    wait(SAID_SECONDS);
  }
  let lostMmHg: number | null = null;
  if (hand.palpatesFirst) {
    step('feeling');
    act({ tick: rig.tick, kind: 'finger', isOn: true });
    act({ tick: rig.tick, kind: 'steady-rise', mmHgPerSecond: FEELING_MMHG_PER_SECOND, toMmHg: MOST_MMHG });
    let missed = 0;
    while (rig.cuffMmHg < MOST_MMHG && missed < SURE_BEATS) {
      const beatBefore = rig.snapshot().beat;
      const { felt } = rig.advance(rig.tick + STEP_TICKS);
      if (felt.some(({ isFelt }) => isFelt)) {
        missed = 0;
        lostMmHg = null;
      } else if (rig.snapshot().beat !== beatBefore) {
        missed += 1;
        lostMmHg ??= rig.needleMmHg;
      }
    }
    step('lost', lostMmHg === null ? null : roundedMark(lostMmHg));
    act({ tick: rig.tick, kind: 'quick-release' });
    if (manner !== 'by-feel') act({ tick: rig.tick, kind: 'finger', isOn: false });
    wait(EMPTIES_SECONDS);
    step('waiting');
    wait(F.waitSeconds.value - EMPTIES_SECONDS);
  }
  const pulse = truth(person, circumstances, rig.seconds, instrument).pulsePerMinute;
  const rate =
    hand.mostPerBeatMmHg === null
      ? hand.rateMmHgPerSecond
      : Math.min(hand.rateMmHgPerSecond, (hand.mostPerBeatMmHg * pulse) / 60);
  const peak = Math.min(MOST_MMHG, lostMmHg === null ? hand.peakMmHg : roundedUp(lostMmHg + hand.marginMmHg));
  const { tick } = rig;
  const { chestPiece, chestPieceOffMm } = circumstances;
  step('pumping', peak);
  act(
    ...(manner === 'by-feel' || !hand.palpatesFirst
      ? []
      : [{ tick, kind: 'chest-piece' as const, offMm: chestPieceOffMm, held: chestPiece }]),
    { tick, kind: 'steady-rise', mmHgPerSecond: F.pumpMmHgPerSecond.value, toMmHg: peak },
  );
  while (rig.cuffMmHg < peak - 0.001) wait(STEP_TICKS / TICKS_PER_SECOND);
  const fall = (mmHgPerSecond: number) =>
    act({ tick: rig.tick, kind: 'steady-fall', mmHgPerSecond, toMmHg: 0 });
  step('falling');
  fall(rate);
  const thresholdDb = reader.thresholdDb + backgroundThresholdDb(noiseOf(person.scenario, circumstances));
  const slowFromMmHg =
    manner === 'with-the-breath' ? (lostMmHg ?? peak) + SLOW_OVER_MMHG : Number.NEGATIVE_INFINITY;
  const breathSeconds = 60 / person.scenario.breathing.ratePerMinute;
  let isSlow = false;
  let isTold = false;
  /** The first of the beats that have all been heard since. */
  let since: SoundEvent | null = null;
  let lastBeat = -1;
  let lastMmHg = Number.NaN;
  let lastFeltSeconds = Number.NaN;
  while (rig.cuffMmHg > 0 && !(rig.cuffMmHg < lastMmHg - LISTENS_ON_MMHG)) {
    if (!isSlow && !isTold && rig.cuffMmHg < slowFromMmHg) {
      isSlow = true;
      step('slowly');
      fall(F.paradoxMmHgPerSecond.value);
    }
    const { sounds, felt } = rig.advance(rig.tick + STEP_TICKS);
    for (const sound of sounds) {
      if (sound.levelDb < thresholdDb) continue;
      lastMmHg = sound.cuffMmHg;
      if (sound.beat !== lastBeat + 1) since = sound;
      lastBeat = sound.beat;
    }
    // A whole beat went by without a sound.
    if (isSlow && (rig.beat?.index ?? -1) > lastBeat + 1) since = null;
    if (isSlow && since !== null && rig.seconds - since.atSeconds > WHOLE_BREATHS * breathSeconds) {
      isSlow = false;
      isTold = true;
      steps.push({ code: 'every-beat', atSeconds: rig.seconds, mmHg: roundedMark(since.cuffMmHg) });
      fall(rate);
    }
    if (felt.some(({ isFelt }) => isFelt))
      lastFeltSeconds = Number.isNaN(lastFeltSeconds) ? rig.seconds : lastFeltSeconds;
    // Once the pulse is back there is nothing more to feel for.
    if (manner === 'by-feel' && rig.seconds > lastFeltSeconds + FEELS_ON_SECONDS) break;
  }
  step('emptying');
  act({ tick: rig.tick, kind: 'quick-release' });
  if (manner === 'by-feel') act({ tick: rig.tick, kind: 'finger', isOn: false });
  wait(TAIL_SECONDS);
  return {
    actions,
    steps,
    endSeconds: rig.seconds,
    lostMmHg: lostMmHg === null ? null : roundedMark(lostMmHg),
  };
}

/** The slow fall begins so far over where the pulse was lost, mmHg: the sounds of breathing out begin over it. */
const SLOW_OVER_MMHG = 14;
/** Every beat is heard once none was missed for so many breaths. */
const WHOLE_BREATHS = 2;
/** How long a finger goes on feeling after the pulse came back, seconds. */
const FEELS_ON_SECONDS = 4;

function roundedUp(mmHg: number): number {
  return 10 * Math.ceil(mmHg / 10);
}
