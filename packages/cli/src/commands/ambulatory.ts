import { command } from '../command.js';
import { eachFile } from '../input/eachFile.js';
import { type RecordingAnswered, recordingAnswered, recordingJson } from './series/ambulatoryAnswer.js';
import { recordingLines } from './series/ambulatoryLines.js';
import { seriesOfText } from './series/seriesOfText.js';
import {
  RECORDING_OPTIONS,
  ruleItems,
  seriesOptions,
  type TypedRecording,
  type TypedSeries,
  typedRecording,
  typedSeries,
} from './series/typedSeries.js';

type Asked = { readonly typed: TypedSeries; readonly recording: TypedRecording };

/** `evenfall ambulatory`: what a recording over 24 hours comes to by a guideline. */
export const ambulatory = command<Asked>({
  name: 'ambulatory',
  summary: 'commands.ambulatory',
  options: [...seriesOptions('ambulatory').filter(({ name }) => name !== 'sex'), ...RECORDING_OPTIONS],
  operands: { hint: 'FILE|-', least: 1, most: Number.POSITIVE_INFINITY, expected: 'a-file' },
  list: ruleItems('ambulatory'),

  parse(given, files) {
    const typed = typedSeries('ambulatory', given, files);
    const recording = typedRecording(given);
    if (typed.ok && recording.ok)
      return { ok: true, value: { typed: typed.value, recording: recording.value } };
    return {
      ok: false,
      refusals: [typed, recording].flatMap((one) => (one.ok ? [] : one.refusals)),
    };
  },

  run({ typed, recording }, context) {
    const { words, version } = context;
    return eachFile<RecordingAnswered>(
      typed.files,
      (text) => {
        const read = seriesOfText(text, typed.choices);
        return read.ok ? { ok: true, value: recordingAnswered(read.value, typed, recording) } : read;
      },
      {
        json: (answered) => recordingJson(answered, version, words),
        lines: (answered) => recordingLines(answered, words),
      },
      context,
    );
  },
});
