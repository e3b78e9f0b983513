import {
  ageShockIndex,
  bodyMassIndex,
  type DerivedValue,
  type EarlyWarning,
  earlyWarning,
  type Flag,
  type GlasgowTotal,
  glasgowTotal,
  type MeanPressure,
  meanPressure,
  modifiedShockIndex,
  paediatricShockIndex,
  pulsePressure,
  ratePressureProduct,
  type ScoreId,
  type ScoreInputs,
  type SepsisScreen,
  sepsisScreen,
  shockIndex,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { Json } from '../answer.js';

/** A score of points, or a value computed from others. */
export type Scored = EarlyWarning | SepsisScreen | GlasgowTotal | MeanPressure | DerivedValue<string>;

/** The score of that name. */
export function scoreOf(id: ScoreId, inputs: ScoreInputs): Scored {
  switch (id) {
    case 'early-warning':
      return airSaid(earlyWarning(inputs), inputs);
    case 'sepsis-screen':
      return sepsisScreen(inputs);
    case 'mean-pressure':
      return meanPressure(inputs);
    case 'pulse-pressure':
      return pulsePressure(inputs);
    case 'shock-index':
      return shockIndex(inputs);
    case 'modified-shock-index':
      return modifiedShockIndex(inputs);
    case 'age-shock-index':
      return ageShockIndex(inputs);
    case 'paediatric-shock-index':
      return paediatricShockIndex(inputs);
    case 'rate-pressure-product':
      return ratePressureProduct(inputs);
    case 'body-mass-index':
      return bodyMassIndex(inputs);
    case 'glasgow':
      return glasgowTotal(inputs);
  }
}

/** A switch that was not given is air: a score that takes this for granted says so. */
function airSaid(scored: EarlyWarning, { onOxygen }: ScoreInputs): EarlyWarning {
  if (onOxygen !== false) return scored;
  return { ...scored, flags: [...scored.flags, { code: 'air-assumed', figures: {} }] };
}

/** A score as JSON: its own keys in their order, each flag with its sentence. */
export function scoreJson(scored: Scored, words: Words): Json {
  const entries = Object.entries(scored).map(([key, value]) => [key, told(key, value, words)]);
  return Object.fromEntries(entries) as Json;
}

/** The keys that hold a flag or a list of flags. */
const TOLD: readonly string[] = ['alerts', 'response', 'checks', 'flags', 'why'];

function told(key: string, value: unknown, words: Words): unknown {
  if (!TOLD.includes(key) || value === null) return value;
  return Array.isArray(value) ? (value as Flag[]).map(words.flagged) : words.flagged(value as Flag);
}
