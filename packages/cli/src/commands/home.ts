import { command } from '../command.js';
import { eachFile } from '../input/eachFile.js';
import { type HomeAnswered, homeMaker } from './series/homeAnswer.js';
import { homeLines } from './series/homeLines.js';
import { homeDrawable } from './series/seriesPages.js';
import { seriesThreads } from './series/seriesThreads.js';
import { ruleItems, seriesOptions, type TypedSeries, typedSeries } from './series/typedSeries.js';
import { SHEET_OPTIONS, type TypedSheets, typedSheets } from './series/typedSheets.js';
import { withSheets } from './series/withSheets.js';

type Asked = { readonly typed: TypedSeries; readonly sheets: TypedSheets };

/** `evenfall home`: what readings taken at home come to by a guideline. */
export const home = command<Asked>({
  name: 'home',
  summary: 'commands.home',
  options: [...seriesOptions('home'), ...SHEET_OPTIONS],
  operands: { hint: 'FILE|-', least: 1, most: Number.POSITIVE_INFINITY, expected: 'a-file' },
  list: ruleItems('home'),

  parse(given, files) {
    const typed = typedSeries('home', given, files);
    const sheets = typedSheets(given);
    if (typed.ok && sheets.ok) return { ok: true, value: { typed: typed.value, sheets: sheets.value } };
    return { ok: false, refusals: [typed, sheets].flatMap((one) => (one.ok ? [] : one.refusals)) };
  },

  run({ typed, sheets }, context) {
    const { words } = context;
    let found: HomeAnswered | null = null;
    const { of, json } = homeMaker(typed, context);
    const answer = () =>
      eachFile<HomeAnswered>(
        typed.files,
        {
          of: (bytes) => {
            const made = of(bytes);
            if (made.ok) found = made.value;
            return made;
          },
          json,
          lines: (answered) => homeLines(answered, words),
        },
        context,
        seriesThreads({ of: 'home', typed }, context),
      );
    return withSheets(typed.files, sheets, context, answer, () =>
      found === null ? null : homeDrawable(found, sheets, context),
    );
  },
});
