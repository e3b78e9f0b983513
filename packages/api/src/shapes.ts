import { POSTURES } from '@evenfall/clinical';
import { accountRole, agent, book, classIdentity, entryFrame, id, identity } from '@evenfall/record';
import { z } from 'zod';

/** A problem as every answer carries it. Source: docs/conventions.md section 2. */
export const problem = z.object({
  file: z.string().nullable(),
  line: z.number().int().nullable(),
  column: z.number().int().nullable(),
  field: z.string().nullable(),
  code: z.string(),
  expected: z.string().nullable(),
  got: z.string().nullable(),
  message: z.string(),
  /** What `expected` was made of, so that a reader in another language can say it: the rule, its numbers, its choices. */
  rule: z.string(),
  figures: z.record(z.string(), z.number()),
  choices: z.array(z.string()),
});

/** RFC 9457 problem details with the same `problems` as everywhere else. */
export const problemDetails = z.object({
  type: z.string(),
  title: z.string(),
  status: z.number().int(),
  /** The reason, where no value is at fault and the status does not say it all. */
  code: z.string().nullable(),
  detail: z.string().nullable(),
  problems: z.array(problem),
});
export type Problem = z.infer<typeof problem>;
export type ProblemDetails = z.infer<typeof problemDetails>;

/** What this server is: its program, its site, and whether the people in it are invented. */
export const about = z.object({
  program: z.string(),
  site: z.object({ id: z.uuid(), name: z.string(), invented: z.boolean() }),
  now: z.iso.datetime(),
  /** The protocol in force, null for none chosen. */
  protocolVersion: z.string().nullable(),
});
export type About = z.infer<typeof about>;

/** An entry as kept. `content` is read with `readEntry` of the record package. */
export const storedEntry = entryFrame.extend({ recordedAt: z.iso.datetime() });

const numbers = z.object({
  systolic: z.number(),
  muffled: z.number().nullable(),
  diastolic: z.number().nullable(),
});

const latestPressure = numbers
  .extend({
    entry: id,
    others: z.array(numbers).readonly(),
    byHand: z.boolean(),
    measuredAt: z.string(),
    contested: z.boolean(),
    preliminary: z.boolean(),
    /** How the person was placed for it; null where nobody knows. */
    posture: z.enum(POSTURES).nullable(),
    /** What its round comes to, where that is the average of several readings; `shown` as it stands beside the limits. */
    average: z
      .object({
        systolic: z.number(),
        diastolic: z.number(),
        readings: z.number().int(),
        shown: z.object({ systolic: z.string().nullable(), diastolic: z.string().nullable() }),
      })
      .nullable(),
  })
  .nullable();

const latestValue = z
  .object({
    entry: id,
    perMinute: z.number(),
    others: z.array(z.number()).readonly(),
    byHand: z.boolean(),
    measuredAt: z.string(),
    contested: z.boolean(),
    preliminary: z.boolean(),
  })
  .nullable();

/**
 * A row of the list of people. `identity` is null once it was erased, and in the class book, where `classIdentity`
 * says who it is; that one is null in every other book.
 */
export const personRow = z.object({
  id,
  identity: identity.nullable(),
  classIdentity: classIdentity.nullable(),
  latest: z.object({
    pulse: latestValue,
    breaths: latestValue,
    pressure: latestPressure,
    actNow: z.number().int().min(0),
    /** The most urgent condition of these; null of none. */
    actNowFirst: z.string().nullable(),
    recheck: z
      .object({ code: z.string(), fromAt: z.iso.datetime(), byAt: z.iso.datetime().nullable() })
      .nullable(),
    toCountersign: z.number().int().min(0),
    /** The diary that is out and due back first, and from which day (local). */
    diary: z.object({ entry: id, dueOn: z.iso.date() }).nullable(),
    /** Every diary that is out, the one due back first first. */
    diaries: z.array(z.object({ entry: id, dueOn: z.iso.date(), from: z.iso.date() })).readonly(),
    /** The last day (local) of the newest readings from away; null where there are none. */
    awayUntil: z.iso.date().nullable(),
  }),
});
export type PersonRow = z.infer<typeof personRow>;

/** How many entries this program cannot read: they are kept, and left out of the answer. */
const unreadable = z.number().int().min(0);

/** The people of a book. */
export const personList = z.object({ persons: z.array(personRow), unreadable });

/** Who acts here; `isLearning`: by their account a learner, or without one a learner when they last signed. */
export const agentHere = agent.extend({ isLearning: z.boolean() });
export type AgentHere = z.infer<typeof agentHere>;

/** Everything of one person: who, and every entry that can be read. The chart is projected from the entries. */
export const personRecord = z.object({
  id,
  book,
  identity: identity.nullable(),
  classIdentity: classIdentity.nullable(),
  entries: z.array(storedEntry),
  unreadable,
  /** Who made entries; `standing` is what their account says that they are, null for none. */
  agents: z.array(agent.extend({ standing: accountRole.nullable() })),
});
export type PersonRecord = z.infer<typeof personRecord>;

/** A person who is new: who they are, and the entry that says so. */
export const newPerson = z.object({ identity, entry: entryFrame });
/** An identity put right, and the entry that says which parts changed. */
export const correctedIdentity = z.object({ identity, entry: entryFrame });
/** The entry that says an identity was erased, by whom and why. */
export const erasedIdentity = z.object({ entry: entryFrame });

/** Entries taken together: all or none. */
export const newEntries = z.object({ entries: z.array(entryFrame).min(1).max(200) });
export const takenEntries = z.object({
  entries: z.array(z.object({ id, recordedAt: z.iso.datetime(), already: z.boolean() })),
});
export type TakenEntries = z.infer<typeof takenEntries>;

export const protocolRow = z.object({
  version: z.string(),
  content: z.record(z.string(), z.unknown()),
  recordedAt: z.iso.datetime(),
});
export type ProtocolRow = z.infer<typeof protocolRow>;

/** A choice of the place: which version from then on (null for none), when and by whom. */
export const protocolChoice = z.object({
  entry: id,
  version: z.string().nullable(),
  agent: id,
  at: z.string(),
  recordedAt: z.iso.datetime(),
});
