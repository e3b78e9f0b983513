import type { Expectation } from './expectation.js';

/** Rules of accounts: who signs in, with what, and what an account may keep. */
export const account = {
  'what-with-account': () => 'what to do with an account',
  'roles-of-account': (_f, say, choices) => `one or more of ${say.allOf(choices)}, with commas between`,
  'account-here': () => 'the name with which somebody signs in here',
  'pass-phrase-line': () => 'a pass phrase, typed or as the first line of standard input',
  'pass-phrase-twice': () => 'the same pass phrase twice',
  'sign-in-name': () => 'letters, digits, dots, hyphens and underscores, without spaces',
  'each-role-once': () => 'each role once',
  'pass-phrase-long': (f, say) =>
    `a pass phrase of ${say.short(f.value('minimum'))} to ${say.short(f.value('maximum'))} characters: a few words in a row do well`,
  'pass-phrase-own': () =>
    'a pass phrase that is not a name, the one before it, a number or a few signs again and again',
  'pin-digits': (f, say) =>
    `a PIN of ${say.short(f.value('minimum'))} to ${say.short(f.value('maximum'))} digits`,
  'pin-no-row': () => 'a PIN that is not one digit again and again, nor a row such as 1234',
  'right-pin': () => 'the PIN of this account',
  'right-pass-phrase': () => 'the name and the pass phrase of one account',
  'pass-phrase-again': () => 'a sign-in with the pass phrase: the PIN opens nothing here any more',
  'try-later': (f, say) => `another try in ${say.counted(f.value('minutes'), MINUTES)}: there were too many`,
  'an-owner-first': () => 'an owner first: somebody must be able to make and close accounts',
  'an-owner-left': () => 'another owner first: somebody must be able to make and close accounts',
  'new-sign-in-name': () => 'a name to sign in with that nobody else has',
  'agent-without-account': () => 'somebody who has no account yet',
  'agent-signed-in': () => 'whoever is signed in: nobody charts in the name of somebody else',
  'kind-of-role': (_f, say, choices) => `an account with the role ${say.anyOf(choices)}`,
  'role-of-account': (_f, say, choices) => `an account with the role ${say.anyOf(choices)}`,
  'own-entry-of-learner': () =>
    'an entry of one’s own: a learner corrects nothing that somebody else charted',
  'preliminary-of-learner': () => 'preliminary: a learner’s round of a patient waits for a supervisor',
} as const satisfies Record<string, Expectation>;

const MINUTES = { one: 'minute', other: 'minutes' };
