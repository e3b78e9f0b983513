import { EQUIPMENT_COMPARISONS as SIDE } from '../equipment/comparisons.js';
import { EQUIPMENT_FIGURES as F } from '../equipment/figures.js';
import type { EquipmentRules } from '../equipment/rules.js';
import { type Bounds, numberField, wholeField } from './fieldShapes.js';
import type { FieldShape, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 5;

/** Keeping gauges: what passes, and when a check is due again. The bounds of a local value are this project's. */
export const EQUIPMENT_SECTION: Section<EquipmentRules> = {
  fields: {
    mostRestMmHg: limit('mostRestMmHg', [0, 10]),
    mostErrorMmHg: limit('mostErrorMmHg', [1, 10]),
    fewestPoints: whole('fewestPoints', [1, 20]),
    fromMmHg: limit('fromMmHg', [0, 90]),
    toMmHg: limit('toMmHg', [100, 300]),
    mostLeakMmHgPerMinute: limit('mostLeakMmHgPerMinute', [0.5, 20]),
    shortestLeakSeconds: limit('shortestLeakSeconds', [10, 600]),
    zeroDays: whole('zeroDays', [1, 366]),
    comparisonMonths: whole('comparisonMonths', [1, 60]),
    mercuryComparisonMonths: whole('mercuryComparisonMonths', [1, 60]),
    leakMonths: whole('leakMonths', [1, 60]),
  },
  agree: () => [],
};

function limit(id: keyof EquipmentRules, bounds: Bounds): FieldShape<number> {
  return numberField(F[id], bounds, SIDE[id], SINCE);
}

/** Days, months and pressures are counted: half of one is none. */
function whole(id: keyof EquipmentRules, bounds: Bounds): FieldShape<number> {
  return wholeField(F[id], bounds, SIDE[id], SINCE);
}
