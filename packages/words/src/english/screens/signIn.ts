import type { Say } from '../../say.js';

const HOURS = { one: 'hour', other: 'hours' };

/** Signing in, locking a device, handing it over, and the accounts of whoever signs in. */
export const signIn = {
  anotherFirst: 'A new first pass phrase',
  phraseKept: 'The new pass phrase is kept; on other devices it is asked for.',
  phraseTitle: 'Change the pass phrase',
  accounts: 'Accounts',
  noAccounts: 'Nobody signs in here: whoever sits at this machine may act.',
  firstAccount:
    'The first account is made on this machine, at a terminal in the folder of the program. It asks for a pass phrase; from then on everybody signs in, and an owner adds the others here.',
  firstAccountOf:
    'With your own name, and with --demo, --data or --account where this record was started with them.',
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
