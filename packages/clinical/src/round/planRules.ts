import { ROUND_FIGURES as F } from './figures.js';
import type { RoundSign } from './step.js';

/** What a round takes as a matter of course: the values of a protocol's `round` section. */
export type PlanRules = {
  /** Signs that need a value, or a reason for having none. */
  readonly wantedSigns: readonly RoundSign[];
  readonly prepareFirst: boolean;
  /** The systolic is felt before the sounds are listened for. */
  readonly palpateFirst: boolean;
  /** The first pressure of a person is taken on both arms. */
  readonly bothArmsFirstTime: boolean;
  /** How long the person sits quietly before the pressure; 0 for no rest by the clock. */
  readonly restSeconds: number;
};

export const DEFAULT_PLAN_RULES: PlanRules = {
  wantedSigns: ['pulse', 'breaths', 'pressure'],
  prepareFirst: true,
  palpateFirst: true,
  bothArmsFirstTime: true,
  restSeconds: F.restSeconds.value,
};
