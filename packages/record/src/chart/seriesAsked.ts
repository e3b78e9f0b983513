import { type HomeAsked, homeAsked } from '@evenfall/clinical';
import type { DiaryHandedContent } from '../content/diary.js';
import type { InForce } from '../content/inForce.js';
import type { SeriesContent } from '../content/series.js';
import { judgedReadings } from '../content/seriesMade.js';

const DAY_MS = 86_400_000;

/** A diary that was handed out, as far as it says what was asked for. */
export type DiaryAsked = Pick<DiaryHandedContent, 'days' | 'readingsInSitting' | 'from'>;

/**
 * What was asked for at home and what came of it: by the diary that came back with it, else by the rule set; null where
 * neither asks for anything, and of a recording.
 */
export function seriesAsked(
  { of, readings, computedBy }: Pick<SeriesContent, 'of' | 'readings' | 'computedBy'>,
  { homeRules }: Pick<InForce, 'homeRules'>,
  diary: DiaryAsked | null,
): HomeAsked | null {
  if (of !== 'home' || (diary === null && computedBy.preset === null)) return null;
  const { readingsInSitting, days, from } =
    diary === null
      ? { ...homeRules, days: homeRules.daysAsked, from: null }
      : { ...diary, from: Date.parse(`${diary.from}T00:00:00Z`) / DAY_MS };
  return homeAsked(judgedReadings(readings), { readingsInSitting, days, from }, homeRules);
}
