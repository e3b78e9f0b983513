import type { EntryFrame, Role } from '@evenfall/record';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import type { EntryStart } from '../store/kept.js';

/** People of the class book have a schema of their own: a pseudonym is enough. */
export const CLASS_PERSON_SCHEMA = 2;

type About = {
  readonly session: string;
  readonly person: string | null;
  readonly agent: string;
  readonly device: string;
  readonly role: Role;
};

/** An entry about a class session or somebody of it, outside every round. */
export function classEntry(
  kind: 'class-session' | 'class-session-ended' | 'kept-by-agreement' | 'person',
  start: EntryStart,
  about: About,
  content: Readonly<Record<string, unknown>>,
): EntryFrame {
  return {
    ...start,
    ...about,
    frame: 1,
    book: 'class',
    kind,
    schema: kind === 'person' ? CLASS_PERSON_SCHEMA : WRITTEN_SCHEMA,
    round: null,
    amends: null,
    content,
  };
}

/** The people of whom something is kept: those for whom both agree. */
export function agreedByBoth(
  agreements: Readonly<Record<string, { readonly teacher: boolean; readonly subject: boolean }>>,
): readonly string[] {
  return Object.entries(agreements).flatMap(([person, { teacher, subject }]) =>
    teacher && subject ? [person] : [],
  );
}
