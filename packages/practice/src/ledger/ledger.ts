import type { EffectCode } from '@evenfall/physiology';

/** What a fault of preparation, cuff or chest piece did to one number. */
export type TechniqueLine = { readonly code: EffectCode; readonly mmHg: number };

/**
 * The error of one number in the terms of the model book, mmHg. The parts sum to the error:
 * `error = physiology + sum of technique + sampling + misheard + imagined + lag + gauge + digit + unsplit`.
 *
 * `longRun` is the mean over 60 s of what a perfect listener would have got on each beat, as the textbook prepares.
 * `physiology`: the beat that was caught was not the average one. `sampling`: the cuff fell between beats.
 * `imagined`: it was marked where no sound was, so far from the right one. `misheard`: another sound was taken than the first (last) one a normal ear hears in a quiet room; by feel, how far below it the pulse came back. `lag`: the needle was
 * read later. `gauge`: what the needle showed beside the cuff. `digit`: what was written beside the needle. `unsplit`:
 * all of the observer's part where it is not known when the needle was read.
 * Source: physiology handbook 1.2; assessment handbook 1.
 */
export type Ledger = {
  readonly entered: number;
  readonly longRun: number;
  readonly error: number;
  readonly physiology: number;
  readonly technique: readonly TechniqueLine[];
  readonly sampling: number;
  readonly misheard: number;
  readonly imagined: number;
  readonly lag: number;
  readonly gauge: number;
  readonly digit: number;
  readonly unsplit: number;
};

/** The parts of a ledger besides technique, in the order in which the error came about; technique comes after the first. */
export const LEDGER_PARTS = [
  'physiology',
  'sampling',
  'misheard',
  'imagined',
  'lag',
  'gauge',
  'digit',
  'unsplit',
] as const satisfies readonly (keyof Ledger)[];

/** The way of one number, mmHg: each step beside the one before is a line of the ledger. */
export type Way = {
  readonly longRun: number;
  /** What a perfect listener would have got on the beat that was caught. */
  readonly beat: number;
  /** Effects on the person itself, and those on cuff and ear. */
  readonly onPerson: readonly TechniqueLine[];
  readonly onCuff: readonly TechniqueLine[];
  /** In the cuff at the first (last) sound for a normal ear in a quiet room, at the sound taken, and at the mark. */
  readonly audible: number;
  readonly taken: number;
  /** Nothing was to be heard where it was marked. */
  readonly isImagined: boolean;
  /** Null: not known when the needle was read. */
  readonly marked: { readonly cuff: number; readonly needle: number } | null;
  readonly entered: number;
};

/** Parts the error of a number. */
export function ledgerOf(way: Way): Ledger {
  const { longRun, beat, audible, taken, isImagined, marked, entered } = way;
  const total = (lines: readonly TechniqueLine[]) => lines.reduce((sum, { mmHg }) => sum + mmHg, 0);
  return {
    entered,
    longRun,
    error: entered - longRun,
    physiology: beat - longRun - total(way.onPerson),
    technique: [...way.onPerson, ...way.onCuff].sort((a, b) => Math.abs(b.mmHg) - Math.abs(a.mmHg)),
    sampling: audible - beat - total(way.onCuff),
    misheard: isImagined ? 0 : taken - audible,
    imagined: isImagined ? taken - audible : 0,
    lag: marked === null ? 0 : marked.cuff - taken,
    gauge: marked === null ? 0 : marked.needle - marked.cuff,
    digit: marked === null ? 0 : entered - marked.needle,
    unsplit: marked === null ? entered - taken : 0,
  };
}

/** The sum of the parts: the error again, but for the last bits of the numbers. */
export function sumOfLedger(ledger: Ledger): number {
  const technique = ledger.technique.reduce((sum, { mmHg }) => sum + mmHg, 0);
  return LEDGER_PARTS.reduce((sum, part) => sum + ledger[part], technique);
}
