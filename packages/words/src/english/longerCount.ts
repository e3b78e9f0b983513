import type { Say } from '../say.js';
import { otherRate } from './countDetails.js';
import type { Detail } from './detail.js';

/**
 * Reasons to count for longer in a few words each, for when several of them ask for the same: then what to do is said
 * once. One alone is said by its sentence in `countDetails`. Source: as there.
 */
export const longerCount = {
  reasons: {
    'fast-for-window': (f, say) =>
      `${say.beside(f.value('perMinute'), f.value('fastPerMinute'))} a minute is over ${say.limit(f.value('fastPerMinute'))}, and a fast rate counted for only ${say.short(f.value('windowSeconds'))} s is not accurate enough`,
    'slow-on-short-count': (f, say) =>
      `${say.beside(f.value('perMinute'), f.value('slowPerMinute'))} a minute is under ${say.limit(f.value('slowPerMinute'))}, and was counted for only ${say.short(f.value('windowSeconds'))} s`,
    'fast-on-short-count': (f, say) =>
      `${say.beside(f.value('perMinute'), f.value('fastPerMinute'))} a minute is over ${say.limit(f.value('fastPerMinute'))}, and was counted for only ${say.short(f.value('windowSeconds'))} s`,
    'breaths-full-minute': (f, say) =>
      `breaths counted for ${say.short(f.value('windowSeconds'))} s tend to come out too low`,
    irregular: () => 'felt irregular, so a short count can miss a good deal either way (report it)',
    weak: () => 'felt weak, so beats are easily missed (or try another site)',
    'first-set': () => 'the first set on this person, with which others will be compared',
    young: (f, say) =>
      `under ${say.limit(f.value('youngUnderMonths'))} months (here ${say.beside(f.value('ageMonths'), f.value('youngUnderMonths'), 1)}) rates change from moment to moment`,
    apical: () => 'heard at the apex (each lub-dub is one)',
    'heart-rate-drug': () => 'a drug acts on the heart rate (chart whether it was before or after)',
    disagrees: (f, say) =>
      `${say.rate(f.value('perMinute'))} a minute differs by ${say.beside(f.value('differencePerMinute'), f.value('disagreementPerMinute'))} from the ${otherRate(f, say)}, more than ${say.limit(f.value('disagreementPerMinute'))}`,
  } as const satisfies Record<string, Detail>,
  all: (f: { seconds: number }, say: Say, reasons: readonly string[]) =>
    `Count ${say.short(f.seconds)} s, for each of these: ${reasons.join('; ')}.`,
} as const;
