import { INTAKE_LIMITS } from '@evenfall/clinical';
import { pressureOf } from '@evenfall/exchange';

/** The three numbers of a reading as they stand in the grid. */
export const GRID_CELLS = ['systolic', 'diastolic', 'pulse'] as const;
export type GridCell = (typeof GRID_CELLS)[number];
export type Typed = Readonly<Record<GridCell, string>>;

/** What a cell holds after a key, and whether the next one is to be typed into. */
export type AfterKey = { readonly text: string; readonly isFull: boolean };

const MOST_DIGITS = 3;
/** A number under 100 has two digits: what begins with a later digit than these is full with two. */
const HAS_THREE: Readonly<Record<GridCell, RegExp>> = {
  systolic: /^[12]/,
  diastolic: /^[01]/,
  pulse: /^[0-2]/,
};
const SEPARATORS = /[\s/\\,;.-]+$/;

/** No number of a reading begins with a 0: a digit was left out or typed twice. */
const LEADING_ZERO = /^0\d/;

/**
 * A cell as it was typed: three digits fill it, two where no number with three begins so, and two with a separator after
 * them. Anything that is no digit, or begins with a 0, stays as it was typed and is never full, so that it is seen and can
 * be refused.
 */
export function afterKey(cell: GridCell, text: string): AfterKey {
  const bare = text.replace(SEPARATORS, '').trim();
  if (!/^\d*$/.test(bare) || LEADING_ZERO.test(bare)) return { text, isFull: false };
  const isEnded = bare !== text.trimStart() && bare.length >= 2;
  const isFull = isEnded || bare.length >= MOST_DIGITS || (bare.length === 2 && !HAS_THREE[cell].test(bare));
  return { text: bare, isFull };
}

/** Whether more digits are to come in a cell: nothing is made of it before, unless somebody leaves it. */
export function isHalfTyped(cell: GridCell, text: string): boolean {
  return /^\d+$/.test(text) && !LEADING_ZERO.test(text) && !afterKey(cell, text).isFull;
}

/** Whether a cell that is full cannot be so, where typing then stops: out of every range, or a diastolic that is not below. */
export function isImpossible(cell: GridCell, typed: Typed): boolean {
  const { minimum, maximum } = INTAKE_LIMITS[cell];
  const value = Number(typed[cell]);
  if (value < minimum || value > maximum) return true;
  return cell === 'diastolic' && typed.systolic !== '' && value >= Number(typed.systolic);
}

/** A whole reading in one text: `142/88 74`, `142/88`, or three numbers apart. Null for anything else. */
export function readingIn(text: string): Typed | null {
  const bare = text.trim();
  const slashed = pressureOf(bare);
  if (slashed !== null) {
    const { systolic, diastolic, pulse } = slashed;
    return {
      systolic: String(systolic),
      diastolic: String(diastolic),
      pulse: pulse === null ? '' : String(pulse),
    };
  }
  const found = /^(\d{2,3})[\s,;]+(\d{2,3})(?:[\s,;]+(\d{2,3}))?$/.exec(bare);
  if (found === null) return null;
  const [, systolic = '', diastolic = '', pulse = ''] = found;
  return { systolic, diastolic, pulse };
}

/** Readings in a text of several lines, one a line; null where one of its lines is none. */
export function readingsIn(text: string): Typed[] | null {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const readings = lines.map(readingIn);
  return readings.length > 0 && readings.every((one) => one !== null) ? readings : null;
}
