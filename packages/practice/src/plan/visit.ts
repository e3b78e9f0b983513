import {
  averageReadings,
  cuffChoice,
  inflateTo,
  type Reading,
  readingsRulesOf,
  UNKNOWN_READINGS_CIRCUMSTANCES,
} from '@evenfall/clinical';
import {
  BLADDERS,
  type Bladder,
  bladderFor,
  type Circumstances,
  feelingOf,
  type Levels,
  makePerson,
  movedTo,
  type Person,
  PROPER,
  SOUND_INSTRUMENT,
} from '@evenfall/physiology';
import { observerKey } from '../observer/chance.js';
import { OBSERVER_FIGURES } from '../observer/figures.js';
import { GOOD_OBSERVER, type Reader } from '../observer/observer.js';
import { auscultate, newAuscultated } from '../reading/auscultate.js';
import { PLAN_FIGURES as F } from './figures.js';
import type { PlanProtocol } from './planProtocol.js';
import { type Subject, scenarioAt } from './population.js';
import { faultsAt, offAxisAt, withFaults } from './technique.js';

/** What a visit came to: the average, null where the rule found none; its readings; the clinician's time. */
export type Visited = {
  readonly average: Levels | null;
  readonly readings: number;
  readonly minutes: number;
};

const OUT = newAuscultated();
/** Beats begin this long before a cuff is pumped up, seconds: long enough for what depends on the beat before. */
const LEAD_SECONDS = 12;
/** No more readings than this at a visit, whatever the rule. */
const MOST_READINGS = 6;
const MOST_MMHG = 280;
/** Tells the slow courses of one visit from those of another; the first is the body's own. */
const VISIT_STEP = 0x85ebca6b;
/** A finger feels a pulse go within a beat or two of pumping: read to the mark above, mmHg. */
const FELT_STEP = 2;

/** One visit of a subject by a protocol: as many readings as its rule asks for, heard and written. */
export function visitOf(subject: Subject, visit: number, protocol: PlanProtocol): Visited {
  const scenario = scenarioAt(subject, visit);
  // The same body, and another day: what wanders over minutes is not the same at the next visit.
  const seed = (subject.seed ^ Math.imul(visit, VISIT_STEP)) >>> 0;
  const person = { ...makePerson(scenario, subject.seed), seed };
  const faults = faultsAt(subject.seed, visit, protocol.faults);
  const properly: Circumstances = {
    ...PROPER,
    restMinutes: protocol.restMinutes,
    measuredBy: protocol.measuredBy,
    observerMinutes: protocol.measuredBy === 'known' ? PROPER.observerMinutes : protocol.restMinutes,
    firstInflationSeconds: 0,
  };
  const rightCuff = { ...SOUND_INSTRUMENT, bladder: bladderOf(scenario.armCm, protocol) };
  const { circumstances, instrument } = withFaults(
    { circumstances: properly, instrument: rightCuff },
    faults,
  );
  const reader: Reader = {
    ...GOOD_OBSERVER.reader,
    thresholdDb: protocol.thresholdDb,
    reactionSeconds: protocol.reactionSeconds,
    reactionSdSeconds: protocol.reactionSeconds === 0 ? 0 : OBSERVER_FIGURES.reactionSdSeconds.value,
    tenShare: protocol.tenShare,
    offAxisDegrees: offAxisAt(subject.seed, visit, faults),
  };
  const key = observerKey(subject.seed);
  const rate = rateOf(person, protocol);
  const rules = readingsRulesOf(protocol.rule);
  const isIrregular = scenario.rhythm.kind === 'atrial-fibrillation';
  const known = { ...UNKNOWN_READINGS_CIRCUMSTANCES, irregular: isIrregular };
  const lostMmHg = protocol.palpatesFirst ? lostOf(person, circumstances) : null;
  const readings: Reading[] = [];
  let seconds = 0;
  let clock = circumstances.restMinutes * 60 + F.cuffOnSeconds.value + countingSeconds(protocol);
  if (protocol.palpatesFirst) clock += F.feelingSeconds.value;
  let average = averageReadings(readings, known, rules);
  for (let taken = 0; taken < (protocol.readings ?? MOST_READINGS); taken++) {
    const readMmHg = readings.map(({ systolic }) => systolic);
    const target = inflateTo({ lostMmHg, readMmHg }, protocol).mmHg;
    const peakMmHg = Math.min(MOST_MMHG, target ?? protocol.peakMmHg);
    const pumping = peakMmHg / OBSERVER_FIGURES.pumpMmHgPerSecond.value;
    const start = seconds + pumping;
    const moved = movedTo(person, start - LEAD_SECONDS, visit * MOST_READINGS + taken);
    const plan = { startSeconds: start, peakMmHg, fall: rate, thresholdDb: protocol.thresholdDb };
    auscultate(moved, circumstances, instrument, plan, reader, key, visit * MOST_READINGS + taken, null, OUT);
    const { first, last } = OUT;
    const fallSeconds = Number.isNaN(last.soundMmHg) ? peakMmHg / rate : (peakMmHg - last.soundMmHg) / rate;
    clock += pumping + fallSeconds + F.writingSeconds.value;
    if (first.beat >= 0 && last.beat > first.beat && first.writtenMmHg > last.writtenMmHg)
      readings.push({ systolic: first.writtenMmHg, diastolic: last.writtenMmHg });
    average = averageReadings(readings, known, rules);
    const isEnough = average.systolic !== null && average.needs.length === 0;
    const isLast = taken + 1 >= (protocol.readings ?? Math.min(MOST_READINGS, rules.stopAtReadings));
    if (isLast || (protocol.readings === null && isEnough)) break;
    const wait = Math.max(protocol.gapSeconds, F.writingSeconds.value);
    clock += wait;
    seconds = start + fallSeconds + wait;
  }
  const minutes = clock / 60;
  if (average.systolic === null || average.diastolic === null) {
    // A protocol that asks for fewer readings than its rule takes has the mean of what there is.
    if (protocol.readings === null || readings.length < protocol.readings)
      return { average: null, readings: readings.length, minutes };
    return { average: meanOf(readings), readings: readings.length, minutes };
  }
  return {
    average: { systolic: average.systolic, diastolic: average.diastolic },
    readings: readings.length,
    minutes,
  };
}

function countingSeconds({ pulseWindowSeconds, breathsWindowSeconds }: PlanProtocol): number {
  return pulseWindowSeconds + (breathsWindowSeconds ?? 0);
}

function meanOf(readings: readonly Reading[]): Levels {
  const sum = (of: (reading: Reading) => number) =>
    readings.reduce((all, one) => all + of(one), 0) / readings.length;
  return { systolic: sum(({ systolic }) => systolic), diastolic: sum(({ diastolic }) => diastolic ?? 0) };
}

/** Where a finger loses the pulse while the cuff is pumped up. */
function lostOf(person: Person, circumstances: Circumstances): number {
  return FELT_STEP * Math.ceil((person.rest.systolic - feelingOf(person, circumstances)) / FELT_STEP);
}

function rateOf({ scenario }: Person, { rateMmHgPerSecond, mostPerBeatMmHg }: PlanProtocol): number {
  if (mostPerBeatMmHg === null) return rateMmHgPerSecond;
  return Math.min(rateMmHgPerSecond, (mostPerBeatMmHg * scenario.rhythm.ratePerMinute) / 60);
}

/** Names of cuffs of the schemes that the engine knows under another one. */
const OTHER_NAMES: Readonly<Record<string, Bladder>> = {
  small: 'small-adult',
  medium: 'adult',
  large: 'large-adult',
  newborn: 'infant',
};

function bladderOf(armCm: number, { cuff }: PlanProtocol): Bladder {
  if (cuff === 'adult-for-all') return 'adult';
  const id = cuffChoice({ armCm, scheme: cuff, atHand: null }).cuff;
  if (id === null) return bladderFor(armCm);
  return BLADDERS.find((one) => one === id) ?? OTHER_NAMES[id] ?? bladderFor(armCm);
}
