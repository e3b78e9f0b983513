import {
  isBlank,
  type Parsed,
  parseRun,
  parseShorthand,
  placeFlags,
  type Refusal,
  runRules,
  shorthandResult,
} from '@evenfall/clinical';
import { type Answer, refused } from '../answer.js';
import { type Context, command } from '../command.js';
import { readInput, STANDARD_INPUT } from '../input/readInput.js';
import { runJson, runLines } from './runAnswer.js';
import { RUN_OPTIONS, type RunTyped, runItems, runTyped } from './runOptions.js';

type Asked = RunTyped & { readonly written: string; readonly gaugeStepMmHg: number | null };

/** `evenfall reading`: a pressure as the trade writes it, in the shape of a run's answer. */
export const reading = command<Asked>({
  name: 'reading',
  summary: 'commands.reading',
  options: [
    ...RUN_OPTIONS,
    { name: 'gauge-step', kind: 'value', means: 'options.gaugeStep', hint: 'MMHG', field: '/gaugeStepMmHg' },
  ],
  operands: { hint: 'PRESSURE|-', least: 1, most: Number.POSITIVE_INFINITY, expected: 'pressure' },
  list: runItems,

  parse(given, operands) {
    const gauge = gaugeOf(given.text('gauge-step'));
    if (!gauge.ok) return gauge;
    return {
      ok: true,
      value: { ...runTyped(given), written: operands.join(' '), gaugeStepMmHg: gauge.value },
    };
  },

  async run(asked, context) {
    const isTypedIn = asked.written === STANDARD_INPUT;
    const file = isTypedIn ? STANDARD_INPUT : null;
    const text = isTypedIn
      ? await readInput(STANDARD_INPUT, context.stdin)
      : ({ ok: true, value: asked.written } as const);
    return text.ok ? answerTo(text.value, asked, file, context) : refusedAt(text.refusals, file, context);
  },
});

function answerTo(
  text: string,
  { circumstances, protocol, gaugeStepMmHg }: Asked,
  file: string | null,
  context: Context,
): Answer {
  const { words, version } = context;
  const read = parseShorthand(text);
  if (!read.ok) return refusedAt(read.refusals, file, context);
  const rules = runRules(protocol);
  const step = gaugeStepMmHg ?? rules.deflation.gaugeStepMmHg;
  const deflation = { ...rules.deflation, gaugeStepMmHg: step };
  const result = shorthandResult(read.value, { ...rules, deflation }, circumstances);
  const answered = {
    result,
    placeFlags: placeFlags(read.value.site ?? 'upper-arm', false),
    written: read.value,
    rhythmFelt: circumstances.rhythmFelt,
    protocol,
  };
  return { kind: 'one', json: runJson(answered, version, words), lines: runLines(answered, true, words) };
}

/** Problems with the column of the text in which they stand. */
function refusedAt(refusals: readonly Refusal[], file: string | null, { words }: Context): Answer {
  return refused(refusals.map((one) => words.problem(one, { file, column: one.figures.column ?? null })));
}

/** A graduation as a run's parser reads it. */
function gaugeOf(typed: string | null): Parsed<number | null> {
  if (isBlank(typed)) return { ok: true, value: null };
  const read = parseRun({
    method: 'palpation',
    gaugeStepMmHg: typed,
    moments: [{ what: 'pulse back', mmHg: 1 }],
  });
  return read.ok ? { ok: true, value: read.value.gaugeStepMmHg } : read;
}
