import { z } from 'zod';
import { accountRoles } from '../access/accountRole.js';
import { book } from '../entry/book.js';
import { id } from '../entry/id.js';
import { classIdentity } from '../person/classIdentity.js';
import { identity } from '../person/identity.js';

/** The newest backup format this program writes and reads. Older ones stay readable. 2: identities of the class book. 3: accounts. */
export const BACKUP_VERSION = 3;

const instant = z.iso.datetime({ offset: true });

/**
 * One line of a backup: JSON, one object a line. A header first, then everything kept, then a trailer with
 * the number of lines of each type and the SHA-256 of every byte before it. Identities that were erased are
 * not in it, and restoring does not bring them back; nor is a class session, but for what the teacher and the person
 * agreed to keep of an ended one. An entry stands in the frame and the schema of its time:
 * `readFrame` and `readEntry` read it.
 */
export const backupLine = z.discriminatedUnion('line', [
  z
    .object({
      line: z.literal('header'),
      format: z.literal('evenfall-backup'),
      version: z.number().int().min(1),
      program: z.string(),
      madeAt: instant,
      site: z.object({ id: z.uuid(), name: z.string(), invented: z.boolean() }).strict(),
    })
    .strict(),
  z.object({ line: z.literal('agent'), id, name: z.string(), recordedAt: instant }).strict(),
  z
    .object({
      line: z.literal('account'),
      id,
      agent: id,
      signIn: z.string(),
      roles: accountRoles,
      /** A hash in the PHC string form: who reads a backup reads no secret. PINs, which are soon guessed, are not in it. */
      phrase: z.string(),
      isOwnPhrase: z.boolean(),
      recordedAt: instant,
      closedAt: instant.nullable(),
    })
    .strict(),
  z.object({ line: z.literal('person'), book, id, recordedAt: instant }).strict(),
  z
    .object({
      line: z.literal('identity'),
      book,
      person: id,
      version: z.number().int().min(1),
      identity: z.union([identity, classIdentity]),
      recordedAt: instant,
    })
    .strict(),
  z
    .object({
      line: z.literal('protocol'),
      version: z.string(),
      content: z.record(z.string(), z.unknown()),
      recordedAt: instant,
    })
    .strict(),
  z
    .object({ line: z.literal('entry'), entry: z.record(z.string(), z.unknown()), recordedAt: instant })
    .strict(),
  z
    .object({
      line: z.literal('trailer'),
      lines: z.record(z.string(), z.number().int()),
      sha256: z.string().regex(/^[0-9a-f]{64}$/),
    })
    .strict(),
]);
export type BackupLine = z.infer<typeof backupLine>;
