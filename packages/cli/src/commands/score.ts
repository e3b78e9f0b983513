import {
  parseScoreInputs,
  refusal,
  SCORE_IDS,
  SCORE_RULE,
  SCORES,
  type ScoreId,
  type ScoreInputs,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { command, type Item, NO_OPERANDS } from '../command.js';
import { computedBy } from '../output/computedBy.js';
import { scoreJson, scoreOf } from './scoreAnswer.js';
import { scoreLines } from './scoreLines.js';
import { asTyped, SCORE_OPTIONS, scoreIdOf, typedFor } from './scoreOptions.js';

type Asked = { readonly id: ScoreId; readonly inputs: ScoreInputs };

/** `evenfall score`: a score or a value computed from several signs. What was not typed is missing, never normal. */
export const score = command<Asked>({
  name: 'score',
  summary: 'commands.score',
  options: SCORE_OPTIONS,
  operands: NO_OPERANDS,
  list: scoreItems,

  parse(given) {
    const id = scoreIdOf(given.text('of'));
    if (id === null) {
      return { ok: false, refusals: [refusal('/of', 'missing', 'one-of', null, { choices: SCORE_IDS })] };
    }
    const inputs = parseScoreInputs(id, typedFor(SCORES[id].takes, given));
    if (!inputs.ok) return { ok: false, refusals: asTyped(inputs.refusals) };
    return { ok: true, value: { id, inputs: inputs.value } };
  },

  async run({ id, inputs }, { words, version }) {
    const scored = scoreOf(id, inputs);
    const { scale, onOxygen, pregnant, spinalInjury } = inputs;
    const switches = id === 'early-warning' ? { scale, onOxygen, pregnant, spinalInjury } : {};
    const json = {
      ...scoreJson(scored, words),
      of: id,
      ...switches,
      computedBy: computedBy(version, SCORE_RULE, null),
    };
    return { kind: 'one', json, lines: scoreLines(id, scored, words) };
  },
});

/** Every score, in the order of the handbook. */
function scoreItems(words: Words): Item[] {
  return SCORE_IDS.map((id) => ({
    id,
    title: words.title('score', id),
    source: SCORES[id].source,
    status: SCORES[id].status,
    typed: `--of ${id}`,
  }));
}
