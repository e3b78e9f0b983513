import { type Refusal, refusal } from '@evenfall/clinical';
import { isPseudonym } from '../content/administrative.js';
import type { KindName } from '../content/kinds.js';
import type { Entry, EntryFrame } from './entry.js';

/**
 * What may be kept of people who measure each other: readings, rounds and what corrects or countersigns them. No
 * facts about a body (a pregnancy, an operation): in a class they are asked by word of mouth and written nowhere.
 */
export const CLASS_KINDS: readonly KindName[] = [
  'class-session',
  'class-session-ended',
  'kept-by-agreement',
  'person',
  'count',
  'taps',
  'run',
  'sign',
  'round',
  'act-now-closed',
  'countersigned',
  'entered-in-error',
];

/** Kinds that only the class book has: acts of whoever leads the class. */
const ONLY_IN_CLASS: readonly KindName[] = ['class-session', 'class-session-ended', 'kept-by-agreement'];

/**
 * What is wrong with a frame by itself that says something of a class: an act of a class in another book, by nobody
 * who teaches, without a session, or a session begun under another id than its own.
 */
export function wrongInClass({ kind, book, role, person, session, id }: EntryFrame): Refusal[] {
  if (!ONLY_IN_CLASS.includes(kind)) return [];
  const refusals: Refusal[] = [];
  if (book !== 'class')
    refusals.push(refusal('/book', 'contradicts', 'choice', book, { choices: ['class'] }));
  if (kind !== 'kept-by-agreement' && person !== null)
    refusals.push(refusal('/person', 'contradicts', 'nobody', person));
  if (session === null) refusals.push(refusal('/session', 'missing', 'class-session', null));
  else if (kind === 'class-session' && session !== id)
    refusals.push(refusal('/session', 'contradicts', 'own-id', session));
  if (role !== 'teacher')
    refusals.push(refusal('/role', 'contradicts', 'choice', role, { choices: ['teacher'] }));
  return refusals;
}

/** A pseudonym is enough in the class book and nowhere else. */
export function wrongIdentifiers({ kind, book, content }: Entry): Refusal[] {
  if (kind !== 'person' || book === 'class' || !isPseudonym(content.identifiers)) return [];
  return [refusal('/content/identifiers', 'contradicts', 'second-identifier', content.identifiers)];
}
