import {
  type ActNowRules,
  type CountRules,
  DEFAULT_ACT_NOW_RULES,
  DEFAULT_COUNT_RULES,
  DEFAULT_READINGS_RULES,
  DEFAULT_RUN_RULES,
  type ReadingsRules,
  type RunRules,
} from '@evenfall/clinical';

/** The rules that an exercise is judged by: those of a protocol. */
export type DebriefRules = {
  readonly runRules: RunRules;
  readonly countRules: CountRules;
  readonly roundRules: { readonly actNow: ActNowRules; readonly readings: ReadingsRules };
};

/** Where no protocol was chosen. */
export const USUAL_RULES: DebriefRules = {
  runRules: DEFAULT_RUN_RULES,
  countRules: DEFAULT_COUNT_RULES,
  roundRules: {
    actNow: DEFAULT_ACT_NOW_RULES,
    readings: { ...DEFAULT_READINGS_RULES, isGeneral: true },
  },
};
