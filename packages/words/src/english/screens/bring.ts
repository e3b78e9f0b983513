import type { Say } from '../../say.js';

type Text = { text: string };
type Count = { values: number };

/** A file of another system, of a table or of another Evenfall, brought into a person's chart. */
export const bring = {
  title: 'Bring a file in',
  hint: 'A FHIR R4 bundle or a table (CSV) as it is downloaded here. What it would add and what is refused is shown first; nothing is kept before you say so.',
  choose: 'File',
  drop: 'or drop it here',
  most: (f: { megabytes: number }, say: Say) => `At most ${say.short(f.megabytes, 1)} MB.`,
  tooLarge: (f: { megabytes: number; most: number }, say: Say) =>
    `This file has ${say.number(f.megabytes, 1)} MB; at most ${say.short(f.most, 1)} MB are taken at once. Nothing of it was kept. \`evenfall import\` at the machine itself takes larger ones.`,
  unreadable: 'The browser could not read this file. Nothing of it was kept.',
  reading: (f: Text) => `${f.text} is being read`,
  fileIs: (f: Text) => `File: ${f.text}`,
  refusedWhole: 'None of this file can be taken, and nothing was kept',
  wouldAdd: (f: Count, say: Say) => `${say.counted(f.values, ENTRIES)} would be added`,
  wereAdded: (f: Count, say: Say) => `${say.counted(f.values, ENTRIES)} added`,
  nothingNew: 'This file adds nothing',
  already: (f: Count, say: Say) => `${say.counted(f.values, ENTRIES)} of it: here already.`,
  others: (f: Count, say: Say) =>
    `${say.counted(f.values, ENTRIES)} without a number: signings, facts, corrections and the like.`,
  more: (f: Count, say: Say) => `${say.short(f.values)} more`,
  takenBack: 'the source took it back: marked as entered in error',
  changes: 'amends what the source said before',
  refused: (f: Count, say: Say) => `Refused: ${say.short(f.values)}`,
  refusedHint:
    'What is refused is not kept; the file itself is not changed. Put it right there and bring it again.',
  line: 'Row',
  column: 'Column',
  place: 'Place in the file',
  expected: 'Expected',
  came: 'Came',
  nothingCame: 'nothing',
  passedOver: (f: Text) => `Passed over, since they hold no value to take in: ${f.text}.`,
  older: (f: Count, say: Say) =>
    `Left as ${say.form(f.values, { one: 'it is', other: 'they are' })}: ${say.counted(f.values, { one: 'value', other: 'values' })} of an older file. What the same source said later is in the record already.`,
  byOrder: (f: Count, say: Say) =>
    `${say.counted(f.values, { one: 'value changes', other: 'values change' })} what the same source said before, and nothing tells which was said later: of these the file that is brought last stands. Look at them in the chart.`,
  unclear: (f: Count, say: Say) => `Kept beside others under their name: ${say.short(f.values)}`,
  unclearHint:
    'The source calls several measurements by one name, and nobody can tell which of them a correction is of. None is replaced: compare them in the chart, and mark what is wrong there.',
  keep: (f: Count, say: Say) => `Keep ${say.counted(f.values, ENTRIES)}`,
  another: 'Another file',
  kept: 'The file was brought in',
  seeChart: 'See it in the chart',
  notKept: 'Nothing was kept: the file is still here, try again.',
} as const;

const ENTRIES = { one: 'entry', other: 'entries' };
