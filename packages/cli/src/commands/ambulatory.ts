import { command } from '../command.js';
import { eachFile } from '../input/eachFile.js';
import { type RecordingAnswered, recordingMaker } from './series/ambulatoryAnswer.js';
import { recordingLines } from './series/ambulatoryLines.js';
import { recordingDrawable } from './series/seriesPages.js';
import { seriesThreads } from './series/seriesThreads.js';
import {
  RECORDING_OPTIONS,
  ruleItems,
  seriesOptions,
  type TypedRecording,
  type TypedSeries,
  typedRecording,
  typedSeries,
} from './series/typedSeries.js';
import { SHEET_OPTIONS, type TypedSheets, typedSheets } from './series/typedSheets.js';
import { withSheets } from './series/withSheets.js';

type Asked = {
  readonly typed: TypedSeries;
  readonly recording: TypedRecording;
  readonly sheets: TypedSheets;
};

/** `evenfall ambulatory`: what a recording over 24 hours comes to by a guideline. */
export const ambulatory = command<Asked>({
  name: 'ambulatory',
  summary: 'commands.ambulatory',
  options: [...seriesOptions('ambulatory'), ...RECORDING_OPTIONS, ...SHEET_OPTIONS],
  operands: { hint: 'FILE|-', least: 1, most: Number.POSITIVE_INFINITY, expected: 'a-file' },
  list: ruleItems('ambulatory'),

  parse(given, files) {
    const typed = typedSeries('ambulatory', given, files);
    const recording = typedRecording(given);
    const sheets = typedSheets(given);
    if (typed.ok && recording.ok && sheets.ok) {
      return { ok: true, value: { typed: typed.value, recording: recording.value, sheets: sheets.value } };
    }
    return {
      ok: false,
      refusals: [typed, recording, sheets].flatMap((one) => (one.ok ? [] : one.refusals)),
    };
  },

  run({ typed, recording, sheets }, context) {
    const { words } = context;
    let found: RecordingAnswered | null = null;
    const { of, json } = recordingMaker(typed, recording, context);
    const answer = () =>
      eachFile<RecordingAnswered>(
        typed.files,
        {
          of: (bytes) => {
            const made = of(bytes);
            if (made.ok) found = made.value;
            return made;
          },
          json,
          lines: (answered) => recordingLines(answered, words),
        },
        context,
        seriesThreads({ of: 'ambulatory', typed, recording }, context),
      );
    return withSheets(typed.files, sheets, context, answer, () =>
      found === null ? null : recordingDrawable(found, sheets, context),
    );
  },
});
