import { NOTHING_BESIDE, parseRun, runResult, runRules, shorthandOf } from '@evenfall/clinical';
import { command } from '../command.js';
import { eachFile, ofText } from '../input/eachFile.js';
import { jsonOf } from '../input/jsonOf.js';
import { type Answered, runJson, runLines } from './runAnswer.js';
import { RUN_OPTIONS, type RunTyped, runItems, runTyped } from './runOptions.js';

type Asked = RunTyped & { readonly files: readonly string[] };

/** `evenfall run`: a file with one inflation and deflation of the cuff, as JSON. */
export const run = command<Asked>({
  name: 'run',
  summary: 'commands.run',
  options: RUN_OPTIONS,
  operands: { hint: 'FILE|-', least: 1, most: Number.POSITIVE_INFINITY, expected: 'a-file' },
  list: runItems,

  parse: (given, files) => ({ ok: true, value: { ...runTyped(given), files } }),

  run({ files, circumstances, protocol }, context) {
    const rules = runRules(protocol);
    const { words, version } = context;
    return eachFile<Answered>(
      files,
      {
        of: ofText((text) => {
          const json = jsonOf(text);
          const read = json.ok ? parseRun(json.value, rules.deflation) : json;
          if (!read.ok) return read;
          const result = runResult(read.value, circumstances, rules);
          const beside = { ...NOTHING_BESIDE, pulse: read.value.pulsePerMinute };
          const written = shorthandOf(result, beside, rules.deflation);
          return {
            ok: true,
            value: { result, placeFlags: [], written, rhythmFelt: circumstances.rhythmFelt, protocol },
          };
        }),
        json: (answered) => runJson(answered, version, words),
        lines: (answered) => runLines(answered, false, words),
      },
      context,
    );
  },
});
