import type { Debrief, Ledger } from '@evenfall/practice';

/** One number of a reading beside what was true. `best` null: not to be told; `written` null: none was written. */
export type ResultRow = {
  readonly of: 'systolic' | 'diastolic';
  /** The diastolic was judged where the sounds became muffled. */
  readonly isMuffled: boolean;
  readonly written: number | null;
  readonly truth: number;
  readonly best: number | null;
  readonly error: number | null;
  readonly isAccepted: boolean | null;
};

/** Both numbers of a reading. */
export function resultRows({ entered, reference, ledger, costs, accepted }: Debrief): ResultRow[] {
  return (['systolic', 'diastolic'] as const).map((of) => {
    const judged: Ledger | null = ledger[of];
    const isMuffled =
      of === 'diastolic' && judged !== null && judged.entered === entered.muffled && judged.entered !== entered.diastolic; // biome-ignore format: one thought
    return {
      of,
      isMuffled,
      written: judged?.entered ?? entered[of],
      truth: judged?.longRun ?? reference[of],
      best: isMuffled ? null : (costs.best?.[of] ?? null),
      error: judged?.error ?? null,
      isAccepted: accepted[of],
    };
  });
}
