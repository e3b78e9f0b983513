import type { ClassSessionRecord, PersonRow } from '@evenfall/api';
import { withoutEnded, withoutSession } from '../class/forget.js';
import { ASKED } from '../store/known.js';
import { asking, outdate } from './asking.js';
import { afterAsking, afterAskingClass, askedRecord, type Loading } from './load.js';

const NOTHING_LATEST: PersonRow['latest'] = {
  pulse: null,
  breaths: null,
  pressure: null,
  actNow: 0,
  actNowFirst: null,
  recheck: null,
  diary: null,
  diaries: [],
  awayUntil: null,
  toCountersign: 0,
};

/** The open class sessions. What this device still keeps of any other goes. */
export async function loadClassSessions(app: Loading): Promise<void> {
  const tell = asking(app, 'class sessions');
  const answer = await app.server.call('listClassSessions', {});
  const sessions = answer.ok ? { ...answer, value: answer.value.sessions } : answer;
  const isTold = tell(sessions, (known) => ({
    ...known,
    classSessions: afterAsking(known.classSessions, sessions),
  }));
  // An older list does not name what was begun since.
  if (!isTold || !sessions.ok) return;
  const open = sessions.value.map(({ id }) => id);
  app.store.change((state) => ({ ...state, kept: withoutEnded(state.kept, open) }));
}

/** An open class session with its people and their newest values. One that was ended is forgotten here as well. */
export async function loadClass(app: Loading, session: string): Promise<void> {
  const tell = asking(app, askedClass(session));
  const [found, people] = await Promise.all([
    app.server.call('readClassSession', { params: { session } }),
    app.server.call('listPersons', { params: { book: 'class' } }),
  ]);
  const answer = !found.ok
    ? found
    : people.ok
      ? { ...found, value: { session: found.value.session, rows: rowsOf(found.value, people.value.persons) } }
      : people;
  const unreadable = people.ok ? people.value.unreadable : 0;
  const isTold = tell(answer, (known) => ({
    ...known,
    classes: {
      ...known.classes,
      [session]: afterAskingClass(known.classes[session] ?? ASKED, answer, unreadable),
    },
  }));
  if (isTold && !found.ok && found.status === 404) forgetSession(app, session);
}

/** The people of the class book who are in no open session: of them something was kept by agreement. */
export async function loadClassKept(app: Loading): Promise<void> {
  const { server } = app;
  const tell = asking(app, 'kept of classes');
  const [people, listed] = await Promise.all([
    server.call('listPersons', { params: { book: 'class' } }),
    server.call('listClassSessions', {}),
  ]);
  const sessions = listed.ok ? listed.value.sessions : [];
  const read = await Promise.all(
    sessions.map(({ id }) => server.call('readClassSession', { params: { session: id } })),
  );
  const failed = [listed, ...read].find(({ ok }) => !ok);
  if (!people.ok || (failed !== undefined && !failed.ok)) {
    const answer = people.ok ? (failed as Extract<typeof failed, { ok: false }>) : people;
    tell(answer, (known) => ({ ...known, classKept: afterAsking(known.classKept, answer) }));
    return;
  }
  const present = read.flatMap((one) => (one.ok ? one.value.persons.map(({ id }) => id) : []));
  const value = people.value.persons.filter(({ id }) => !present.includes(id));
  tell(people, (known) => ({ ...known, classKept: { is: 'here', value } }));
}

function rowsOf({ persons }: ClassSessionRecord, rows: readonly PersonRow[]): PersonRow[] {
  return persons.map(
    ({ id, classIdentity }) =>
      rows.find((row) => row.id === id) ?? { id, identity: null, classIdentity, latest: NOTHING_LATEST },
  );
}

/** Nothing of a session stays on this device: neither what it keeps nor what it was told. */
export function forgetSession(app: Pick<Loading, 'store'>, session: string): void {
  outdate(app, (what) => what === askedClass(session) || what.startsWith(askedRecord('class ')));
  app.store.change(({ kept, known, ...state }) => ({
    ...state,
    kept: withoutSession(kept, session),
    known: {
      ...known,
      classes: { ...known.classes, [session]: { is: 'missing', value: null } },
      records: Object.fromEntries(Object.entries(known.records).filter(([key]) => !key.startsWith('class '))),
    },
  }));
}

/** Under what questions after a session count. */
function askedClass(session: string): string {
  return `class ${session}`;
}
