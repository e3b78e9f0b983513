import type { RoundEvent, RoundSign, RoundValue } from '@evenfall/clinical';
import type { RoundDraft } from './draft.js';
import { SIGNS_IN_ORDER } from './measuring.js';

/** What was taken in a round, in the order of the work. */
export type Taken = { readonly sequence: number; readonly value: RoundValue };

/** What happened in a round so far, in the order of the work, beside what was taken. */
export function eventsWith(draft: RoundDraft, taken: readonly Taken[]): RoundEvent[] {
  const { exceptions, wanted, pressure, measuresNotDone } = draft;
  const notDone = [
    ...SIGNS_IN_ORDER.map((sign) => ({ sign, notDone: draft[sign].notDone })),
    { sign: 'pressure' as const, notDone: pressure.notDone },
    ...Object.entries(measuresNotDone).map(([sign, why]) => ({ sign: sign as RoundSign, notDone: why })),
  ];
  return [
    ...(exceptions === null ? [] : [{ what: 'prepared' as const, exceptions }]),
    ...wanted.map((one) => ({ what: 'wanted' as const, wanted: one })),
    ...(pressure.place === null ? [] : [{ what: 'placed' as const, place: pressure.place }]),
    ...pressure.felt.map(({ place, lostMmHg }) => ({
      what: 'estimated' as const,
      estimate: { ...place, lostMmHg, atSeconds: null },
    })),
    ...taken.map(({ value }) => ({ what: 'taken' as const, value })),
    ...notDone.flatMap(({ sign, notDone: why }) =>
      why === null ? [] : [{ what: 'not-done' as const, sign, reason: why.reason }],
    ),
  ];
}

/** Whether anything was taken in a round, void or not. */
export function isAnythingTaken({ pressure, measures, ...counted }: RoundDraft): boolean {
  const counts = SIGNS_IN_ORDER.flatMap((sign) => counted[sign].values);
  return counts.length + pressure.values.length + measures.length > 0;
}
