import { LEDGER_PARTS, type Ledger } from '@evenfall/practice';
import type { LedgerStep } from '@evenfall/report';
import type { Words } from '@evenfall/words';

type Part = (typeof LEDGER_PARTS)[number];

/** Parts that are told only where there is something to tell. */
const ONLY_IF_ANY: readonly Part[] = ['misheard', 'imagined', 'unsplit'];

/**
 * The lines of a ledger in the order in which the error came about, named; what technique did comes after the body. To a tenth of a
 * mmHg, each as what it adds to the number shown before it: `truth` and all steps sum to what was written, to the digit.
 *
 * @param isBegunLow the cuff was not above the sounds when it began to fall: that, and not the beat, is where the first one is missed
 * @param isAfterGap the sound after a silent gap was taken for the first
 */
export function ledgerSteps(
  ledger: Ledger,
  words: Words,
  isBegunLow = false,
  isAfterGap = false,
): { readonly truth: number; readonly steps: readonly LedgerStep[] } {
  const truth = tenth(ledger.longRun);
  let at = ledger.longRun;
  const steps = exactSteps(ledger, words, isBegunLow, isAfterGap).map((step) => {
    const before = tenth(at);
    at += step.mmHg;
    return { ...step, mmHg: tenth(tenth(at) - before) };
  });
  return { truth, steps };
}

const TENTHS = 10;

function tenth(mmHg: number): number {
  return Math.round(mmHg * TENTHS) / TENTHS;
}

function exactSteps(ledger: Ledger, words: Words, isBegunLow: boolean, isAfterGap: boolean): LedgerStep[] {
  const isTimed = ledger.unsplit === 0;
  const part = (name: Part): LedgerStep[] => {
    const mmHg = ledger[name];
    const isLeftOut = mmHg === 0 && (ONLY_IF_ANY.includes(name) || !isTimed);
    const isOfGap = isAfterGap && (name === 'misheard' || name === 'unsplit');
    const says = name === 'sampling' && isBegunLow ? 'sampling-low' : isOfGap ? 'gap' : name;
    return isLeftOut ? [] : [{ key: name, label: words.sentence(`debrief.part-${says}`), mmHg }];
  };
  const [physiology, ...others] = LEDGER_PARTS;
  return [
    ...part(physiology),
    ...ledger.technique.map(({ code, mmHg }) => ({
      key: code,
      label: words.sentence(`debrief.effect-${code}`),
      mmHg,
    })),
    ...others.flatMap(part),
  ];
}
