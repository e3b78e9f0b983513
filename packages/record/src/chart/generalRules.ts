import { NOTHING_CHOSEN } from '../content/inForce.js';
import type { RulesOf } from './valueStanding.js';

/** The general rules, by which every alert is on: what stands where the rules of a version are not at hand. */
export const GENERAL_RULES: RulesOf = () => NOTHING_CHOSEN;
