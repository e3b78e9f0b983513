import {
  type Circumstances,
  isUnwell,
  keyOf,
  PREPARATIONS,
  PROPER,
  type Preparation,
  type Scenario,
  SOUND_INSTRUMENT,
  uniformOf,
} from '@evenfall/physiology';
import { EXERCISE_FIGURES as F } from '@evenfall/practice';
import type { Stamp } from '@evenfall/record';
import { begunRound } from '../round/draft.js';
import type { PracticeDraft } from './keptPractice.js';
import type { VisitData } from './visit.js';

/** How the person may sit when one comes in, and how often. */
const FOUND: readonly (readonly [found: Partial<Circumstances>, chance: number])[] = [
  [{ hasLegsCrossed: true }, F.comesLegsCrossed.value],
  [{ isTalking: true }, F.comesTalking.value],
  [{ hasBackUnsupported: true }, F.comesBackUnsupported.value],
  [{ armBelowHeartCm: F.comesArmBelowHeartCm.value, isArmUnsupported: true }, F.comesArmLow.value],
  [{ hasFullBladder: true }, F.comesFullBladder.value],
];
/** What is not seen at once: said when one asks, found when one looks and feels; and how often. */
const BESIDES: Readonly<Record<keyof Preparation, number>> = {
  hadCaffeine: F.comesCaffeine.value,
  hadNicotine: F.comesNicotine.value,
  isCold: F.comesCold.value,
  hasTightSleeve: F.comesTightSleeve.value,
  isOverSleeve: F.comesOverSleeve.value,
  isCuffLoose: F.comesCuffLoose.value,
};
/** Draws of it come after those of how the person sits. */
const BESIDES_DRAW = 100;
/** Draws of how a person is found come after all draws of who the person is. */
const FIRST_DRAW = 1000;

const WELL = { redFlag: null } as const;

/** How the person of a seed sits when one comes in; at least one thing is not as it should be. Whoever is unwell lies propped up: only the arm may hang. */
export function foundSitting(seed: number, scenario: Pick<Scenario, 'redFlag'> = WELL): Circumstances {
  const key = keyOf(seed, 'patient');
  const draw = (at: number) => uniformOf(key, FIRST_DRAW + at);
  const isUp = !isUnwell(scenario);
  const found = FOUND.filter(
    ([one, chance], at) => draw(at) < chance && (isUp || one.isArmUnsupported === true),
  ).map(([one]) => one);
  const [first] = FOUND[Math.floor(draw(FOUND.length) * FOUND.length)] ?? [{}];
  return Object.assign(
    { ...PROPER, restMinutes: F.comesSatMinutes.value, observerMinutes: 0, measuredBy: 'nurse' as const },
    ...(found.length === 0 && isUp ? [first] : found),
  );
}

/** How the person of a seed comes to the visit, besides how they sit. */
export function foundBesides(seed: number, scenario: Pick<Scenario, 'redFlag'> = WELL): Preparation {
  const key = keyOf(seed, 'patient');
  const chances = PREPARATIONS.map(
    (one, at) => [one, uniformOf(key, FIRST_DRAW + BESIDES_DRAW + at) < BESIDES[one]] as const,
  );
  const found = Object.fromEntries(chances) as Preparation;
  return isUnwell(scenario) ? { ...found, hadCaffeine: false, hadNicotine: false } : found;
}

/** A visit as one comes in: nothing on the arm, the chest piece in the hand. */
export function begunVisit(scenario: Scenario, seed: number): VisitData {
  return {
    scenario,
    seed,
    circumstances: {
      ...foundSitting(seed, scenario),
      ...(scenario.preparation ?? foundBesides(seed, scenario)),
    },
    instrument: { ...SOUND_INSTRUMENT, ...(scenario.instrument ?? {}) },
    actions: [{ tick: 0, kind: 'chest-piece', offMm: null, held: 'light' }],
    tick: 0,
  };
}

type Made = {
  readonly exercise: string;
  readonly round: string;
  readonly sequence: number;
  readonly begunAt: Stamp;
};

/** An exercise is begun. @param ears what was said of the ears before, on this device */
export function begunPractice(
  scenario: Scenario,
  seed: number,
  { exercise, round, sequence, begunAt }: Made,
  ears: Pick<PracticeDraft, 'aids' | 'thresholdDb'>,
): PracticeDraft {
  const bare = begunRound(
    exercise,
    { round, signing: exercise, begunAt },
    { book: 'simulated', session: null },
  );
  return {
    version: 1,
    exercise,
    sequence,
    begunAt,
    visit: begunVisit(scenario, seed),
    round: {
      ...bare,
      isIdentityChecked: true,
      pressure: { ...bare.pressure, measuring: { at: 'ready' } },
    },
    step: 'room',
    ...ears,
    wasShown: false,
    saysActNow: null,
    countedFrom: { pulse: null, breaths: null },
    marks: [],
    peakSeconds: null,
    isCuffOn: false,
    hasMeasuredArm: false,
    piece: null,
  };
}
