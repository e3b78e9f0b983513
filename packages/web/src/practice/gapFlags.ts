import { type Flag, runResult, UNKNOWN_RUN_CIRCUMSTANCES } from '@evenfall/clinical';
import type { InForce } from '@evenfall/record';
import type { PracticeDraft } from './keptPractice.js';

/** The bedside's warning that sounds may have begun higher than the reading that was written last, by what was felt before; else empty. */
export function gapFlags(
  { round }: Pick<PracticeDraft, 'round'>,
  { runRules }: Pick<InForce, 'runRules'>,
): readonly Flag[] {
  const run = round.pressure.values.at(-1)?.run;
  if (run === undefined) return [];
  return runResult(run, UNKNOWN_RUN_CIRCUMSTANCES, runRules).flags.filter(
    ({ code }) => code === 'possible-gap',
  );
}
