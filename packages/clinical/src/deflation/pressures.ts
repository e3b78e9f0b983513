import { passes } from '../contract/threshold.js';
import { DEFLATION_COMPARISONS as SIDE } from './comparisons.js';
import type { DeflationRules } from './rules.js';
import type { Moment, Run } from './run.js';

/** Where sounds vanished, and where they came back: the auscultatory gap, in mmHg. */
export type Gap = { readonly fromMmHg: number; readonly toMmHg: number };

/** The numbers of a run as heard, felt or displayed, in mmHg; null is none. */
export type Pressures = {
  readonly systolic: number;
  /** The last sound heard, also where sounds went on to zero. */
  readonly diastolic: number | null;
  readonly muffled: number | null;
  /** What averages, categories and scores take: the muffling where sounds went on to zero, else the last sound. */
  readonly diastolicUsed: number | null;
  readonly gap: Gap | null;
};

/** The pressures of a run. Source: docs/conventions.md section 6; bedside handbook 3.4 and 3.7. */
export function pressuresOf(run: Run, rules: DeflationRules): Pressures {
  const { moments, method } = run;
  const systolic = (momentOf(moments, method === 'palpation' ? 'pulse back' : 'first sound') as Moment).mmHg;
  const diastolic = moments.findLast(({ what }) => what === 'last sound')?.mmHg ?? null;
  const muffled = momentOf(moments, 'muffled')?.mmHg ?? null;
  const diastolicUsed = usedOf(diastolic, muffled, rules);
  return { systolic, diastolic, muffled, diastolicUsed, gap: gapOf(moments) };
}

function usedOf(diastolic: number | null, muffled: number | null, rules: DeflationRules): number | null {
  if (diastolic === null) return null;
  if (muffled !== null && passes(diastolic, SIDE.toZeroMmHg, rules.toZeroMmHg)) return muffled;
  return diastolic === 0 ? null : diastolic;
}

/** Sounds that came back lower than they had gone. Higher is no gap: the cuff was pumped up again. */
function gapOf(moments: readonly Moment[]): Gap | null {
  const [gone, back] = soundsBack(moments) ?? [];
  if (gone === undefined || back === undefined || back.mmHg > gone.mmHg) return null;
  return { fromMmHg: gone.mmHg, toMmHg: back.mmHg };
}

/** Whether the cuff was pumped up again part-way: so it was said, or sounds came back higher than they had gone. */
export function isReinflated(run: Run): boolean {
  const [gone, back] = soundsBack(run.moments) ?? [];
  return run.reinflated || (gone !== undefined && back !== undefined && back.mmHg > gone.mmHg);
}

/** The last sound before sounds came back, and the first after; null if they did not. */
export function soundsBack(moments: readonly Moment[]): readonly [Moment, Moment] | null {
  const at = moments.findIndex(({ what }, place) => place > 0 && what === 'first sound');
  const gone = moments[at - 1];
  const back = moments[at];
  return gone === undefined || back === undefined ? null : [gone, back];
}

/** The first moment of a kind; undefined if there is none. */
export function momentOf(moments: readonly Moment[], kind: Moment['what']): Moment | undefined {
  return moments.find(({ what }) => what === kind);
}
