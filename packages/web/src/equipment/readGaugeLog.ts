import type { Parsed } from '@evenfall/clinical';
import {
  comparedAtMmHg,
  type EquipmentRules,
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
export function pointRows(rules: EquipmentRules): readonly number[] {
  return Array.from({ length: comparedAtMmHg(rules).length + MORE_POINTS }, (_, index) => index);
}

/** What stands in the other gauge's field of each row until it is touched; nothing in the last ones. */
export function offeredAt(rules: EquipmentRules): readonly string[] {
  const offered = comparedAtMmHg(rules);
  return pointRows(rules).map((row) => (offered[row] === undefined ? '' : String(offered[row])));
}

/**
 * Reads what was noted of a gauge, from the text of each field. A row of which this gauge was not read is left out.
 *
 * @param rows of a comparison, by their numbers in the names of the fields
 */
export function readLog(
  of: LogOf,
  text: (field: string) => string,
  rows: readonly number[],
): Parsed<GaugeLog> {
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
      const points = rows
        .filter((row) => typed(`gauge${row}`) !== '')
        .map((row) => ({
          referenceMmHg: typed(`other${row}`),
          gaugeMmHg: typed(`gauge${row}`),
        }));
      return parseGaugeLog({ of, reference: text('reference'), points });
    }
    default:
      return parseGaugeLog({ of });
  }
}
