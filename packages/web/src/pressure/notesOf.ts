import { type RoundNotes, type RunResult, roundNotes } from '@evenfall/clinical';
import { isVoidValue, type RoundDraft } from '../round/draft.js';
import { runContentOf, type Signing } from '../round/entries.js';
import { readingOf } from '../round/standing.js';
import { isNextAtOnce, previousInflation } from './runCircumstances.js';

/** What is said beside a round under way, from its readings in the order of the work and its pulses. */
export function notesOf(
  draft: RoundDraft,
  under: Pick<Signing, 'facts' | 'inForce' | 'program'>,
): RoundNotes {
  const { pressure, pulse } = draft;
  const { actNow, readings } = under.inForce.roundRules;
  return roundNotes(
    pressure.values.map((value) => ({
      isMuffledUsed: isMuffledUsed(runContentOf(draft, value, under).value),
      ...value.place,
      ...readingOf(draft, value, under),
      isNextAtOnce: isNextAtOnce(draft, value, under),
      sequence: value.sequence,
      lyingMinutes: value.lyingMinutes ?? null,
      measuredSeconds: Date.parse(value.measuredAt.at) / 1000,
      isRestKnown: previousInflation(draft, value) !== null,
    })),
    { gapSeconds: readings.gapSeconds, actNow },
    pulse.values.filter((value) => !isVoidValue(value)).map(({ sequence }) => sequence),
    under.facts.ageMonths,
  );
}

function isMuffledUsed({
  diastolic,
  diastolicUsed,
}: Pick<RunResult, 'diastolic' | 'diastolicUsed'>): boolean {
  return diastolicUsed !== null && diastolicUsed !== diastolic;
}
