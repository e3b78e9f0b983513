import type { DecidedReading, SeriesDecision } from '@evenfall/record';

/** What turns a reading over: out of the mean, into it against the rule, or back to what the rule says. */
export function decisionFor(dropped: string | null, byHand: DecidedReading | undefined): SeriesDecision {
  if (dropped === null) return byHand?.decision === 'in' ? 'by-rule' : 'out';
  return dropped === 'rejected' ? 'by-rule' : 'in';
}
