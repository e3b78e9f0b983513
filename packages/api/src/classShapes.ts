import { classIdentity, entryFrame, id } from '@evenfall/record';
import { z } from 'zod';

const instant = z.iso.datetime({ offset: true });
const whole = z.number().int().min(0);

/** A class session that is open: what it is, since when, and how much of it there is. */
export const classSession = z.object({
  id,
  title: z.string(),
  /** The teacher who began it. */
  agent: id,
  begunAt: instant,
  /** When its day is over. */
  endsBy: instant,
  /** Its day is over and nobody has ended it. */
  isOverdue: z.boolean(),
  /** When the server ends it, and keeps nothing of it. */
  goneAt: instant,
  /** People measured in it, and rounds of theirs. */
  persons: whole,
  rounds: whole,
});
export type ClassSession = z.infer<typeof classSession>;

/** A person of a class session, and how many rounds they have in it. */
export const classPerson = z.object({ id, classIdentity, rounds: whole });
export type ClassPerson = z.infer<typeof classPerson>;

/** An open class session with its people, by pseudonym. */
export const classSessionRecord = z.object({ session: classSession, persons: z.array(classPerson) });
export type ClassSessionRecord = z.infer<typeof classSessionRecord>;

/** The entry that begins a class session: kind `class-session`, about nobody, its id the session's. */
export const newClassSession = z.object({ entry: entryFrame });

/** A person new in a class session: a pseudonym, and the entry that says they exist (kind `person`, schema 2). */
export const newClassPerson = z.object({ identity: classIdentity, entry: entryFrame });

/** The most people of whom anything is kept by one ending. */
const MOST_KEPT = 199;

/**
 * How a class session is ended: the entry that says so (kind `class-session-ended`), and for each person whose data
 * stay, the entry that says that both agreed (kind `kept-by-agreement`). Everything else of the session is deleted,
 * and where nobody's data stay these entries too.
 */
export const endedClassSession = z.object({ entry: entryFrame, keep: z.array(entryFrame).max(MOST_KEPT) });

/** A person of a class takes back their data: no reason is asked, and no entry says that it was done. */
export const withdrawal = z.object({ withdraws: z.literal(true) }).strict();

/** How much was deleted, and of how many people something was kept. */
export const classDeleted = z.object({
  deleted: z.object({ persons: whole, rounds: whole, entries: whole }),
  kept: z.object({ persons: whole }),
});
export type ClassDeleted = z.infer<typeof classDeleted>;
