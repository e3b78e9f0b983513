import { numberFrom, SCORE_FIGURES } from '@evenfall/clinical';
import type { RunContent, StoredEntry } from '@evenfall/record';
import type { Say } from '@evenfall/words';
import { asWritten } from '../app/withPoint.js';

/** How somebody felt on their feet at a reading standing, and how many minutes they had stood, as typed with a point. */
export type UprightFields = { readonly unwellUpright: string; readonly uprightMinutes: string };

/** What can be said of how they felt: nothing of it, unwell, or that nobody asked. */
export const FELT_UPRIGHT = ['none', 'unwell', 'unasked'] as const;

export type UprightKnown = Pick<RunContent['evidence']['circumstances'], 'unwellUpright' | 'uprightMinutes'>;

/** Whether it can be put right how somebody was on their feet: a pressure taken standing. */
export function isTakenStanding(entry: StoredEntry): entry is StoredEntry & { readonly kind: 'run' } {
  return entry.kind === 'run' && entry.content.evidence.place.posture === 'stand';
}

/** What the fields say before anybody touches them: as it is charted, the minutes as its language types them. */
export function uprightFieldsOf(entry: StoredEntry, say: Say): UprightFields {
  if (!isTakenStanding(entry)) return { unwellUpright: '', uprightMinutes: '' };
  const { unwellUpright, uprightMinutes } = entry.content.evidence.circumstances;
  return {
    unwellUpright: unwellUpright === null ? 'unasked' : unwellUpright ? 'unwell' : 'none',
    uprightMinutes: uprightMinutes === null ? '' : asWritten(uprightMinutes, say),
  };
}

/**
 * How it really was on their feet, minutes left blank being not known.
 *
 * Errors: minutes that are no such time, or nothing that is another than it stands.
 */
export function readUpright(
  entry: StoredEntry & { readonly kind: 'run' },
  fields: UprightFields,
): UprightKnown | 'uprightMissing' | 'uprightSame' {
  const before = entry.content.evidence.circumstances;
  const typed = fields.uprightMinutes.trim();
  const uprightMinutes = typed === '' ? null : numberFrom(typed);
  const isTime =
    uprightMinutes !== null &&
    uprightMinutes >= 0 &&
    uprightMinutes <= SCORE_FIGURES.longestStandingMinutes.value;
  if (typed !== '' && !isTime) return 'uprightMissing';
  const felt = FELT_UPRIGHT.find((one) => one === fields.unwellUpright) ?? 'unasked';
  const unwellUpright = felt === 'unasked' ? null : felt === 'unwell';
  const isSame = unwellUpright === before.unwellUpright && uprightMinutes === before.uprightMinutes;
  return isSame ? 'uprightSame' : { unwellUpright, uprightMinutes };
}
