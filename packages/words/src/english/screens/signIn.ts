import type { Say } from '../../say.js';
import { ROUNDS } from './nouns.js';

/** Signing in, locking a device, handing it over, and the accounts of whoever signs in. */
export const signIn = {
  title: 'Sign in',
  goOn: 'Who goes on?',
  name: 'Name to sign in with',
  phrase: 'Pass phrase',
  pin: 'PIN',
  enter: 'Sign in',
  open: 'Open',
  checking: 'Checking …',
  another: 'Somebody else signs in',
  otherName: 'Another name',
  backToPin: 'Back to the names',
  forgotten:
    'Forgotten? An owner of this clinic’s accounts can give a new first pass phrase. Nobody can read the old one.',
  bothMissing: 'Type your name to sign in with and your pass phrase.',
  phraseMissing: 'Type the pass phrase.',
  pinMissing: 'Type the PIN.',
  wrongPhrase: 'Not the name and the pass phrase of one account. Nothing was lost: type them again.',
  wrongPin: (f: { wrongPinsAtMost: number }, say: Say) =>
    `Not the PIN. After ${say.counted(f.wrongPinsAtMost, WRONG)} the pass phrase is asked for.`,
  pinEnded:
    'Too many wrong PINs, or too long ago: sign in with the pass phrase. Nothing that was typed is lost.',
  unreachable:
    'The server cannot be reached just now, so this must wait. Nothing that was typed in a round is lost.',
  lockedAlone:
    'Nobody touched this device for a while, so it locked itself. It opens again as soon as the server can be reached; nothing that was typed or signed is lost.',
  tooOften: (f: { text: string }) => `Too many tries: ${f.text}.`,
  give: (f: { text: string }) => `Give ${f.text}.`,
  notSame: 'This is not the same as above.',
  ownTitle: 'Choose your own pass phrase',
  ownWhy: (f: { name: string }) =>
    `${f.name}: choose a pass phrase that only you know, in place of the first one, which somebody else may know; then the charts open.`,
  firstPhrase: 'The first pass phrase',
  anotherFirst: 'A new first pass phrase',
  newPhrase: 'New pass phrase',
  phraseHint: (f: { phraseAtLeast: number }, say: Say) =>
    `${say.short(f.phraseAtLeast)} characters or more: four or five words in a row are easy to remember and hard to guess.`,
  again: 'The same again',
  keepPhrase: 'Keep this pass phrase',
  phraseKept: 'The new pass phrase is kept; on other devices it is asked for.',
  phraseTitle: 'Change the pass phrase',
  account: 'My account',
  accounts: 'Accounts',
  noAccounts: 'Nobody signs in here: whoever sits at this machine may act.',
  roles: (f: { roles: string }) => `What you may do: ${f.roles}.`,
  pinTitle: 'PIN',
  pinWhy: (f: { wholeHours: number }, say: Say) =>
    `With a PIN a locked device opens again in a moment, and two people can hand one device to each other. It works only on devices on which you gave your pass phrase, for ${say.counted(f.wholeHours, HOURS)}.`,
  pinHas: 'You have a PIN. A new one takes its place.',
  newPin: 'New PIN',
  pinHint: (f: { pinAtLeast: number; pinAtMost: number }, say: Say) =>
    `${say.short(f.pinAtLeast)} to ${say.short(f.pinAtMost)} digits; not a row such as 1234.`,
  keepPin: 'Keep this PIN',
  pinKept: 'The PIN is kept.',
  noPinYet:
    'Without a PIN the pass phrase is asked for each time this device was locked: choose one under “My account”.',
  handOver: 'Hand over or lock',
  signOut: 'Sign out',
  somebody: 'somebody else',
  othersWaiting: (f: { rounds: number; name: string }, say: Say) =>
    `${say.counted(f.rounds, ROUNDS)} signed by ${f.name} on this device, and in no chart until ${f.name} signs in here.`,
  closedWaiting: (f: { rounds: number; name: string }, say: Say) =>
    `${say.counted(f.rounds, ROUNDS)} signed by ${f.name} on this device, and in no chart: the account of ${f.name} is closed. Nothing of this is removed: an owner opens the account again, and ${f.name} signs in here.`,
  closedWaitingHere: (f: { rounds: number }, say: Say) =>
    `${say.counted(f.rounds, ROUNDS)} of a closed account on this device, signed and in no chart. Nothing of this is removed: it waits until an owner opens that account again.`,
  lead: 'Whoever charts here signs in under their own name. An account is never deleted, for the charts name it: it is closed.',
  add: 'Add an account',
  who: 'Name, as the charts say it',
  whoHint: 'Somebody whose name the charts have already is chosen from the list.',
  newName: 'A new name',
  signInName: 'Name to sign in with',
  signInHint: 'Short, without spaces, such as a first name.',
  mayDo: 'What they may do',
  mayOwner: 'Owner: makes and closes accounts, chooses the rules, erases identities',
  mayClinician: 'Clinician: takes and charts signs',
  maySupervisor: 'Supervisor: countersigns, teaches a class, chooses the rules',
  mayLearner: 'Learner: takes signs that wait for a supervisor',
  keep: 'Keep the account',
  kept: (f: { name: string }) =>
    `${f.name} can sign in now. Tell them the first pass phrase by word of mouth; they choose another at once.`,
  nameMissing: 'Give a name.',
  signInMissing: 'Give a short name to sign in with.',
  roleMissing: 'Tick at least one.',
  isYou: 'you',
  closedSince: (f: { day: string }) => `Closed on ${f.day}`,
  notYet: 'Has not chosen a pass phrase of their own yet',
  change: 'Change',
  close: 'Close the account',
  reopen: 'Open it again',
  newFirst: 'Give it',
  signsAs: (f: { signIn: string }) => `signs in as ${f.signIn}`,
  done: 'Changed.',
  cancel: 'Leave it',
} as const;

const WRONG = { one: 'wrong one', other: 'wrong ones' };
const HOURS = { one: 'hour', other: 'hours' };
