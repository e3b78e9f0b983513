import type { ConsciousnessLevel, GlasgowPart, OxygenScale } from '../sign/sign.js';

/**
 * What scores are made from: /min, %, mmHg, degC, completed years, kg, cm. Null is not known: a part that is missing,
 * never a zero. Only `parseScoreInputs` makes one from outside.
 */
export type ScoreInputs = {
  readonly respirations: number | null;
  readonly oxygenSaturation: number | null;
  readonly scale: OxygenScale | null;
  readonly onOxygen: boolean | null;
  readonly systolic: number | null;
  /** That which averages use; null by palpation. */
  readonly diastolic: number | null;
  readonly pulse: number | null;
  readonly consciousness: ConsciousnessLevel | null;
  readonly temperature: number | null;
  /** A Glasgow total, 3 to 15. */
  readonly glasgow: number | null;
  readonly eyes: GlasgowPart | null;
  readonly verbal: GlasgowPart | null;
  readonly motor: GlasgowPart | null;
  readonly age: number | null;
  readonly pregnant: boolean | null;
  readonly spinalInjury: boolean | null;
  readonly weightKg: number | null;
  readonly heightCm: number | null;
};

export type ScoreInput = keyof ScoreInputs;

export const NO_SCORE_INPUTS: ScoreInputs = {
  respirations: null,
  oxygenSaturation: null,
  scale: null,
  onOxygen: null,
  systolic: null,
  diastolic: null,
  pulse: null,
  consciousness: null,
  temperature: null,
  glasgow: null,
  eyes: null,
  verbal: null,
  motor: null,
  age: null,
  pregnant: null,
  spinalInjury: null,
  weightKg: null,
  heightCm: null,
};

/** Those of some inputs that are not known, in the order given. */
export function missingOf<Key extends ScoreInput>(inputs: ScoreInputs, keys: readonly Key[]): Key[] {
  return keys.filter((key) => inputs[key] === null);
}
