import { isCuffOf } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import type { RoundDraft } from '../round/draft.js';
import type { DraftRun } from './pressureDraft.js';
import { withPressure } from './pressureSteps.js';

/** Whether the cuff of a place is one of its own scheme, or is not said: another one cannot be kept. */
export function isCuffKnown({ cuff }: Pick<RunPlace, 'cuff'>): boolean {
  return cuff === null || cuff.scheme === null || isCuffOf(cuff.scheme, cuff.id);
}

/** The readings of a round whose cuff is none of its scheme: it is put right before the round is signed. */
export function withWrongCuff({ pressure }: Pick<RoundDraft, 'pressure'>): readonly DraftRun[] {
  return pressure.values.filter(({ place }) => !isCuffKnown(place));
}

/** The cuff of one reading put right, and where the next one would be taken with it. */
export function withCuffOf(draft: RoundDraft, entry: string, cuff: RunPlace['cuff']): RoundDraft {
  const { place } = draft.pressure;
  return withPressure(draft, (pressure) => ({
    ...pressure,
    place: place === null || isCuffKnown(place) ? place : { ...place, cuff },
    values: pressure.values.map((one) =>
      one.entry === entry ? { ...one, place: { ...one.place, cuff } } : one,
    ),
  }));
}
