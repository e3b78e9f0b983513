import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { frame, idOf, kept, runContent, signingContent } from '../testing/work.js';
import { notReliedOn } from './notReliedOn.js';
import { projectChart } from './projectChart.js';

const round = idOf(600);
const LEARNER = idOf(5);
const written = (systolic: number) =>
  runContent({
    method: 'auscultation',
    moments: [
      { what: 'first sound', mmHg: systolic },
      { what: 'last sound', mmHg: 76 },
    ],
  });
const reading = frame('run', written(128), { id: idOf(1), sequence: 1, round, agent: LEARNER });
const signs = [{ sign: 'pressure' as const, entries: [idOf(1)] }];
const content = { ...signingContent(signs, [reading]), status: 'preliminary' };
const signing = { id: idOf(2), sequence: 2, schema: 4, round, agent: LEARNER };
const learnt = [kept(reading, 0), kept(frame('round', content, signing), 0)];

const amending = (of: number) => ({ entry: idOf(of), reason: 'typing-slip' as const, text: null });
const said = (agrees: boolean, minute: number, of = 2, note: string | null = null) =>
  kept(
    frame(
      'countersigned',
      { signing: idOf(of), agrees, ownRound: null, note },
      { id: idOf(100 + minute), round, agent: idOf(9009), role: 'supervisor' },
    ),
    minute,
  );
const putRight = (agent: string, minute: number) =>
  kept(frame('run', written(118), { id: idOf(3), sequence: 3, round, agent, amends: amending(1) }), minute);
const signedAnew = kept(frame('round', content, { ...signing, id: idOf(4), amends: amending(2) }), 9);

const noteIn = (...entries: readonly StoredEntry[]) => {
  const [charted] = projectChart([...learnt, ...entries]).rounds;
  if (charted === undefined) throw new Error('no round');
  return notReliedOn(charted)?.content.note ?? null;
};
const SLEEVE = said(false, 5, 2, 'cuff over a sleeve');

test.each([
  ['nobody said anything', [], null],
  ['a supervisor relied on it', [said(true, 5)], null],
  ['a supervisor did not', [SLEEVE], 'cuff over a sleeve'],
  ['the last one decides', [SLEEVE, said(true, 8)], null],
  ['and the other way round', [said(true, 4), SLEEVE], 'cuff over a sleeve'],
  ['what is in error with its round', [SLEEVE, inError(2)], null],
] as const)('%s', (_what, entries, note) => {
  expect(noteIn(...entries)).toBe(note);
});

// The reason is of the number that was seen: of one that was put right since no supervisor has said anything.
test.each([
  ['the learner put the number right since', [putRight(LEARNER, 9)], null],
  ['the supervisor did', [putRight(idOf(9009), 9)], null],
  ['it was signed anew', [signedAnew], null],
  ['it was put right, and is not relied on either', [putRight(LEARNER, 9), said(false, 12, 2, 'arm')], 'arm'],
  ['it was signed anew, and is not relied on either', [signedAnew, said(false, 12, 4, 'arm')], 'arm'],
  ['it was put right before it was looked at', [putRight(LEARNER, 3)], 'cuff over a sleeve'],
] as const)('a supervisor did not, and %s', (_what, entries, note) => {
  expect(noteIn(SLEEVE, ...entries)).toBe(note);
});

function inError(of: number): StoredEntry {
  return kept(frame('entered-in-error', { note: null }, { id: idOf(50), amends: amending(of) }), 9);
}
