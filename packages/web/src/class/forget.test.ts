import type { EntryFrame } from '@evenfall/record';
import { expect, test } from 'vitest';
import { formIn, IN_CARE, type InBook } from '../app/book.js';
import { withField } from '../app/forms.js';
import { begunRound } from '../round/draft.js';
import { AT, ID } from '../round/testing.js';
import { freshKept, type Kept } from '../store/kept.js';
import { sessionsIn, withoutClassPerson, withoutEnded, withoutSession } from './forget.js';

const inClass = (session: number) => ({ book: 'class' as const, session: ID(session) });
const round = (person: number, id: number, inBook: Parameters<typeof begunRound>[2]) =>
  begunRound(ID(person), { round: ID(id), signing: ID(id + 1), begunAt: AT(0) }, inBook);
const waitingFor = (draft: ReturnType<typeof round>) => ({
  round: draft.round,
  person: draft.person,
  entries: [],
  draft,
  tries: 2,
  refused: null,
});

/** What closes an act-now of a round waits without a draft. */
const closing = (person: number, id: number, inBook: InBook) => {
  const [entry, of, at] = [ID(id), ID(id + 1), AT(0)];
  const frame = {
    frame: 1,
    id: entry,
    person: ID(person),
    round: of,
    agent: ID(2),
    measuredAt: at,
    ...inBook,
  };
  return {
    round: entry,
    person: ID(person),
    entries: [frame as unknown as EntryFrame],
    draft: null,
    tries: 1,
    refused: null,
  };
};

/** A device with a round at the bedside and rounds of two class sessions, 70 and 80, begun and signed. */
function device(): Kept {
  const drafts = [round(1, 10, IN_CARE), round(2, 20, inClass(70)), round(3, 30, inClass(80))];
  const waiting = [round(4, 40, inClass(70)), round(5, 50, IN_CARE), round(6, 60, inClass(80))];
  const kept: Kept = {
    ...freshKept('device'),
    drafts: Object.fromEntries(drafts.map((draft) => [draft.person, draft])),
    waiting: waiting.map(waitingFor),
  };
  return [
    `signs ${ID(10)}`,
    `signs ${ID(20)}`,
    `signs ${ID(30)}`,
    formIn(inClass(70), 'add-subject'),
    formIn(inClass(80), `close ${ID(60)}`),
    formIn(IN_CARE, 'add-person'),
  ].reduce((was, form) => withField(was, form, 'text', 'typed'), kept);
}

test('an ended session leaves nothing on the device: begun, signed and unsent, typed', () => {
  const left = withoutSession(device(), ID(70));
  expect(Object.keys(left.drafts)).toEqual([ID(1), ID(3)]);
  expect(left.waiting.map(({ person }) => person)).toEqual([ID(5), ID(6)]);
  const text = JSON.stringify(left);
  for (const gone of [ID(70), ID(20), ID(2), ID(40), ID(4)]) expect(text).not.toContain(`"${gone}`);
  expect(Object.keys(left.forms)).toEqual([
    `signs ${ID(10)}`,
    `signs ${ID(30)}`,
    `close ${ID(60)} class ${ID(80)}`,
    'add-person',
  ]);
});

test('what the server does not have open is forgotten, and what it has stays; the bedside is never touched', () => {
  expect(sessionsIn(device())).toEqual([ID(70), ID(80)]);
  expect(withoutEnded(device(), [ID(70), ID(80)])).toEqual(device());
  expect(withoutEnded(device(), [ID(80)])).toEqual(withoutSession(device(), ID(70)));
  const none = withoutEnded(device(), []);
  expect(sessionsIn(none)).toEqual([]);
  expect(Object.keys(none.drafts)).toEqual([ID(1)]);
  expect(none.waiting.map(({ person }) => person)).toEqual([ID(5)]);
  expect(Object.keys(none.forms)).toEqual([`signs ${ID(10)}`, 'add-person']);
});

test('what closes an act-now of a class goes with its session and its person; of the charts it stays', () => {
  const closings = [closing(4, 90, inClass(70)), closing(5, 92, IN_CARE), closing(6, 94, inClass(80))];
  const kept = { ...device(), waiting: closings };
  expect(sessionsIn(kept)).toEqual([ID(70), ID(80)]);
  const left = withoutSession(kept, ID(70));
  expect(left.waiting.map(({ round: entry }) => entry)).toEqual([ID(92), ID(94)]);
  expect(withoutClassPerson(kept, ID(6)).waiting.map(({ round: entry }) => entry)).toEqual([ID(90), ID(92)]);
  expect(withoutClassPerson(kept, ID(5)).waiting).toHaveLength(3);
});

test('somebody taken out of a class goes alone', () => {
  const left = withoutClassPerson(device(), ID(2));
  expect(Object.keys(left.drafts)).toEqual([ID(1), ID(3)]);
  expect(left.waiting).toHaveLength(3);
  expect(withoutClassPerson(device(), ID(1))).toEqual(device());
});
