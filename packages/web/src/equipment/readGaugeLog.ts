import type { Parsed } from '@evenfall/clinical';
import {
  COMPARED_AT_MMHG,
  GAUGE_CHECKS,
  GAUGE_EVENTS,
  type GaugeLog,
  parseGaugeLog,
} from '@evenfall/clinical';

/** What can be noted of a gauge, in the order in which the form offers it. */
export const LOG_OF = [...GAUGE_CHECKS, ...GAUGE_EVENTS] as const;
export type LogOf = (typeof LOG_OF)[number];

/** Rows of a comparison: the pressures that are offered, and some more for a finer one. */
const MORE_POINTS = 3;
export const POINT_ROWS: readonly number[] = Array.from(
  { length: COMPARED_AT_MMHG.length + MORE_POINTS },
  (_, index) => index,
);

/** What stands in the other gauge's field of a row until it is touched. */
export function offeredAt(row: number): string {
  const at = COMPARED_AT_MMHG[row];
  return at === undefined ? '' : String(at);
}

/** Reads what was noted of a gauge, from the text of each field. A row of which this gauge was not read is left out. */
export function readLog(of: LogOf, text: (field: string) => string): Parsed<GaugeLog> {
  const typed = (field: string) => text(field).trim();
  switch (of) {
    case 'zero':
      return parseGaugeLog({ of, restMmHg: typed('restMmHg') });
    case 'leak':
      return parseGaugeLog({
        of,
        fromMmHg: typed('fromMmHg'),
        toMmHg: typed('toMmHg'),
        seconds: typed('seconds'),
      });
    case 'comparison': {
      const points = POINT_ROWS.filter((row) => typed(`gauge${row}`) !== '').map((row) => ({
        referenceMmHg: typed(`other${row}`),
        gaugeMmHg: typed(`gauge${row}`),
      }));
      return parseGaugeLog({ of, reference: text('reference'), points });
    }
    default:
      return parseGaugeLog({ of });
  }
}
