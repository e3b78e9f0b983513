import { roundTo } from '@evenfall/clinical';
import type { ReportedValue } from '@evenfall/record';

/** How a unit of UCUM becomes the unit of this record. */
type Unit = { readonly scale: number; readonly offset?: number };

const SAME: Unit = { scale: 1 };
/** The millimetre of mercury in kilopascals (UCUM: 133.322 Pa). Source: interoperability handbook 13. */
const KPA_PER_MMHG = 0.133322;
/** International pound and inch (exact). */
const KG_PER_POUND = 0.45359237;
const CM_PER_INCH = 2.54;

const PER_MINUTE = {
  '/min': SAME,
  '1/min': SAME,
  'min-1': SAME,
  '{beats}/min': SAME,
  '{breaths}/min': SAME,
};

/** Units that are read for each sign, by UCUM code; case matters in UCUM. Source: interoperability handbook 5 and 13. */
export const UNITS_READ: Readonly<Record<ReportedValue['of'], Readonly<Record<string, Unit>>>> = {
  pressure: { 'mm[Hg]': SAME, kPa: { scale: 1 / KPA_PER_MMHG } },
  pulse: PER_MINUTE,
  breaths: PER_MINUTE,
  temperature: { Cel: SAME, '[degF]': { scale: 5 / 9, offset: -32 } },
  'oxygen-saturation': { '%': SAME },
  weight: { kg: SAME, g: { scale: 0.001 }, '[lb_av]': { scale: KG_PER_POUND } },
  height: { cm: SAME, m: { scale: 100 }, '[in_i]': { scale: CM_PER_INCH } },
};

/** More decimals than any conversion needs; what came stands beside it. */
const DECIMALS_KEPT = 4;

/** A number in the unit of this record; one that needed no conversion is kept as it is. */
export function converted(value: number, { scale, offset = 0 }: Unit): number {
  return scale === 1 && offset === 0 ? value : roundTo((value + offset) * scale, DECIMALS_KEPT);
}
