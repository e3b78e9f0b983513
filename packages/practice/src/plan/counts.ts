import type { CountOf } from '@evenfall/clinical';
import { makePerson, PROPER, uniformOf } from '@evenfall/physiology';
import { countedEvents } from '../counting/countedBy.js';
import { countOf } from '../counting/countOf.js';
import type { Counting } from '../observer/observer.js';
import { PLAN_FIGURES as F } from './figures.js';
import type { PlanProtocol } from './planProtocol.js';
import { breathingAt, COUNT_LANE, type Subject, scenarioAt } from './population.js';

/** Kinds of people whose counts are told apart: irregular, or regular and slow, or the rest. */
export const COUNT_GROUPS = ['regular', 'slow', 'irregular'] as const;
export type CountGroup = (typeof COUNT_GROUPS)[number];
export const COUNTED = ['pulse', 'breaths'] as const satisfies readonly CountOf[];

/** A stretch of what there is to count in somebody: when each felt beat or breath begins, seconds, and their rate over it. */
type Stretch = {
  readonly group: CountGroup;
  readonly seconds: readonly number[];
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** A clock that starts on a beat or a breath ends so much later at most. */
  readonly beyondSeconds: number;
  readonly truePerMinute: number;
};
export type Countable = Readonly<Record<CountOf, Stretch | null>>;

/** A count beside the rate of the stretch about it, per minute: counted minus true. */
export type CountError = { readonly group: CountGroup; readonly error: number };
export type CountErrors = Readonly<Record<CountOf, CountError | null>>;

/** Nobody counts in the first seconds of a visit. */
const FROM_SECONDS = 5;
/** So long is the stretch whose rate is called true, at least: longer than anybody counts, short enough to be of one visit. */
const STRETCH_SECONDS = 180;
/** So many whole cycles are the stretch of breathing that comes and goes, whose rate is that of clusters and pauses together. */
const STRETCH_CYCLES = 30;
/** So long is waited for a beat or an even breath at most; where breathing comes and goes, less than its cycle. */
const BEYOND_SECONDS = 15;

/** One in so many subjects is counted: three minutes of beats cost as much as a whole visit of readings, and errors of counts are small. */
const ONE_IN = 4;
const NOTHING: Countable = { pulse: null, breaths: null };

/**
 * What there is to count in a subject, once for all the protocols that are tried on it: in one subject of four, breaths where a
 * protocol counts them.
 */
export function countableOf(subject: Subject, protocols: readonly PlanProtocol[]): Countable {
  if (subject.index % ONE_IN !== 0) return NOTHING;
  const windows = protocols.flatMap((one) => [one.pulseWindowSeconds, one.breathsWindowSeconds ?? 0]);
  const isBreaths = protocols.some((one) => one.breathsWindowSeconds !== null);
  const scenario = scenarioAt(subject, 0);
  const { kind } = scenario.rhythm;
  const isIrregular = kind === 'atrial-fibrillation' || kind === 'ventricular-ectopics';
  const breathing = breathingAt(subject);
  const stretch = (of: CountOf, isUneven: boolean, slowPerMinute: number): Stretch | null => {
    const cycleSeconds = of === 'breaths' ? (breathing.cycleSeconds ?? 0) : 0;
    const beyondSeconds = Math.max(BEYOND_SECONDS, cycleSeconds);
    const longest = Math.max(...windows) + beyondSeconds;
    const length = Math.max(STRETCH_SECONDS, STRETCH_CYCLES * cycleSeconds, longest);
    const person = makePerson(of === 'pulse' ? scenario : { ...scenario, breathing }, subject.seed);
    const toSeconds = FROM_SECONDS + length;
    const seconds = countedEvents(of, person, PROPER, FROM_SECONDS, toSeconds);
    const [first, last] = [seconds[0], seconds.at(-1)];
    if (first === undefined || last === undefined || last <= first) return null;
    // From the first to the last would leave out the pauses at both ends.
    const truePerMinute =
      cycleSeconds > 0 ? (60 * seconds.length) / length : (60 * (seconds.length - 1)) / (last - first);
    const group = isUneven ? 'irregular' : truePerMinute < slowPerMinute ? 'slow' : 'regular';
    return { group, seconds, fromSeconds: FROM_SECONDS, toSeconds, beyondSeconds, truePerMinute };
  };
  return {
    pulse: stretch('pulse', isIrregular, F.slowPulse.value),
    breaths: isBreaths ? stretch('breaths', breathing.kind === 'cheyne-stokes', F.slowBreaths.value) : null,
  };
}

/** How a protocol counts. */
export function countingOf(protocol: PlanProtocol): Counting {
  const { pulseWindowSeconds, breathsWindowSeconds, countClock, countFirst } = protocol;
  return {
    pulseWindowSeconds,
    breathsWindowSeconds: breathsWindowSeconds ?? 0,
    clock: countClock,
    first: countFirst,
  };
}

/** What a protocol makes of it: one window each, begun at some moment of the stretch. Null: not counted, or nothing there. */
export function countErrorsOf({ key }: Subject, countable: Countable, protocol: PlanProtocol): CountErrors {
  const counting = countingOf(protocol);
  const errorOf = (of: CountOf, windowSeconds: number | null): CountError | null => {
    const there = countable[of];
    if (there === null || windowSeconds === null) return null;
    const room = there.toSeconds - there.fromSeconds - windowSeconds - there.beyondSeconds;
    const start = there.fromSeconds + Math.max(0, room) * uniformOf(key, 0, COUNT_LANE[of]);
    const counted = countOf(of, there.seconds, start, windowSeconds, counting);
    if (counted === null) return null;
    return { group: there.group, error: (60 * counted.count.n) / windowSeconds - there.truePerMinute };
  };
  return {
    pulse: errorOf('pulse', protocol.pulseWindowSeconds),
    breaths: errorOf('breaths', protocol.breathsWindowSeconds),
  };
}
