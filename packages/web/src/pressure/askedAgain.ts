import {
  type Flag,
  isPressureSevere,
  pressuresOf,
  type ReadAgainCode,
  type Run,
  readAgain,
  severeLimits,
} from '@evenfall/clinical';
import type { RunPlace, Stamp, StoredEntry } from '@evenfall/record';
import type { RoundDraft } from '../round/draft.js';
import type { Round } from '../round/useRound.js';
import { readBefore } from './readBefore.js';

type Typed = {
  readonly run: Run;
  readonly place: Pick<RunPlace, 'posture'>;
  readonly measuredAt: Stamp;
  /** The reading that it puts right; null for one to come. */
  readonly entry: string | null;
};

/**
 * Why numbers that were typed are looked at once more before they are kept. A severe one is asked about by what it asks of the
 * person, until that was answered of another; a fall on the feet is what is looked for there, so that a reading is held against others on the feet alone.
 *
 * @param entries of the person, as charted
 */
export function askedAgain(
  { run, place, measuredAt, entry }: Typed,
  draft: RoundDraft,
  entries: readonly StoredEntry[],
  under: Pick<Round, 'facts' | 'inForce'> & { readonly program: string },
): readonly Flag<ReadAgainCode>[] {
  const { actNow } = under.inForce.roundRules;
  const { deflation } = under.inForce.runRules;
  const isSevere = (of: Run) => {
    const { systolic, diastolicUsed: diastolic } = pressuresOf(of, deflation);
    return isPressureSevere({ systolic, diastolic }, severeLimits(actNow));
  };
  const { systolic, diastolicUsed: diastolic } = pressuresOf(run, deflation);
  const { values } = draft.pressure;
  const at = values.findIndex((one) => one.entry === entry);
  // What was answered of a severe one before asks nothing of this one: that may be a slip as well.
  const isAnswered =
    draft.features !== null && values.some((one) => one.entry !== entry && isSevere(one.run));
  if (isSevere(run) && !isAnswered) return [];
  const isUpright = place.posture === 'stand';
  const before = (at === -1 ? values : values.slice(0, at)).filter(
    (one) => (one.place.posture === 'stand') === isUpright,
  );
  const until = { ...draft, pressure: { ...draft.pressure, values: before } };
  return readAgain(
    { systolic, diastolic },
    readBefore(until, isUpright ? [] : entries, Date.parse(measuredAt.at), under),
    under.facts.ageMonths,
    { actNow, deflation },
  );
}
