import type { Entry } from '../entry/entry.js';

/** The pressure an entry stands for, in mmHg: set by hand if it was, else computed. */
export type ChartedPressure = {
  readonly systolic: number;
  /** Null by palpation. */
  readonly diastolic: number | null;
  /** What averages, categories and scores take; null where it cannot be used. */
  readonly diastolicUsed: number | null;
  readonly byHand: boolean;
  /** False for a site other than the upper arm: charted, and never averaged or categorised with it. */
  readonly isAveraged: boolean;
};

/** The charted pressure of a run; null for any other entry. A diastolic of 0 set by hand cannot be used either. */
export function chartedPressure(entry: Entry): ChartedPressure | null {
  if (entry.kind !== 'run') return null;
  const { override, value } = entry.content;
  const { isAveraged } = value;
  if (override === null) {
    const { systolic, diastolic, diastolicUsed } = value;
    return { systolic, diastolic, diastolicUsed, byHand: false, isAveraged };
  }
  const { systolic, diastolic } = override;
  return { systolic, diastolic, diastolicUsed: diastolic === 0 ? null : diastolic, byHand: true, isAveraged };
}
