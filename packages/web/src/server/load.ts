import type { Answer, PersonRecord } from '@evenfall/api';
import { keptProtocol } from '@evenfall/clinical';
import { type Book, type InForce, inForceUnder, NOTHING_CHOSEN } from '@evenfall/record';
import type { App } from '../app/context.js';
import { ASKED, type Asked, recordKey } from '../store/known.js';
import { asking } from './asking.js';

/** The book of the bedside. The other two have screens of their own. */
export const BOOK = 'care' as const satisfies Book;

export type Loading = Pick<App, 'store' | 'server'>;

/**
 * What is known after an answer: the new value, or the old one with why there is no new one.
 *
 * @param unreadable how many entries the server left out because it cannot read them
 */
export function afterAsking<T>(was: Asked<T>, answer: Answer<T>, unreadable = 0): Asked<T> {
  if (answer.ok) return { is: 'here', value: answer.value, ...(unreadable > 0 ? { unreadable } : {}) };
  if (answer.offline) return { is: 'unreachable', value: was.value };
  // An id that cannot be one (422) is nobody's, as an unknown one (404) is.
  const isMissing = answer.status === 404 || answer.status === 422;
  return { is: isMissing ? 'missing' : 'failed', value: was.value };
}

/** Of the class book nothing is shown that is not there any more: it was deleted. */
export function afterAskingClass<T>(was: Asked<T>, answer: Answer<T>, unreadable = 0): Asked<T> {
  const asked = afterAsking(was, answer, unreadable);
  return asked.is === 'missing' ? { is: 'missing', value: null } : asked;
}

/** What this server is: told to everybody, signed in or not. */
export async function loadSite(app: Loading) {
  const tell = asking(app, 'site');
  const about = await app.server.call('about', {});
  tell(about, (known) => ({ ...known, about: afterAsking(known.about, about) }));
  return about;
}

/** What this server is, and the rules in force in it. */
export async function loadAbout(app: Loading): Promise<void> {
  const tell = asking(app, 'rules in force');
  const about = await loadSite(app);
  const inForce = about.ok ? await rulesOf(app, about.value.protocolVersion) : about;
  tell(inForce, (known) => ({ ...known, inForce: afterAsking(known.inForce, inForce) }));
}

/** The rules of a protocol version, of whichever schema it is kept in. */
async function rulesOf({ server }: Loading, version: string | null): Promise<Answer<InForce>> {
  if (version === null) return { ok: true, status: 200, value: NOTHING_CHOSEN };
  const answer = await server.call('listProtocols', {});
  if (!answer.ok) return answer;
  const found = answer.value.protocols.find((one) => one.version === version);
  if (found === undefined) return { ok: false, status: 404, offline: false, problem: null };
  const protocol = keptProtocol(found.content);
  // A server that is newer than this page: nothing is counted by rules that cannot be read.
  if (!protocol.ok) return { ok: false, status: 200, offline: false, problem: null };
  return { ok: true, status: 200, value: inForceUnder(protocol.value, version) };
}

/** The rules of every protocol version kept here; those that this page cannot read are not among them. */
export async function loadRules(app: Loading): Promise<void> {
  const tell = asking(app, 'rules');
  const answer = await app.server.call('listProtocols', {});
  const rules = answer.ok ? { ...answer, value: readable(answer.value.protocols) } : answer;
  tell(rules, (known) => ({ ...known, rules: afterAsking(known.rules, rules) }));
}

function readable(
  protocols: readonly { readonly version: string; readonly content: unknown }[],
): Readonly<Record<string, InForce>> {
  return Object.fromEntries(
    protocols.flatMap(({ version, content }) => {
      const protocol = keptProtocol(content);
      return protocol.ok ? [[version, inForceUnder(protocol.value, version)]] : [];
    }),
  );
}

export async function loadAgents(app: Loading): Promise<void> {
  const tell = asking(app, 'agents');
  const answer = await app.server.call('listAgents', {});
  const agents = answer.ok ? { ...answer, value: answer.value.agents } : answer;
  tell(agents, (known) => ({ ...known, agents: afterAsking(known.agents, agents) }));
}

export async function loadPeople(app: Loading): Promise<void> {
  const tell = asking(app, 'people');
  const answer = await app.server.call('listPersons', { params: { book: BOOK } });
  const people = answer.ok ? { ...answer, value: answer.value.persons } : answer;
  const unreadable = answer.ok ? answer.value.unreadable : 0;
  tell(people, (known) => ({ ...known, people: afterAsking(known.people, people, unreadable) }));
}

export async function loadRecord(app: Loading, person: string, book: Book = BOOK): Promise<void> {
  await readRecord(app, person, book, false);
}

/** The same after something of the record was changed: no answer to an earlier question is of what is there now. */
export async function reloadRecord(
  app: Loading,
  person: string,
  book: Book = BOOK,
): Promise<Answer<PersonRecord>> {
  return await readRecord(app, person, book, true);
}

async function readRecord(
  app: Loading,
  person: string,
  book: Book,
  isAfterChange: boolean,
): Promise<Answer<PersonRecord>> {
  const key = recordKey(book, person);
  const tell = asking(app, askedRecord(key), isAfterChange);
  const answer = await app.server.call('readPerson', { params: { book, person } });
  const after = book === 'class' ? afterAskingClass : afterAsking;
  const unreadable = answer.ok ? answer.value.unreadable : 0;
  tell(answer, (known) => ({
    ...known,
    records: { ...known.records, [key]: after(known.records[key] ?? ASKED, answer, unreadable) },
  }));
  return answer;
}

/** Under what questions after a record count. */
export function askedRecord(key: string): string {
  return `record ${key}`;
}
