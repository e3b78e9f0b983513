import type { KnownPressure } from '@evenfall/clinical';
import { type ActNowRules, isPressureSevere, pregnancyLimits, severeLimits } from '@evenfall/clinical';
import { isUnwell, type RedFlag, type Scenario } from '@evenfall/physiology';

/**
 * What could not wait in a visit: what the scenario is about, else a severe pressure, either one that was to be had or one
 * that was written down, by the limits of the protocol. Null: nothing, as far as these numbers say.
 * Source: bedside handbook 3.16; DESIGN section 2, principle 8.
 */
export function redFlagOf(
  { redFlag, traits }: Pick<Scenario, 'redFlag' | 'traits'>,
  pressures: readonly KnownPressure[],
  rules: ActNowRules,
): RedFlag | null {
  if (redFlag !== null) return redFlag;
  const limits = traits.isPregnant ? pregnancyLimits(rules) : severeLimits(rules);
  if (!pressures.some((one) => isPressureSevere(one, limits))) return null;
  return traits.isPregnant ? 'severe-in-pregnancy' : 'severe-pressure';
}

/**
 * Whether the observer could know of it: a pressure alone shows in nothing but the numbers that were written, and whoever wrote none
 * was misled by none; whoever is unwell is seen to be.
 * @param written every pressure that was written in the visit
 */
export function couldBeKnown(
  { redFlag, traits }: Pick<Scenario, 'redFlag' | 'traits'>,
  written: readonly KnownPressure[],
  rules: ActNowRules,
): boolean {
  const isWritten = written.some(({ systolic, diastolic }) => systolic !== null || diastolic !== null);
  if (!isWritten) return true;
  return isUnwell({ redFlag }) || redFlagOf({ redFlag: null, traits }, written, rules) !== null;
}
