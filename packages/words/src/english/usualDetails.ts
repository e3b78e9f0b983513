import type { Detail } from './detail.js';

/** Everything that a chance of the usual pressure rests on. */
export const usualDetails = {
  'prior-flat': () => 'Nothing is assumed of the person before these numbers.',
  'prior-age-sex': (f, say) =>
    `Before these numbers: the office pressure of US adults of this age and sex, mean ${say.short(f.value('mean'))}, SD ${say.short(f.value('sd'))}, variation within a person taken off. For home and 24 hours no such figures were found.`,
  'office-visits': (f, say) =>
    `Office visits vary by ${say.short(f.value('cvPercent'))} % of the level within a person; the mean given is taken as that of ${say.counted(f.value('visits'), { one: 'visit', other: 'visits' })}.`,
  'home-variation': (f, say) =>
    `Weeks at home vary by ${say.short(f.value('weekCvPercent'))} % of the level within a person: a long-term part that further readings do not lessen, and parts by day and by reading that they do.`,
  'own-variation': () => 'The parts by day and by reading are those of this series itself.',
  'ambulatory-variation': (f, say) =>
    `Recordings over 24 hours vary by ${say.short(f.value('cvPercent'))} % of the level within a person.`,
  'home-offset': (f, say) =>
    `Home minus office is taken as ${say.short(f.value('offset'))} mmHg, itself uncertain by ${say.short(f.value('sd'))}; true near 140/90, less sure elsewhere.`,
  'not-a-diagnosis': () =>
    'A chance of where the usual level lies, under these assumptions; never the chance of a disease.',
} as const satisfies Record<string, Detail>;
