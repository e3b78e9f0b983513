import {
  type Count,
  countOfRate,
  type HowCounted,
  type Method,
  POSTURES,
  type Posture,
  parseRun,
  parseShorthand,
  type Refusal,
  type Run,
  refusal,
  runOfShorthand,
  type Side,
} from '@evenfall/clinical';
import type { InForce } from '@evenfall/record';

/** A set as it was typed in the trade's shorthand: the reading, the count behind the pulse, and what stood beside. */
export type TypedSet = {
  readonly run: Run;
  readonly method: Method;
  /** The numbers alone, as a keypad would have them. */
  readonly numbers: string;
  readonly pulse: Count | null;
  readonly side: Side | null;
  readonly posture: Posture | null;
};

export type ReadSet =
  | { readonly set: TypedSet; readonly wrong: null }
  | { readonly set: null; readonly wrong: Refusal };

/** How the numbers came about: listened to and remembered, or read off a display. */
export type SetMethod = 'auscultation' | 'device';

/** What may stand in the field besides the numbers; a cuff and a site have places of their own. */
const BESIDE = ['148/92 76', '122/P', 'R', 'L', ...POSTURES.filter((one) => one !== 'stand')];

/**
 * Reads `148/92 76`, `122/P`, `118/62/0 68 L stand`. Nothing is guessed and nothing is left out in silence: a cuff, a
 * site, a gap, a reading on the feet or a mean of several is refused here, and a pulse that its window cannot give.
 */
export function readTypedSet(
  text: string,
  how: { readonly method: SetMethod; readonly counted: Omit<HowCounted, 'of'> },
  { runRules, countRules }: Pick<InForce, 'runRules' | 'countRules'>,
): ReadSet {
  const written = parseShorthand(how.method === 'device' ? `${text} device` : text);
  if (!written.ok) return refused(written.refusals);
  const { method, pulse, side, posture, gap, cuff, site, readings } = written.value;
  if (readings !== 1) return refused([refusal('/readings', 'out-of-range', 'one-reading', text)]);
  // How long somebody stood belongs to a reading on the feet: that is asked for in a whole round.
  if (gap !== null || cuff !== null || site !== null || posture === 'stand') {
    return refused([refusal('/text', 'unknown-id', 'one-of', text, { choices: BESIDE })]);
  }
  const { deflation } = runRules;
  const run = parseRun(runOfShorthand(written.value, deflation.gaugeStepMmHg), deflation);
  if (!run.ok) return refused(run.refusals);
  const count = pulse === null ? null : countOfRate(pulse, { of: 'pulse', ...how.counted }, countRules);
  if (count !== null && !count.ok) return refused(count.refusals);
  const [numbers = ''] = text
    .trim()
    .split(/\s+/)
    .filter((word) => word.includes('/'));
  return {
    set: { run: run.value, method, numbers, pulse: count?.value ?? null, side, posture },
    wrong: null,
  };
}

function refused([first]: readonly Refusal[]): ReadSet {
  return { set: null, wrong: first ?? refusal('/text', 'missing', 'pressure', null) };
}
