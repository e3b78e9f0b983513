import { createHash } from 'node:crypto';
import { type Parsed, type Refusal, refusal } from '@evenfall/clinical';
import {
  type Bringing,
  byOrderOfFiles,
  type FromRow,
  type ReadBundle,
  type ReadChartCsv,
  type Reported,
  readBundle,
  readChartCsv,
  reportedEntries,
  takenBackEntries,
  uuidOf,
} from '@evenfall/exchange';
import {
  type Book,
  type EntryFrame,
  EQUIPMENT_KINDS,
  id,
  identifiersOf,
  KINDS,
  readEntry,
  readFrame,
  type StoredEntry,
  stamp,
  unkeepableTexts,
} from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { sql } from 'kysely';
import type { World } from '../http/world.js';
import { addAgent, listAgents } from '../store/agents.js';
import { addPerson, keepIdentity, readPerson } from '../store/persons.js';
import { addProtocol } from '../store/protocols.js';
import { type Bringable, type Brought, takeWhatStands } from './takeWhatStands.js';

/** Whose chart a file is for; null for whom the file itself names, which only a file of an Evenfall does. */
export type Whose = {
  readonly book: Book;
  readonly person: string | null;
  /** Who brings it; the program itself if absent. */
  readonly agent?: string;
};

/** What a file added to the record, what of it was there before, and what was refused, each by its place. */
export type FileBrought = Brought & {
  readonly format: 'fhir' | 'csv';
  readonly person: string;
  /** How many of those added are entries of an Evenfall, kept as they were, in the names of those who made them. */
  readonly ofRecord: number;
  /** Resources or rows that hold no value to take in, by type or why: nothing of them is kept. */
  readonly passedOver: Readonly<Record<string, number>>;
  /** Values that are left as they are: their source said later what is kept of them. */
  readonly older: number;
  /** Values that changed what is kept of their source, though nothing tells which was said later: the order of the files decides. */
  readonly byOrder: number;
  /** What was kept beside others of its name: by place, what would tell whether one corrects another, and when those were. */
  readonly unclear: readonly Refusal[];
};

const refusedAll = (...refusals: Refusal[]): Parsed<never> => ({ ok: false, refusals });

/**
 * Brings a file into the record: a bundle of an Evenfall as the same entries, values of others as values from
 * elsewhere. A file that is brought twice adds nothing the second time.
 *
 * Errors: what cannot be read at all; people who are not here and have no identity in the file; test data into a
 * clinic, or the other way round.
 */
export async function bringFile(world: World, text: string, whose: Whose): Promise<Parsed<FileBrought>> {
  if (!text.trimStart().startsWith('{')) return await bringTable(world, text, whose);
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch {
    return refusedAll(refusal('', 'missing', 'fhir-bundle', null));
  }
  const unkeepable = unkeepableTexts(input);
  if (unkeepable.length > 0) return refusedAll(...unkeepable);
  const read = readBundle(input);
  return read.ok ? await bringBundle(world, read.value, whose) : read;
}

/** A table holds no evidence: its values are from elsewhere, but those whose entries are here already. */
async function bringTable(world: World, text: string, whose: Whose): Promise<Parsed<FileBrought>> {
  const unkeepable = unkeepableTexts(text);
  if (unkeepable.length > 0) return refusedAll(...unkeepable);
  const read = readChartCsv(text);
  if (!read.ok) return read;
  const { notices, birthDate, reported, takenBack, refused, passedOver } = read.value;
  const person = (whose.person ?? id.safeParse(read.value.person).data) || null;
  if (person === null) return refusedAll(refusal('--person', 'missing', 'person-id', null));
  if (notices.includes('INVENTED') !== world.site().invented)
    return refusedAll(refusal('notice', 'contradicts', 'same-purpose', notices.join(' ')));
  if (notices.some((notice) => notice !== 'INVENTED') && whose.book === 'care')
    return refusedAll(refusal('notice', 'contradicts', 'no-test-data', notices.join(' ')));
  const where = { site: world.site().id, book: whose.book, person };
  const known = await readPerson(world.db, where);
  const cannot = known === null ? await makePersonOf(world, read.value, where, whose) : [];
  if (cannot.length > 0) return refusedAll(...cannot);
  const before = known ?? (await readPerson(world.db, where));
  if (before === null) return refusedAll(refusal('--person', 'unknown-id', 'person-in-book', person));
  const born = before.identity?.birthDate ?? null;
  if (born !== null && birthDate !== null && born !== birthDate)
    return refusedAll(refusal('--person', 'contradicts', 'same-birth-date', null));
  const isHere = keptIn(before.entries);
  const others = reported.filter((one) => !isHere(one));
  const gone = takenBack.filter((one) => !isHere(one));
  const brought = await bringReported(world, others, where, whose.agent, { takenBack: gone });
  const already = brought.already + reported.length - others.length;
  const more = brought.refused.map(ofLine);
  return {
    ok: true,
    value: {
      format: 'csv',
      person,
      ofRecord: 0,
      added: brought.added + (known === null ? 1 : 0),
      already,
      refused: [...refused, ...more],
      passedOver,
      older: brought.older,
      byOrder: brought.byOrder,
      unclear: brought.unclear.map(ofLine),
    },
  };
}

/**
 * Makes the person whom a table says, as they are known where it was written.
 *
 * @returns why they cannot be made; nothing once they are here
 */
async function makePersonOf(
  world: World,
  { person, identity, isNumberBare, notices, reported, refused }: ReadChartCsv,
  where: { readonly site: string; readonly book: Book; readonly person: string },
  whose: Whose,
): Promise<readonly Refusal[]> {
  const isOfBook = where.book === 'care' || (where.book === 'simulated' && notices.includes('SIMULATED'));
  if (where.person !== person || !isOfBook)
    return [refusal('--person', 'unknown-id', 'person-in-book', where.person)];
  if (identity === null) return [refusal('name', 'missing', 'identity-in-bundle', null)];
  if (isNumberBare) return [refusal('number', 'ambiguous', 'number-as-written', identity.number)];
  // Of a table that cannot be read at all nobody is made.
  if (reported.length === 0 && refused.length > 0) return refused;
  const agent = whose.agent ?? (await importer(world, where.site));
  const at = world.now().toISOString();
  const frame: EntryFrame = {
    frame: 1,
    id: uuidOf(Date.parse(at), hash(`person ${where.site} ${where.book} ${person}`)),
    book: where.book,
    kind: 'person',
    schema: KINDS.person.newest,
    person,
    round: null,
    session: null,
    agent,
    role: 'importer',
    device: uuidOf(0, hash('importing')),
    sequence: 0,
    measuredAt: { at, zone: 'UTC', asEntered: null },
    writtenAt: at,
    amends: null,
    content: { identifiers: identifiersOf(identity) },
  };
  const entry = readEntry(frame);
  if (!entry.ok) return entry.refusals;
  const taken = await addPerson(world.db, where, identity, { frame, entry: entry.value }, world.program);
  return taken.outcome === 'taken' ? [] : taken.refusals;
}

/**
 * Whether a value of a table is in the chart as what it was: by its entry, or as a reading of a series that is here in
 * another state than in the table.
 */
function keptIn(entries: readonly StoredEntry[]): (one: FromRow) => boolean {
  const ids = new Set(entries.map((entry) => entry.id));
  const readings = new Set(
    entries.flatMap((entry) =>
      entry.kind === 'series'
        ? entry.content.readings.flatMap(({ at, systolic, diastolic, pulse }) => [
            readingText(at.at, systolic, diastolic),
            readingText(at.at, pulse, null),
          ])
        : [],
    ),
  );
  return ({ entry, series, content: { value }, measuredAt: { at } }) => {
    if (ids.has(entry ?? '')) return true;
    if (!ids.has(series ?? '')) return false;
    if (value.of === 'pressure') return readings.has(readingText(at, value.systolic, value.diastolic));
    return value.of === 'pulse' && readings.has(readingText(at, value.perMinute, null));
  };
}

function readingText(at: string, first: number | null, second: number | null): string {
  return `${Date.parse(at)} ${first}/${second}`;
}

/** `/lines/5/measuredAt` as the line and what stands below it. */
function ofLine(refused: Refusal): Refusal {
  const found = /^\/lines\/(\d+)(.*)$/.exec(refused.field);
  return found === null ? refused : { ...refused, line: Number(found[1]), field: found[2] ?? '' };
}

async function bringBundle(world: World, bundle: ReadBundle, whose: Whose): Promise<Parsed<FileBrought>> {
  const wrong = wrongPurpose(world, bundle, whose);
  if (wrong !== null) return refusedAll(wrong);
  const refused = [...bundle.refused];
  const own = ownOf(bundle, refused);
  // Gauges are kept beside the charts, whatever book they are used in.
  const ofPerson = own.filter(({ frame }) => !isOfPlace(frame, own));
  const books = new Set(ofPerson.map(({ frame }) => frame.book));
  const persons = new Set(ofPerson.flatMap(({ frame }) => frame.person ?? []));
  const [book = whose.book] = books;
  const person = whose.person ?? [...persons][0] ?? null;
  if (person === null) return refusedAll(refusal('--person', 'missing', 'person-id', null));
  if (books.size > 1 || books.has('class'))
    return refusedAll(refusal('/entry', 'contradicts', 'book-of-care-or-practice', [...books].join()));
  if ([...persons].some((one) => one !== person))
    return refusedAll(refusal('--person', 'contradicts', 'person-of-bundle', person));
  const where = { site: world.site().id, book, person };
  const before = await readPerson(world.db, where);
  if (before === null && own.length === 0)
    return refusedAll(refusal('--person', 'unknown-id', 'person-in-book', person));
  const isErased = own.some(({ frame }) => frame.kind === 'identity-erased');
  if (before === null && bundle.identity === null && !isErased)
    return refusedAll(refusal('/entry', 'missing', 'identity-in-bundle', null));
  const born = before?.identity?.birthDate ?? null;
  if (own.length === 0 && born !== null && bundle.birthDate !== null && born !== bundle.birthDate)
    return refusedAll(refusal('--person', 'contradicts', 'same-birth-date', null));

  const acting = new Set(own.map(({ frame }) => frame.agent));
  for (const one of bundle.agents.filter((who) => acting.has(who.id)))
    await addAgent(world.db, where.site, one);
  for (const { at, content } of bundle.protocols) {
    const kept = await addProtocol(world.db, where.site, content);
    if (!kept.ok) refused.push(...kept.refusals.map((one) => ({ ...one, field: at + one.field })));
  }
  const makePerson = {
    before: async (tx: typeof world.db) => {
      await sql`insert into person (site, book, id) values (${where.site}, ${book}, ${person})
        on conflict do nothing`.execute(tx);
    },
    after: async (tx: Parameters<typeof keepIdentity>[0]) => {
      if (bundle.identity !== null) await keepIdentity(tx, where, bundle.identity);
      return [];
    },
  };
  // Who somebody is changes here by whoever is here: of a person who is known only what was measured is brought.
  const bringable = own.filter(({ frame, at }) => {
    if (before === null || !OF_IDENTITY.includes(frame.kind)) return true;
    const isKept = before.entries.some(({ id }) => id === frame.id);
    if (!isKept && frame.kind !== 'person')
      refused.push(refusal(`${at}/kind`, 'contradicts', 'kind-with-own-route', frame.kind));
    return isKept;
  });
  const brought = await takeWhatStands(
    world.db,
    where.site,
    bringable,
    world.program,
    world.now(),
    before === null ? makePerson : {},
  );
  const { reported, isHistory } = bundle;
  const more = await bringReported(world, reported, where, whose.agent, { isHistory });
  return {
    ok: true,
    value: {
      format: 'fhir',
      person,
      ofRecord: brought.added,
      added: brought.added + more.added,
      already: brought.already + more.already,
      refused: [...refused, ...brought.refused, ...more.refused],
      passedOver: bundle.passedOver,
      older: more.older,
      byOrder: more.byOrder,
      unclear: more.unclear,
    },
  };
}

/** Whether an entry is of the place's equipment: what it is, a line of its log, or a mark of error of one of these. */
function isOfPlace(frame: Bringable['frame'], own: readonly Bringable[]): boolean {
  if (EQUIPMENT_KINDS.includes(frame.kind)) return true;
  if (frame.kind !== 'entered-in-error' || frame.person !== null) return false;
  return own.some((one) => one.frame.id === frame.amends?.entry && EQUIPMENT_KINDS.includes(one.frame.kind));
}

const OF_IDENTITY: readonly string[] = ['person', 'identity-corrected', 'identity-erased'];

/** Invented people and real ones stay apart, as with a backup; practice goes into the books of practice. */
function wrongPurpose(world: World, bundle: ReadBundle, { book }: Whose): Refusal | null {
  const { invented } = world.site();
  const isInvented = bundle.notices.includes('INVENTED');
  if (bundle.own.length > 0)
    return isInvented === invented ? null : refusal('/meta', 'contradicts', 'same-purpose', isInvented);
  if (bundle.isTestData && !invented && book === 'care')
    return refusal('/meta/security', 'contradicts', 'no-test-data', 'HTEST');
  return null;
}

/** Own entries by their frame, in the order in which they were recorded: none stands before what it names. */
function ownOf(bundle: ReadBundle, refused: Refusal[]): Bringable[] {
  const read = bundle.own.flatMap(({ at, frame, recordedAt }): Bringable[] => {
    const parsed = readFrame(frame);
    const isTime = recordedAt !== null && stamp.shape.at.safeParse(recordedAt).success;
    if (parsed.ok && isTime) return [{ at, frame: parsed.value, recordedAt }];
    if (!parsed.ok) refused.push(...parsed.refusals.map((one) => ({ ...one, field: at + one.field })));
    else refused.push(refusal(`${at}/recordedAt`, 'not-a-time', 'datetime', recordedAt));
    return [];
  });
  const order = ({ frame, recordedAt }: Bringable) => [
    Date.parse(recordedAt ?? ''),
    frame.kind === 'person' || frame.kind === 'equipment'
      ? 0
      : frame.kind === 'round'
        ? 2
        : frame.kind === 'countersigned'
          ? 3
          : 1,
    frame.sequence,
  ];
  return read.toSorted((a, b) => {
    const [left, right] = [order(a), order(b)];
    const at = left.findIndex((part, index) => part !== right[index]);
    return at < 0 ? (a.frame.id < b.frame.id ? -1 : 1) : (left[at] as number) - (right[at] as number);
  });
}

/** What brings values from elsewhere where nobody is signed in: named so in the chart. */
const IMPORTER = 'Import (evenfall)';

async function bringReported(
  world: World,
  reported: readonly Reported[],
  where: { readonly site: string; readonly book: Book; readonly person: string },
  by: string | undefined,
  {
    takenBack = [],
    isHistory = false,
  }: { readonly takenBack?: readonly Reported[]; readonly isHistory?: boolean } = {},
): Promise<Brought & Pick<FileBrought, 'older' | 'byOrder' | 'unclear'>> {
  const found = await readPerson(world.db, where);
  if (reported.length + takenBack.length === 0 || found === null)
    return { added: 0, already: 0, refused: [], older: 0, byOrder: 0, unclear: [] };
  const agent = by ?? (await importer(world, where.site));
  const bringing: Bringing = {
    book: where.book,
    person: where.person,
    agent,
    device: uuidOf(0, hash('importing')),
    writtenAt: world.now().toISOString(),
    hash,
    isHistory,
    entries: found.entries,
    changedText: wordsFor('en').sentence('exchanged.changedAtSource'),
    againText: wordsFor('en').sentence('exchanged.saidAgainAtSource'),
  };
  const { placed, already, older, unclear } = reportedEntries(reported, bringing);
  const changedText = wordsFor('en').sentence('exchanged.takenOutAtSource');
  const back = takenBackEntries(takenBack, { ...bringing, changedText });
  const bringable = [...placed, ...back.placed].map((one) => ({ ...one, recordedAt: null }));
  const brought = await takeWhatStands(world.db, where.site, bringable, world.program, world.now());
  const byOrder = byOrderOfFiles(bringable, found.entries);
  return {
    ...brought,
    already: brought.already + already,
    older: older + back.older,
    byOrder,
    unclear: unclear.map(({ at, what: { is, others } }) =>
      refusal(at, 'ambiguous', is === 'correction' ? 'what-it-corrects' : 'not-corrected', others.join(', ')),
    ),
  };
}

/** The program as who brings files, made when it first does. */
async function importer({ db }: World, site: string): Promise<string> {
  const agent = uuidOf(0, hash(`importer ${site}`));
  const known = await listAgents(db, site);
  if (!known.some(({ id }) => id === agent)) await addAgent(db, site, { id: agent, name: IMPORTER });
  return agent;
}

function hash(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
