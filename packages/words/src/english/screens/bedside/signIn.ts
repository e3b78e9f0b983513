import type { Say } from '../../../say.js';
import { ROUNDS } from '../nouns.js';

const WRONG = { one: 'wrong one', other: 'wrong ones' };

/** What the bedside says of it; the rest is in `../signIn.ts` and comes later. */
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
  newPhrase: 'New pass phrase',
  phraseHint: (f: { phraseAtLeast: number }, say: Say) =>
    `${say.short(f.phraseAtLeast)} characters or more: four or five words in a row are easy to remember and hard to guess.`,
  again: 'The same again',
  keepPhrase: 'Keep this pass phrase',
  account: 'My account',
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
} as const;
