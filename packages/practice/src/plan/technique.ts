import { type Circumstances, type Instrument, uniformOf } from '@evenfall/physiology';
import type { FaultCode } from '../fault/faults.js';
import { observerKey } from '../observer/chance.js';
import { OBSERVER_FIGURES } from '../observer/figures.js';
import { PLAN_FIGURES as F } from './figures.js';

type Done = {
  readonly circumstances?: Partial<Circumstances>;
  readonly instrument?: Partial<Instrument>;
  /** Seen from beside the gauge, from this side or that by chance. */
  readonly isOffAxis?: true;
};

/**
 * What an observer may do wrong before the cuff is pumped up, and where they stand beside the gauge, as it acts in the engine. The order is that of their chance: a new
 * one goes to the end.
 */
const DONE = {
  'too-little-rest': { circumstances: { restMinutes: 0 } },
  talking: { circumstances: { isTalking: true } },
  'legs-crossed': { circumstances: { hasLegsCrossed: true } },
  'back-unsupported': { circumstances: { hasBackUnsupported: true } },
  'full-bladder': { circumstances: { hasFullBladder: true } },
  caffeine: { circumstances: { hadCaffeine: true } },
  nicotine: { circumstances: { hadNicotine: true } },
  cold: { circumstances: { isCold: true } },
  'arm-height': { circumstances: { armBelowHeartCm: F.lapCm.value } },
  'arm-unsupported': { circumstances: { isArmUnsupported: true } },
  'cuff-size': { instrument: { bladder: 'adult' } },
  'cuff-loose': { circumstances: { isCuffLoose: true } },
  'over-sleeve': { circumstances: { isOverSleeve: true } },
  'tight-sleeve': { circumstances: { hasTightSleeve: true } },
  'pressed-hard': { circumstances: { chestPiece: 'pressed-hard' } },
  'under-cuff': { circumstances: { chestPiece: 'under-cuff' } },
  'beginner-fingers': { circumstances: { fingers: 'beginner' } },
  parallax: { isOffAxis: true },
} as const satisfies Partial<Record<FaultCode, Done>>;

export type PlanFault = keyof typeof DONE;
export const PLAN_FAULTS = Object.keys(DONE) as readonly PlanFault[];
/** How often each is done, 0 (as what is left out) to 1. */
export type PlanFaults = Readonly<Partial<Record<PlanFault, number>>>;

/** The lanes of an observer's chance from here on are of faults. */
const FAULT_LANE = 100;
const SIDE_LANE = 99;

/**
 * The faults of whoever takes the readings at a visit. Each hangs on its own chance alone, so that people who are tried with two
 * protocols meet the same observers, and one fault less leaves the others as they are.
 */
export function faultsAt(seed: number, visit: number, faults: PlanFaults): readonly PlanFault[] {
  const key = observerKey(seed);
  return PLAN_FAULTS.filter((code, at) => uniformOf(key, visit, FAULT_LANE + at) < (faults[code] ?? 0));
}

/** From how far beside the gauge it is looked at in a visit, degrees: each visit from one side, either by chance. */
export function offAxisAt(seed: number, visit: number, faults: readonly PlanFault[]): number {
  if (!faults.includes('parallax')) return 0;
  const isLeft = uniformOf(observerKey(seed), visit, SIDE_LANE) < 0.5;
  return isLeft ? -OBSERVER_FIGURES.offAxisDegrees.value : OBSERVER_FIGURES.offAxisDegrees.value;
}

type Measured = { readonly circumstances: Circumstances; readonly instrument: Instrument };

/** Circumstances and instrument with faults done. */
export function withFaults(proper: Measured, faults: readonly PlanFault[]): Measured {
  let { circumstances, instrument } = proper;
  for (const code of faults) {
    const done: Done = DONE[code];
    circumstances = { ...circumstances, ...done.circumstances };
    instrument = { ...instrument, ...done.instrument };
  }
  return { circumstances, instrument };
}
