import { clock, type Words } from '@evenfall/words';
import type { RecordingDrawn } from '../figure/recordingFigure.js';
import { clockText, DAY_MINUTES } from '../figure/times.js';

/** Hours of a day in minutes from local midnight; may pass it. */
type Hours = { readonly from: number; readonly to: number };

/** What divides day and night, with its times: the diary’s, or the clock’s where there is none. */
export function windowsText(
  { result, dayNight }: Pick<RecordingDrawn, 'result' | 'dayNight'>,
  words: Words,
): string {
  const by = words.sentence(result.dayNightBy === 'diary' ? 'series.byDiary' : 'series.byClock');
  if (dayNight.by === 'asleep-marks') return by;
  const night = hoursText(dayNight.by === 'clock' ? dayNight.night : dayNight.asleep, words);
  const day = dayNight.by === 'clock' ? hoursText(dayNight.day, words) : null;
  const nap = dayNight.by === 'asleep-range' && dayNight.nap != null ? hoursText(dayNight.nap, words) : null;
  return words.sentence('report.windows', { by, day, night, nap });
}

/** The hours of sleep that somebody said of a recording; in words where they are not known. */
export function sleepText(
  { asleep, nap }: { readonly asleep: Hours | null; readonly nap: Hours | null },
  words: Words,
): string {
  if (asleep === null) return words.sentence('away.sleepNotKnown');
  return words.sentence('away.sleepSaid', {
    night: hoursText(asleep, words),
    nap: nap === null ? null : hoursText(nap, words),
  });
}

/** Hours that end at midnight end the day: 24:00, not the 00:00 that begins it. */
function hoursText({ from, to }: Hours, words: Words): string {
  const isMidnight = to % DAY_MINUTES === 0;
  const end = isMidnight && words.say.manner.hours === 24 ? clock(DAY_MINUTES) : clockText(to, words);
  return `${clockText(from, words)}-${end}`;
}
