import type { DebriefRules } from '@evenfall/practice';
import type { InForce, JudgedBy, RulesOf } from '@evenfall/record';

/**
 * By which rules an exercise is judged, and which these are: those of the protocol that was kept with it (`version`), the general
 * ones where none was chosen (`none`), those in force here now where none was kept with it (`now`) or that one is not here
 * (`not-here`), or whether it is could not be asked (`not-reached`).
 */
export type JudgedUnder = {
  readonly rules: DebriefRules;
  readonly by: 'version' | 'none' | 'now' | 'not-here' | 'not-reached';
};

/**
 * @param rulesOf the rules of a version kept here; of null the general ones
 * @param isReached whether the protocols of this place could be asked for
 */
export function judgedUnder(
  judgedBy: JudgedBy | null,
  inForce: InForce,
  rulesOf: RulesOf,
  isReached: boolean,
): JudgedUnder {
  if (judgedBy === null) return { rules: inForce, by: 'now' };
  const rules = rulesOf(judgedBy.presetVersion);
  if (rules === null) return { rules: inForce, by: isReached ? 'not-here' : 'not-reached' };
  return { rules, by: judgedBy.presetVersion === null ? 'none' : 'version' };
}
