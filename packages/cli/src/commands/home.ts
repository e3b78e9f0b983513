import { command } from '../command.js';
import { eachFile } from '../input/eachFile.js';
import { type HomeAnswered, homeAnswered, homeJson } from './series/homeAnswer.js';
import { homeLines } from './series/homeLines.js';
import { seriesOfText } from './series/seriesOfText.js';
import { homeDrawable } from './series/seriesPages.js';
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
    const { words, version } = context;
    let found: HomeAnswered | null = null;
    const answer = () =>
      eachFile<HomeAnswered>(
        typed.files,
        (text) => {
          const read = seriesOfText(text, typed.choices);
          if (!read.ok) return read;
          found = homeAnswered(read.value, typed);
          return { ok: true, value: found };
        },
        {
          json: (answered) => homeJson(answered, version, words),
          lines: (answered) => homeLines(answered, words),
        },
        context,
      );
    return withSheets(typed.files, sheets, context, answer, () =>
      found === null ? null : homeDrawable(found, sheets, context),
    );
  },
});
