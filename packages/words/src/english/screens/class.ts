import type { Say } from '../../say.js';
import { ROUNDS } from './nouns.js';

const PEOPLE = { one: 'person', other: 'people' };

type Text = { text: string };

/** The class book: learners measure each other, under pseudonyms, in no chart. `class` is a word of the language. */
export const classBook = {
  title: 'Class',
  lead: 'Learners measure each other here, under pseudonyms and in no chart. What is measured is deleted when the session is ended.',
  open: 'Open sessions',
  none: 'No session is open.',
  since: (f: Text) => `since ${f.text}`,
  sinceBy: (f: { text: string; who: string }) => `since ${f.text}, begun by ${f.who}`,
  until: (f: Text) => `until ${f.text}`,
  holds: (f: { persons: number; rounds: number }, say: Say) =>
    `${say.counted(f.persons, PEOPLE)}, ${say.counted(f.rounds, ROUNDS)}`,
  overdue: (f: Text) =>
    `Overdue: end it now. If nobody does, everything of it is deleted by itself on ${f.text}.`,
  begin: 'Begin a session',
  name: 'What is it called?',
  nameHint: 'A group or a day. No names of people.',
  endsBy: 'Over by',
  endsByHint: 'A day at most. It is ended by hand, also earlier.',
  beginNow: 'Begin',
  nameMissing: 'Write what the session is called.',
  nameLong: 'At most 200 characters.',
  endsByWrong: 'Choose a time that is still to come, within 24 hours.',
  teacherFirst: 'Choose who leads the class, above under “Who is measuring?”.',
  noSuchSession: 'No such session is open. Of one that was ended, nothing is here any more.',
  people: 'People of this session',
  nobody: 'Nobody is measured in it yet.',
  add: 'Add somebody who lets themselves be measured',
  pseudonymHint: 'Never a name. Take the bird, or anything else to call across a room.',
  age: 'Age in years, if they like',
  ageHint: 'Some limits depend on it. Left blank, it is not known.',
  addNow: 'Add under this pseudonym',
  pseudonymMissing: 'Write a pseudonym.',
  pseudonymLong: 'At most 40 characters.',
  pseudonymTaken: 'Somebody of this session has that pseudonym. Choose another.',
  ageWrong: 'Whole years, 0 to 125, or nothing.',
  toSession: 'The session',
  noRounds: 'No round yet.',
  nothing: 'Nothing is kept of this person.',
  withdraw: 'Take this person out …',
  withdrawSure: (f: Text) =>
    `Delete everything of ${f.text}? It needs no reason, nothing says that it was done, and it cannot be undone.`,
  withdrawNow: 'Delete everything of them',
  end: 'End the session …',
  endTitle: 'End this session',
  endWhat:
    'Everything of it is deleted for good: people, pseudonyms and every number. Not even that there was a session stays. This cannot be undone.',
  endKeep: 'Keep somebody’s data only if both agree, each of their own free will:',
  teacherAgrees: 'the teacher agrees',
  subjectAgrees: 'this person agrees',
  oneAgrees: 'Only one of the two agrees, so it is deleted.',
  unsent: (f: { rounds: number }, say: Say) =>
    `${say.counted(f.rounds, ROUNDS)} signed on this device and not yet kept by the server: deleted as well.`,
  endNow: 'Delete everything and end it',
  endNowKeeping: (f: { persons: number }, say: Say) =>
    `Keep ${say.counted(f.persons, PEOPLE)}, delete the rest and end it`,
  ended: (f: { gone: number; kept: number }, say: Say) =>
    `The session is ended. ${f.gone === 0 ? 'Nobody’s data was there to delete' : `Everything of ${say.counted(f.gone, PEOPLE)} was deleted`}${f.kept === 0 ? '' : `; that of ${say.counted(f.kept, PEOPLE)} was kept by agreement`}.`,
  endedBefore:
    'The session had been ended already. What this device still had of it is deleted; what was kept by agreement stands below.',
  kept: 'Kept by agreement',
  keptSays: 'From sessions that were ended. Whoever it is may take it back at any time.',
  /** Pseudonyms to suggest, none of them a first name that learners have. */
  birds:
    'Heron, Plover, Siskin, Dunlin, Curlew, Avocet, Bittern, Dipper, Fulmar, Gannet, Godwit, Grebe, Lapwing, Nuthatch, Osprey, Petrel, Pipit, Redstart, Shrike, Skylark, Snipe, Turnstone, Wagtail, Wheatear, Whimbrel, Yellowhammer, Bullfinch, Crossbill, Dunnock, Fieldfare, Goshawk, Kingfisher, Moorhen, Oystercatcher, Puffin, Sandpiper, Treecreeper, Waxwing, Kittiwake, Goldcrest',
} as const;
