import { NO_ROUND_NOTES, UNKNOWN_RUN_CIRCUMSTANCES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import type { EntryFrame, StoredEntry } from '../entry/entry.js';
import { countContent, frame, idOf, kept, runContent, signingContent, USUAL_PLACE } from '../testing/work.js';
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
  notesStanding(charted(entries), GENERAL_RULES, null).arms.map(({ code }) => code);

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

const amends = (reason: 'wrong-limb-or-cuff' | 'typing-slip') =>
  ({ entry: idOf(1), reason, text: null }) as const;

// Bedside handbook 3.2, 3.10, 3.12: two readings make a wait and a pair; two claims of one are neither.
test('two amendments of one reading are not two readings', () => {
  const second = { at: '2026-11-25T09:00:17.000Z', zone: 'UTC', asEntered: null };
  const claim = (id: number, side: 'right' | 'left', cuff: string) => ({
    ...run(id, side, cuff, amends('wrong-limb-or-cuff')),
    measuredAt: second,
  });
  const twice = [run(1, 'right', 'adult'), claim(2, 'right', 'adult'), claim(3, 'right', 'adult')];
  expect(notesStanding(charted(twice), GENERAL_RULES, null)).toEqual(NO_ROUND_NOTES);
  const unlike = [run(1, 'right', 'adult'), claim(2, 'left', 'large-adult'), claim(3, 'right', 'adult')];
  expect(notesStanding(charted(unlike), GENERAL_RULES, null)).toEqual(NO_ROUND_NOTES);
});

test('what one claim asks to be said beside the other readings is said', () => {
  const right = run(4, 'left', 'adult');
  const claims = [
    run(2, 'right', 'large-adult', amends('wrong-limb-or-cuff')),
    run(3, 'right', 'adult', amends('typing-slip')),
  ];
  expect(codes([run(1, 'right', 'adult'), right, ...claims])).toEqual([
    'arms-unlike-cuffs',
    'arms-cuff-unfitting',
  ]);
});

// Bedside handbook 3.14: the pulse of each posture; taken after the pressure it stands in the round as a count.
test('a pulse that was counted after the reading on the feet is one of that posture', () => {
  const placed = (id: number, posture: 'lie' | 'stand', pulse: number | null) => {
    const place = { ...USUAL_PLACE, posture };
    const content = runContent(
      { method: 'auscultation', moments: MOMENTS, pulsePerMinute: pulse },
      { place },
    );
    return kept(frame('run', content, { id: idOf(id), sequence: id, round }), id);
  };
  const count = (id: number) =>
    kept(
      frame('count', countContent({ n: 84, windowSeconds: 60 }), { id: idOf(id), sequence: id, round }),
      id,
    );
  const said = (...entries: readonly StoredEntry[]) =>
    Object.values(notesStanding(charted(entries), GENERAL_RULES, null).ofReading)
      .flat()
      .map(({ code }) => code);
  const runs = [placed(1, 'lie', 76), placed(2, 'stand', null)];
  // Nobody said for how long they had lain.
  expect(said(...runs)).toEqual(['lying-not-known', 'no-pulse-in-posture']);
  expect(said(...runs, count(3))).toEqual(['lying-not-known']);
});

/** A test of lying and standing that ended at one minute, which came without a signing. */
function unsignedTest(birthDate: string | null): string[] {
  const reading = (id: number, posture: 'lie' | 'stand', systolic: number) => {
    const circumstances = { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: posture === 'stand' ? 1 : null };
    const moments = [
      { what: 'first sound', mmHg: systolic },
      { what: 'last sound', mmHg: 58 },
    ];
    const place = { ...USUAL_PLACE, posture };
    const content = runContent({ method: 'auscultation', moments }, { place, circumstances });
    return kept(frame('run', content, { id: idOf(id), sequence: id, round }), id);
  };
  const [came] = projectChart([reading(1, 'lie', 96), reading(2, 'stand', 86)]).rounds;
  if (came === undefined) throw new Error('no round');
  return notesStanding(came, GENERAL_RULES, birthDate).standing.map(({ code }) => code);
}

// Bedside handbook 3.14, 3.17: on the feet an adult is low under 90 and lies down; a child of six is not, at 86.
test('a round that came without a signing goes by the age that the birth date says', () => {
  expect(unsignedTest('2020-03-01')).toEqual(['third-minute-missed']);
  expect(unsignedTest('1970-03-01')).toEqual([]);
  expect(unsignedTest(null)).toEqual([]);
});

/** A reading by its moments. */
function heard(id: number, moments: readonly (readonly [string, number])[], more: Partial<EntryFrame> = {}) {
  const content = runContent({
    method: 'auscultation',
    moments: moments.map(([what, mmHg]) => ({ what, mmHg })) as never,
  });
  return kept(frame('run', content, { id: idOf(id), sequence: id, round, ...more }), id);
}
const low = (id: number, systolic: number, more: Partial<EntryFrame> = {}) =>
  heard(
    id,
    [
      ['first sound', systolic],
      ['last sound', 50],
    ],
    more,
  );

// Bedside handbook 3.15: a very low pressure is repeated at once.
test('a repeat of a very low pressure is said where every claim has it, and not where one leaves it open', () => {
  const repeatOf = (entries: readonly StoredEntry[]) =>
    notesStanding(charted(entries), GENERAL_RULES, null).repeat;
  expect(repeatOf([low(1, 84)])).toBeNull();
  expect(repeatOf([low(1, 84), low(2, 86)])).toEqual({ firstSystolic: 84, againSystolic: 86 });
  const slip = (entry: number) =>
    ({ amends: { entry: idOf(entry), reason: 'typing-slip', text: null } }) as const;
  // Of two claims one says that the second alone was low: that one is repeated by nothing.
  const claims = [low(3, 84, slip(1)), low(4, 124, slip(1))];
  expect(repeatOf([low(1, 84), low(2, 86), ...claims])).toBeNull();
});

// Bedside handbook 3.7: sounds to zero, the muffling is used.
test('sounds that went on to zero are told of beside the category', () => {
  const said = (last: number) =>
    notesStanding(
      charted([
        heard(1, [
          ['first sound', 118],
          ['muffled', 62],
          ['last sound', last],
        ]),
      ]),
      GENERAL_RULES,
      null,
    ).category.map(({ code }) => code);
  expect(said(0)).toEqual(['diastolic-of-muffling']);
  expect(said(54)).toEqual([]);
});
