import { command } from '../command.js';
import { eachFile } from '../input/eachFile.js';
import { type HomeAnswered, homeAnswered, homeJson } from './series/homeAnswer.js';
import { homeLines } from './series/homeLines.js';
import { seriesOfText } from './series/seriesOfText.js';
import { ruleItems, seriesOptions, type TypedSeries, typedSeries } from './series/typedSeries.js';

/** `evenfall home`: what readings taken at home come to by a guideline. */
export const home = command<TypedSeries>({
  name: 'home',
  summary: 'commands.home',
  options: seriesOptions('home'),
  operands: { hint: 'FILE|-', least: 1, most: Number.POSITIVE_INFINITY, expected: 'a-file' },
  list: ruleItems('home'),

  parse: (given, files) => typedSeries('home', given, files),

  run(typed, context) {
    const { words, version } = context;
    return eachFile<HomeAnswered>(
      typed.files,
      (text) => {
        const read = seriesOfText(text, typed.choices);
        return read.ok ? { ok: true, value: homeAnswered(read.value, typed) } : read;
      },
      {
        json: (answered) => homeJson(answered, version, words),
        lines: (answered) => homeLines(answered, words),
      },
      context,
    );
  },
});
