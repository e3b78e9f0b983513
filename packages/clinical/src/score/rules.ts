import type { OxygenScale } from '../sign/sign.js';

/** Which scores a place shows: the values of a protocol's `score` section. */
export type ScoreRules = {
  readonly earlyWarning: boolean;
  /** The scale of a saturation where none is said. */
  readonly oxygenScale: OxygenScale;
  readonly sepsisScreen: boolean;
  readonly meanPressure: boolean;
  readonly pulsePressure: boolean;
  /** The plain, the modified and the age shock index. */
  readonly shockIndex: boolean;
  readonly paediatricShockIndex: boolean;
  readonly ratePressureProduct: boolean;
  readonly bodyMassIndex: boolean;
};

/** What applies where no protocol was chosen: nothing is scored, values are charted. */
export const DEFAULT_SCORE_RULES: ScoreRules = {
  earlyWarning: false,
  oxygenScale: 1,
  sepsisScreen: false,
  meanPressure: false,
  pulsePressure: false,
  shockIndex: false,
  paediatricShockIndex: false,
  ratePressureProduct: false,
  bodyMassIndex: false,
};
