import { parseScoreInputs } from './parseScoreInputs.js';
import type { ScoreInputs } from './scoreInputs.js';
import type { ScoreId } from './scores.js';

/** What a score is made from, as it would come from outside. For tests. */
export function inputsOf(of: ScoreId, input: object): ScoreInputs {
  const parsed = parseScoreInputs(of, input);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  return parsed.value;
}
