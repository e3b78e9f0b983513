import type { Words } from '@evenfall/words';
import type { RecordingDrawn } from '../figure/recordingFigure.js';
import { clockText } from '../figure/times.js';

/** What divides day and night, with its times: the diary’s, or the clock’s where there is none. */
export function windowsText(
  { result, dayNight }: Pick<RecordingDrawn, 'result' | 'dayNight'>,
  words: Words,
): string {
  const by = words.sentence(result.dayNightBy === 'diary' ? 'series.byDiary' : 'series.byClock');
  const range = ({ from, to }: { from: number; to: number }) =>
    `${clockText(from, words)}-${clockText(to, words)}`;
  if (dayNight.by === 'asleep-marks') return by;
  const night = range(dayNight.by === 'clock' ? dayNight.night : dayNight.asleep);
  const day = dayNight.by === 'clock' ? range(dayNight.day) : null;
  const nap = dayNight.by === 'asleep-range' && dayNight.nap != null ? range(dayNight.nap) : null;
  return words.sentence('report.windows', { by, day, night, nap });
}
