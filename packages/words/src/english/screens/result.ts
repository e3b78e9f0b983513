import type { Say } from '../../say.js';

type Text = { text: string };

/** What the protocol makes of a round, and what somebody must do now. */
export const result = {
  title: 'What the round comes to',
  average: 'Average',
  furtherNumbers: 'Further numbers',
  by: (f: Text) => `by ${f.text}`,
  byGeneral: (f: Text) => `by the general rule (that of ${f.text}), as no protocol was chosen here`,
  ofReadings: (f: { readings: number }, say: Say) =>
    `from ${say.counted(f.readings, { one: 'reading', other: 'readings' })}`,
  noAverage: 'No average yet',
  category: 'Category',
  fallsIn: (f: { pressure: string; category: string; guideline: string }) =>
    `${f.pressure} falls in “${f.category}” by ${f.guideline}.`,
  fallsInOne: (f: { pressure: string; category: string; guideline: string; highestOf: number }, say: Say) =>
    `${highest(f, say)}, and no average yet: it falls in “${f.category}” by ${f.guideline}.`,
  atLeastIn: (f: { pressure: string; category: string; guideline: string }) =>
    `The ${f.pressure} alone falls in “${f.category}” by ${f.guideline}; without the other number there is no category.`,
  noneOfLow: 'None is named: the categories are of high pressure, and this one is low.',
  highAlone: 'A category speaks of high pressure alone, not of a low one.',
  notPlaced: 'It cannot be put in a category.',
  noProtocol: 'No protocol was chosen here, so no category is shown.',
  earlyWarning: 'Early-warning score',
  points: (f: { points: number }, say: Say) => `${say.short(f.points)}`,
  atLeast: (f: { points: number; parts: readonly string[] }, say: Say) =>
    `not scored whole${f.points === 0 ? '' : `, at least ${say.short(f.points)}`}: ${say.counted(f.parts.length, { one: 'part', other: 'parts' })} missing (${say.allOf(f.parts)})`,
  college: 'Numbers of the Royal College of Physicians, London 2017.',
  notWhole: 'not whole: parts are missing',
  meanPressure: 'Mean pressure',
  pulsePressure: 'Pulse pressure',
  byLast: 'its pressure by the last reading alone and not by the average',
  mmHgOfLast: (f: { mmHg: number }, say: Say) => `${say.number(f.mmHg)} mmHg, of the last reading alone`,
  mmHg: (f: { mmHg: number }, say: Say) => `${say.number(f.mmHg)} mmHg`,
  arms: 'The two arms',
  standing: 'Lying and standing',
  rechecks: 'To look at again',
  dueFrom: (f: { from: string }) => `from ${f.from}`,
  dueFromBy: (f: { from: string; by: string }) => `from ${f.from}, by ${f.by}`,
  unwell: 'The person looks or feels unwell',
  wanted: 'Also taken in this round',
  wantPain: 'Other signs',
  other: 'Other signs',
} as const;

/** A single reading, or which of several it is. */
function highest({ pressure, highestOf }: { pressure: string; highestOf: number }, say: Say): string {
  if (highestOf < 2) return `One reading, ${pressure}`;
  return `${pressure}, the ${highestOf === 2 ? 'higher' : 'highest'} of ${say.short(highestOf)} readings`;
}
