import type { Expectation } from './expectation.js';

/** Rules of the class book, whose people are pseudonyms and whose readings go at the end of their session. */
export const classSession = {
  'two-identifiers-or-pseudonym': () => 'two identifiers, or in the class book a pseudonym and nothing else',
  'class-session': () => 'the class session it belongs to',
  'open-session': () => 'a class session that was begun here and is not ended',
  'no-session': () => 'nothing: only the class book has sessions',
  'same-session': () => 'the class session that is named in the address',
  'entry-of-session': () => 'an entry of the same class session',
  'person-of-session': () => 'a person of this class session',
  'person-once': () => 'each person once',
  'own-id': () => 'the id of this entry itself',
  nobody: () => 'nothing: this is about nobody',
  'agreed-by-both': () => 'the agreement of both the teacher and the person',
  'kind-of-class': () => 'a reading or what is said of one: a class keeps nothing else about a person',
  'pseudonym-not-name': () => 'a pseudonym, not the name of somebody who acts here',
  'new-pseudonym': () => 'a pseudonym that nobody else in this session has',
  'end-ahead': (f, say) =>
    `a time that is still to come, at most ${say.short(f.value('hoursAhead'))} h ahead of the server’s clock`,
} as const satisfies Record<string, Expectation>;
