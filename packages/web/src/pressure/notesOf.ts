import { isAtOnceAfter, type RoundNotes, roundNotes } from '@evenfall/clinical';
import { isVoidValue, type RoundDraft } from '../round/draft.js';
import type { Signing } from '../round/entries.js';
import { roundFactsIn } from '../round/facts.js';
import { readingOf } from '../round/standing.js';
import type { DraftRun } from './pressureDraft.js';
import { previousInflation } from './runCircumstances.js';

/** What is said beside a round under way, from its readings in the order of the work and its pulses. */
export function notesOf(
  draft: RoundDraft,
  under: Pick<Signing, 'facts' | 'inForce' | 'program'>,
): RoundNotes {
  const { pressure, pulse } = draft;
  return roundNotes(
    pressure.values.map((value) => ({
      ...value.place,
      ...readingOf(draft, value, under),
      isNextAtOnce: isNextAtOnce(draft, value, under),
      sequence: value.sequence,
      lyingMinutes: value.lyingMinutes ?? null,
      measuredSeconds: Date.parse(value.measuredAt.at) / 1000,
      isRestKnown: previousInflation(pressure, value) !== null,
    })),
    under.inForce.roundRules.readings.gapSeconds,
    pulse.values.filter((value) => !isVoidValue(value)).map(({ sequence }) => sequence),
    under.facts.ageMonths,
  );
}

/** Whether the reading after one is asked for without a wait. */
export function isNextAtOnce(
  draft: RoundDraft,
  value: DraftRun,
  under: Pick<Signing, 'facts' | 'inForce' | 'program'>,
): boolean {
  const { features, unwell } = draft;
  const known = { features, unwell, facts: roundFactsIn(draft, under.facts) };
  return isAtOnceAfter(readingOf(draft, value, under), known, under.inForce.roundRules.actNow);
}
