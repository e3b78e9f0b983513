import { type RoundNotes, roundNotes } from '@evenfall/clinical';
import type { InForce } from '@evenfall/record';
import type { RoundDraft } from '../round/draft.js';
import { previousInflation } from './runCircumstances.js';

/** What is said beside a round under way, from its readings in the order of the work. */
export function notesOf({ pressure }: Pick<RoundDraft, 'pressure'>, { roundRules }: InForce): RoundNotes {
  return roundNotes(
    pressure.values.map((value) => ({
      ...value.place,
      id: value.entry,
      method: value.run.method,
      pulsePerMinute: value.run.pulsePerMinute,
      uprightMinutes: value.uprightMinutes,
      isUnwellUpright: value.unwellUpright ?? null,
      lyingMinutes: value.lyingMinutes ?? null,
      measuredSeconds: Date.parse(value.measuredAt.at) / 1000,
      isRestKnown: previousInflation(pressure, value) !== null,
    })),
    roundRules.readings.gapSeconds,
  );
}
