import { z } from 'zod';
import { instant } from '../entry/stamp.js';

/** The longest that a class session may be planned for. Source: decision of this project, a day. */
export const LONGEST_CLASS_SESSION_HOURS = 24;

/**
 * How long after the planned end of a session its data may still be there, for somebody to end it and to keep what
 * was agreed to; then the server ends it and keeps nothing. Source: decision of this project, a day.
 */
export const CLASS_SESSION_GRACE_HOURS = 24;

/** The instant at which a server ends a session that nobody ended (RFC 3339, UTC). */
export function classSessionGoneAt(endsBy: string): string {
  return new Date(Date.parse(endsBy) + CLASS_SESSION_GRACE_HOURS * 3_600_000).toISOString();
}

/**
 * A class session is begun: what it is called and by when it is over, the end of its day as the teacher's device has
 * it. Left open past that, it is shown as overdue. Its entry's id is the session's id.
 */
export const classSessionContent = z
  .object({ title: z.string().trim().min(1).max(200), endsBy: instant })
  .strict();
export type ClassSessionContent = z.infer<typeof classSessionContent>;

/** A class session was ended and something of it was kept; one of which nothing is kept leaves no entry. */
export const classSessionEndedContent = z.object({}).strict();

const agreed = z.boolean().refine((agrees) => agrees, { message: 'agreed-by-both' });

/**
 * The data of a person of the class book stay after the end of the session, because both the teacher and the person
 * agreed to it. It goes with the rest when either takes it back.
 */
export const keptByAgreementContent = z.object({ teacherAgrees: agreed, subjectAgrees: agreed }).strict();
export type KeptByAgreementContent = z.infer<typeof keptByAgreementContent>;
