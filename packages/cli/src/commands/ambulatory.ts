import { refusal } from '@evenfall/clinical';
import { command } from '../command.js';
import { eachFile } from '../input/eachFile.js';
import { type RecordingAnswered, recordingAnswered, recordingJson } from './series/ambulatoryAnswer.js';
import { recordingLines } from './series/ambulatoryLines.js';
import { seriesOfText } from './series/seriesOfText.js';
import { recordingDrawable } from './series/seriesPages.js';
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
  options: [
    ...seriesOptions('ambulatory').filter(({ name }) => name !== 'sex'),
    ...RECORDING_OPTIONS,
    ...SHEET_OPTIONS,
  ],
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
    const { words, version } = context;
    let found: RecordingAnswered | null = null;
    const answer = () =>
      eachFile<RecordingAnswered>(
        typed.files,
        (text) => {
          const read = seriesOfText(text, typed.choices);
          if (!read.ok) return read;
          // Who sleeps by day has no night by the clock: where a diary tells it, no fixed hours may.
          if (
            recording.dayNight?.by === 'clock' &&
            read.value.readings.some(({ asleep }) => asleep !== null)
          ) {
            return { ok: false, refusals: [refusal('--day', 'contradicts', 'night-by-diary', null)] };
          }
          found = recordingAnswered(read.value, typed, recording);
          return { ok: true, value: found };
        },
        {
          json: (answered) => recordingJson(answered, version, words),
          lines: (answered) => recordingLines(answered, words),
        },
        context,
      );
    return withSheets(typed.files, sheets, context, answer, () =>
      found === null ? null : recordingDrawable(found, sheets, context),
    );
  },
});
