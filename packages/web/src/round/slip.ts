import type { CountOf, RoundSign } from '@evenfall/clinical';
import type { DraftRun } from '../pressure/pressureDraft.js';
import { withoutReading, withPressure } from '../pressure/pressureSteps.js';
import {
  type DraftMeasure,
  type DraftValue,
  type RoundDraft,
  withoutMeasure,
  withoutValue,
  withSign,
} from './draft.js';

/** What was taken out of a round last, so that it can be put back in one step. */
export type Slip =
  | { readonly of: CountOf; readonly value: DraftValue }
  | { readonly of: 'pressure'; readonly value: DraftRun }
  | { readonly of: Exclude<RoundSign, CountOf | 'pressure'>; readonly value: DraftMeasure };

/** The pages of a round on which something can be taken out. */
export type SlipPage = CountOf | 'pressure' | 'signs' | 'review';

/** What can be put back on a page: what was taken out of its own signs, and on the review whatever was. */
export function slipOn({ slip }: Pick<RoundDraft, 'slip'>, page: SlipPage | null): Slip | null {
  if (slip === null || page === null) return null;
  if (page === 'review' || slip.of === page) return slip;
  const isRead = slip.of !== 'pulse' && slip.of !== 'breaths' && slip.of !== 'pressure';
  return page === 'signs' && isRead ? slip : null;
}

/** The page where it was taken out was left: what is put back is put back in sight, or not at all. */
export function withoutSlip(draft: RoundDraft): RoundDraft {
  return draft.slip === null ? draft : { ...draft, slip: null };
}

/** A count or taps taken out. */
export function valueRemoved(draft: RoundDraft, of: CountOf, entry: string): RoundDraft {
  const value = draft[of].values.find((one) => one.entry === entry);
  return value === undefined ? draft : { ...withoutValue(draft, of, entry), slip: { of, value } };
}

/** A reading of the pressure taken out. */
export function readingRemoved(draft: RoundDraft, entry: string): RoundDraft {
  const value = draft.pressure.values.find((one) => one.entry === entry);
  return value === undefined ? draft : { ...withoutReading(draft, entry), slip: { of: 'pressure', value } };
}

/** A sign that was read taken out. */
export function measureRemoved(draft: RoundDraft, entry: string): RoundDraft {
  const value = draft.measures.find((one) => one.entry === entry);
  if (value === undefined) return draft;
  return { ...withoutMeasure(draft, entry), slip: { of: value.sign.of, value } };
}

/** What was taken out last is back where it was, under its own id and number; a reason for having none is gone. */
export function putBack(draft: RoundDraft): RoundDraft {
  const { slip } = draft;
  if (slip === null) return draft;
  const cleared = { ...draft, slip: null };
  switch (slip.of) {
    case 'pulse':
    case 'breaths':
      return withSign(cleared, slip.of, (was) => ({
        ...was,
        values: inOrder([...was.values, slip.value]),
        notDone: null,
      }));
    case 'pressure':
      return withPressure(cleared, (was) => ({
        ...was,
        values: inOrder([...was.values, slip.value]),
        notDone: null,
      }));
    default: {
      const { [slip.of]: _was, ...measuresNotDone } = cleared.measuresNotDone;
      return { ...cleared, measures: inOrder([...cleared.measures, slip.value]), measuresNotDone };
    }
  }
}

function inOrder<Value extends { readonly sequence: number }>(values: readonly Value[]): readonly Value[] {
  return [...values].sort((a, b) => a.sequence - b.sequence);
}
