import type { Figure } from '../contract/figure.js';
import { SCORE_FIGURES as F } from '../score/figures.js';
import { DEFAULT_SCORE_RULES as RULES, type ScoreRules } from '../score/rules.js';
import type { FieldShape, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/** Which scores are shown; none until the place has chosen. The source is that of the score's own numbers. */
export const SCORE_SECTION: Section<ScoreRules> = {
  fields: {
    earlyWarning: shown('earlyWarning', 'the early-warning score of adults', F.ewMostPoints),
    oxygenScale: {
      kind: 'choice',
      choices: [1, 2],
      value: RULES.oxygenScale,
      unit: null,
      meaning:
        'the scale of a saturation where none is said; 2 only where a named prescriber decided it for each person',
      source: F.ewMostPoints.source,
      sure: F.ewMostPoints.sure,
      since: SINCE,
    },
    sepsisScreen: shown('sepsisScreen', 'the sepsis screen of adults', F.sepsisPositive),
    meanPressure: shown('meanPressure', 'the mean pressure', F.meanThird),
    pulsePressure: shown('pulsePressure', 'the pulse pressure', F.pulsePressureWide),
    shockIndex: shown('shockIndex', 'the plain, the modified and the age shock index', F.shockIndexRaised),
    paediatricShockIndex: shown('paediatricShockIndex', 'the shock index of a child', F.childShockIndexYoung),
    ratePressureProduct: shown('ratePressureProduct', 'the rate-pressure product', F.rateProductHigh),
    bodyMassIndex: shown('bodyMassIndex', 'the body-mass index', F.bodyMassOver),
  },
  agree: () => [],
};

function shown(
  key: Exclude<keyof ScoreRules, 'oxygenScale'>,
  what: string,
  { source, sure }: Figure,
): FieldShape<boolean> {
  return { kind: 'yes-no', value: RULES[key], unit: null, meaning: `${what} is shown`, source, sure, since: SINCE }; // biome-ignore format: one thought
}
