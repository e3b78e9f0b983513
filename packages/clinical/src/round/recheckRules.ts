import { ROUND_FIGURES as F } from './figures.js';

/** When a pressure is looked at again, in seconds after its reading: the values of a protocol's `recheck` section. */
export type RecheckRules = {
  readonly atOnceWithinSeconds: number;
  readonly pregnancyWithinSeconds: number;
  readonly severeRestSeconds: number;
  readonly abnormalSoonSeconds: number;
  readonly abnormalSoonWithinSeconds: number;
  readonly abnormalLaterSeconds: number;
  readonly abnormalLaterWithinSeconds: number;
};

export const DEFAULT_RECHECK_RULES: RecheckRules = {
  atOnceWithinSeconds: F.atOnceWithinSeconds.value,
  pregnancyWithinSeconds: F.pregnancyWithinSeconds.value,
  severeRestSeconds: F.severeRestSeconds.value,
  abnormalSoonSeconds: F.abnormalSoonSeconds.value,
  abnormalSoonWithinSeconds: F.abnormalSoonWithinSeconds.value,
  abnormalLaterSeconds: F.abnormalLaterSeconds.value,
  abnormalLaterWithinSeconds: F.abnormalLaterWithinSeconds.value,
};
