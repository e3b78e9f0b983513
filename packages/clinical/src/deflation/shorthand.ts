import { roundedText, roundTo } from '../contract/rounding.js';
import { passes } from '../contract/threshold.js';
import type { CuffSite, CuffSize, Posture, Side } from '../cuff/places.js';
import { DEFLATION_COMPARISONS as SIDE } from './comparisons.js';
import type { Gap } from './pressures.js';
import type { DeflationRules } from './rules.js';
import type { Method } from './run.js';
import type { RunResult } from './runResult.js';

/**
 * A pressure as the trade writes it, with what may stand beside it. Pressures in mmHg, the pulse whole per minute;
 * null is not written. Three numbers are always first sound, muffling, last sound; two are first and last.
 */
export type Shorthand = {
  readonly systolic: number;
  readonly muffled: number | null;
  /** Null by palpation alone. */
  readonly diastolic: number | null;
  readonly method: Method;
  /** How many readings the numbers are the mean of; 1 is one reading. */
  readonly readings: number;
  readonly pulse: number | null;
  readonly gap: Gap | null;
  readonly side: Side | null;
  readonly posture: Posture | null;
  readonly cuff: CuffSize | null;
  /** Null is the upper arm. */
  readonly site: Exclude<CuffSite, 'upper-arm'> | null;
};

/** What stands beside the numbers of a run. */
export type Beside = Pick<Shorthand, 'pulse' | 'side' | 'posture' | 'cuff' | 'site'>;

export const NOTHING_BESIDE: Beside = { pulse: null, side: null, posture: null, cuff: null, site: null };

/** What of a result is written. */
export type Written = Pick<RunResult, 'systolic' | 'diastolic' | 'muffled' | 'method' | 'gap'>;

/**
 * A result as it is written: the muffling only where sounds went on to zero, or where it lies well above the last
 * sound; the pulse as a whole number. Source: docs/conventions.md section 6; bedside handbook 3.7 and 7.2.
 */
export function shorthandOf(result: Written, beside: Beside, rules: DeflationRules): Shorthand {
  const { systolic, diastolic, method, gap } = result;
  const pulse = beside.pulse === null ? null : roundTo(beside.pulse, 0);
  const muffled = isThree(result, rules) ? result.muffled : null;
  return { systolic, muffled, diastolic, method, readings: 1, gap, ...beside, pulse };
}

function isThree({ muffled, diastolic }: Written, rules: DeflationRules): boolean {
  if (muffled === null || diastolic === null) return false;
  const isToZero = passes(diastolic, SIDE.toZeroMmHg, rules.toZeroMmHg);
  return isToZero || passes(muffled - diastolic, SIDE.threeNumbersMmHg, rules.threeNumbersMmHg);
}

/**
 * The shorthand as text, which `parseShorthand` reads back the same. Numbers are written in full.
 * Source: bedside handbook 7.2; `device` and the sites are this project's additions.
 *
 * @example printShorthand(shorthand) // '148/92 76 R sit L-cuff'
 */
export function printShorthand(shorthand: Shorthand): string {
  const { gap, pulse, side, posture, site, cuff, method } = shorthand;
  const beside = [
    pulse === null ? null : String(pulse),
    side === null ? null : LETTER_OF[side],
    site,
    posture,
    cuff === null ? null : `${cuff}-cuff`,
    method === 'device' ? 'device' : null,
  ].filter((word) => word !== null);
  const text = [numbersText(shorthand), ...beside].join(' ');
  return gap === null ? text : `${text}, gap ${plain(gap.fromMmHg)}-${plain(gap.toMmHg)}`;
}

const LETTER_OF: Readonly<Record<Side, string>> = { right: 'R', left: 'L' };

/** The numbers alone: `148/92`, `122/P`, `118/62/0`, `148/92x2`. */
export function numbersText({
  systolic,
  muffled,
  diastolic,
  readings,
}: Pick<Shorthand, 'systolic' | 'muffled' | 'diastolic' | 'readings'>): string {
  const parts = [systolic, muffled, diastolic].filter((mmHg) => mmHg !== null).map(plain);
  if (diastolic === null) parts.push('P');
  return `${parts.join('/')}${readings === 1 ? '' : `x${readings}`}`;
}

/** A number in full, without an exponent. */
function plain(value: number): string {
  const [digits = '', exponent = '0'] = String(value).split('e');
  const decimals = (digits.split('.')[1] ?? '').length - Number(exponent);
  return roundedText(value, Math.max(0, decimals));
}
