import { type EntryFrame, type SeriesEvidence, seriesMade } from '@evenfall/record';
import { A1 } from '../../clinical/src/outOfOffice/testing.js';
import { H1, homeEvidence, inForceBy, keptReading } from '../../record/src/testing/series.js';
import { idOf, type Made, made } from './charts.js';

/** A guideline that leaves the first day out (ISH 2020, out-of-office handbook 2), and the means over time of a recording. */
export const UNDER_HOME_RULES = inForceBy({ home: 'ish-2020' });

/** The invented home week H1 of the out-of-office handbook 19, taken in under the rules given. */
export function homeWeek(
  id: number,
  more: Partial<SeriesEvidence> = {},
  frame: Partial<EntryFrame> = {},
): Made {
  return made(id, 'series', seriesMade(homeEvidence(H1, more), UNDER_HOME_RULES, 'evenfall 0.1.0'), frame);
}

/** The invented recording A1 of the same: in bed from 23:00 to 07:00, and a last measurement that failed. */
export function recording(id: number, more: Partial<SeriesEvidence> = {}): Made {
  const [first] = A1;
  const days = (localDay: number) => 1 + localDay - (first?.localDay ?? 0);
  const pad = (number: number) => String(number).padStart(2, '0');
  const readings = A1.map(({ localDay, minuteOfDay, systolic, diastolic, pulse }) => {
    const clock = `${pad(Math.floor(minuteOfDay / 60))}:${pad(minuteOfDay % 60)}`;
    const at = `2026-07-${pad(days(localDay))}T${clock}:00+00:00`;
    return { ...keptReading(at, ''), systolic, diastolic, pulse };
  });
  const failed = { ...keptReading('2026-07-02T08:50:00+00:00', ''), systolic: null };
  const evidence = homeEvidence([...readings, failed], {
    of: 'ambulatory',
    asleep: { from: 23 * 60, to: 7 * 60 },
    scheduled: 40,
    ...more,
  });
  return made(id, 'series', seriesMade(evidence, UNDER_HOME_RULES, 'evenfall 0.1.0'));
}

/** Somebody takes a reading out of the mean by hand. */
export function takenOut(id: number, series: number, place: number, reason: string): Made {
  const content = { series: idOf(series), decision: 'out', indexes: [place], reason };
  return made(id, 'series-decided', content);
}
