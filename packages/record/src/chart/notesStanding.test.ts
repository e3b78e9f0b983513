import { expect, test } from 'vitest';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import { frame, idOf, kept, runContent, signingContent, USUAL_PLACE } from '../testing/work.js';
import { GENERAL_RULES } from './generalRules.js';
import { notesStanding } from './notesStanding.js';
import { type ChartRound, projectChart } from './projectChart.js';

const round = idOf(600);
const MOMENTS = [
  { what: 'first sound', mmHg: 148 },
  { what: 'last sound', mmHg: 92 },
];

function contentOn(side: 'right' | 'left', cuff: string) {
  const place = { ...USUAL_PLACE, side, armCm: 30, cuff: { scheme: 'aha-2005' as const, id: cuff } };
  return runContent({ method: 'auscultation', moments: MOMENTS }, { place });
}

const run = (
  id: number,
  side: 'right' | 'left',
  cuff: string,
  amends: EntryFrame['amends'] = null,
): StoredEntry =>
  kept(frame('run', contentOn(side, cuff), { id: idOf(id), sequence: id, round, amends }), id);

function charted(entries: readonly StoredEntry[]): ChartRound {
  const runs = entries.filter(({ amends }) => amends === null);
  const content = signingContent([{ sign: 'pressure', entries: runs.map(({ id }) => id) }], runs);
  const signing = kept(frame('round', content, { id: idOf(90), sequence: 90, round, schema: 2 }), 90);
  return projectChart([...entries, signing]).rounds[0] as ChartRound;
}

const codes = (entries: readonly StoredEntry[]) =>
  notesStanding(charted(entries), GENERAL_RULES).arms.map(({ code }) => code);

// Bedside handbook 3.2: an arm of 30 cm takes the adult cuff.
test('two arms with unlike cuffs are told of beside the round, until an amendment puts the cuff right', () => {
  const runs = [run(1, 'right', 'adult'), run(2, 'left', 'large-adult')];
  expect(codes(runs)).toEqual(['arms-unlike-cuffs', 'arms-cuff-unfitting']);
  const amends = { entry: idOf(2), reason: 'wrong-limb-or-cuff', text: null } as const;
  expect(codes([...runs, run(3, 'left', 'adult', amends)])).toEqual([]);
});

test('what is said beside it is no part of what was signed', () => {
  const { signed } = charted([run(1, 'right', 'adult'), run(2, 'left', 'large-adult')]);
  const content = signed?.original.content as unknown as { value: { arms: { why: { code: string }[] } } };
  expect(content.value.arms.why.map(({ code }) => code)).toEqual(['arms-either']);
});
