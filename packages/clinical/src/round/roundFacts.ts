import type { ArmFactKind } from '../cuff/facts.js';
import type { Side } from '../cuff/places.js';

/** A fact of one arm that holds on the day of a round. */
export type ArmOfDay = { readonly kind: ArmFactKind; readonly side: Side };

/**
 * What bears on a round besides what is measured in it, as it stood on its day; kept with the round, so that what was
 * made of it can be made again when the identity is erased and the facts have changed. Null is not known.
 */
export type RoundFacts = {
  /** Completed months. */
  readonly ageMonths: number | null;
  /** Which reference tables apply. */
  readonly sex: 'f' | 'm' | null;
  /** The newest height that was measured before, in cm. */
  readonly heightCm: number | null;
  /** Null where nobody said: then no category is refused for it, and the screen says what it assumes. */
  readonly isPregnant: boolean | null;
  /** Completed weeks of the pregnancy. */
  readonly pregnancyWeeks: number | null;
  /** Completed weeks since giving birth. */
  readonly weeksAfterBirth: number | null;
  readonly arms: readonly ArmOfDay[];
  /** The arm that is known to read higher. */
  readonly higherArm: Side | null;
  readonly cannotStand: boolean;
  readonly hasIrregularRhythm: boolean;
  readonly hasTremor: boolean;
  readonly hasPacemaker: boolean;
  readonly takesRateSlowingDrug: boolean;
  readonly hasSpinalInjury: boolean;
  /** The scale of oxygen saturation: the second one only where a named prescriber said so. */
  readonly oxygenScale: 1 | 2;
  /** Whether this person has no pressure in the chart yet. */
  readonly isFirstPressure: boolean;
};

/** Somebody of whom nothing is known. */
export const NO_ROUND_FACTS: RoundFacts = {
  ageMonths: null,
  sex: null,
  heightCm: null,
  isPregnant: null,
  pregnancyWeeks: null,
  weeksAfterBirth: null,
  arms: [],
  higherArm: null,
  cannotStand: false,
  hasIrregularRhythm: false,
  hasTremor: false,
  hasPacemaker: false,
  takesRateSlowingDrug: false,
  hasSpinalInjury: false,
  oxygenScale: 1,
  isFirstPressure: true,
};
