import {
  parseCount,
  parseRun,
  parseSign,
  parseTaps,
  UNKNOWN_CIRCUMSTANCES,
  UNKNOWN_RUN_CIRCUMSTANCES,
  UNKNOWN_SIGN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import {
  CLASS_IDENTIFIERS,
  chartCount,
  chartRun,
  chartSign,
  chartTaps,
  type EntryFrame,
  type Identity,
  identifiersOf,
  NOTHING_CHOSEN,
  PROGRAM,
} from '@evenfall/record';
import { Kysely } from 'kysely';
import { v7 } from 'uuid';
import { controlRoutes } from '../control/controlRoutes.js';
import { migrate } from '../database/migrations/index.js';
import type { OpenDatabase } from '../database/openDatabase.js';
import type { Tables } from '../database/schema.js';
import type { AccountLine } from '../http/accountLog.js';
import { createApi } from '../http/app.js';
import type { ClassEndedLine, LogLine, RequestLine } from '../http/log.js';
import type { World } from '../http/world.js';
import { openSite, readSite } from '../store/site.js';

/** What a request came back with; `body` is read as JSON where it is JSON. */
export type Came = {
  readonly status: number;
  readonly headers: Headers;
  // biome-ignore lint/suspicious/noExplicitAny: a test looks into answers of every shape
  readonly body: any;
  readonly text: string;
  readonly bytes: Uint8Array;
};

/** Invented, like everybody in the tests. */
export const HESTER: Identity = {
  name: 'Hester Quillfeather (invented)',
  birthDate: '1961-02-28',
  number: 'INV-77',
};

/**
 * A clinic for tests: the real API over a real database, without a socket. Verbs are those of its users; each
 * makes a whole entry that a test may bend before it sends it.
 */
export class TestClinic {
  readonly db: Kysely<Tables>;
  readonly log: RequestLine[] = [];
  /** What the log said of signing in and of accounts. */
  readonly accountLines: AccountLine[] = [];
  readonly classesEnded: ClassEndedLine[] = [];
  readonly faults: unknown[] = [];
  agent = v7();
  private readonly app: ReturnType<typeof createApi>;
  /** What a browser would send along: the cookie of whoever signed in last. */
  cookie: string | null = null;
  /** The clinic's clock; a test may move it. */
  clock = new Date('2026-11-25T10:00:00Z');
  private readonly device = v7();
  private sequence = 0;
  private classSession: string | null = null;

  /** The same clinic as the folder's own account sees it, through the control socket. */
  private readonly socket: ReturnType<typeof createApi>;

  private constructor(db: Kysely<Tables>, world: Omit<World, 'log' | 'fault'>) {
    this.db = db;
    const heard = {
      log: (line: LogLine) => {
        if (!('event' in line)) this.log.push(line);
        else if (line.event === 'class-session-ended') this.classesEnded.push(line);
        else this.accountLines.push(line);
      },
      fault: (error: unknown) => this.faults.push(error),
    };
    this.app = createApi({ ...world, ...heard });
    controlRoutes(this.app, { ...world, ...heard });
    this.socket = createApi({ ...world, ...heard }, true);
  }

  /** Makes an account on the command line's way in, and answers what came. */
  async addAccount(
    signIn: string,
    roles: readonly string[],
    agent = { id: v7(), name: `${signIn} (invented)` },
  ) {
    const body = { id: v7(), agent, signIn, roles, passPhrase: `${signIn} walks by the quiet river` };
    const response = await this.socket.request('http://localhost/api/accounts', {
      method: 'POST',
      headers: { host: 'localhost', 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    return { status: response.status, body: await response.json(), sent: body };
  }

  /** Opens a clinic on a database: migrated, with a site and one agent. */
  static async open(database: OpenDatabase, options: { agent?: boolean } = {}): Promise<TestClinic> {
    const db = new Kysely<Tables>({ dialect: database.dialect });
    await migrate(db);
    let site = await openSite(db, { id: v7(), name: 'Test clinic (invented)', invented: false });
    const clinic = new TestClinic(db, {
      db,
      site: () => site,
      siteChanged: async () => {
        site = (await readSite(db)) ?? site;
      },
      program: PROGRAM,
      now: () => clinic.clock,
      ticks: () => 0,
    });
    if (options.agent !== false)
      await clinic.send('POST', '/api/agents', { id: clinic.agent, name: 'Wren (invented)' });
    return clinic;
  }

  async send(
    method: string,
    path: string,
    body?: unknown,
    headers: Record<string, string> = {},
  ): Promise<Came> {
    const response = await this.app.request(`http://localhost${path}`, {
      method,
      headers: {
        host: 'localhost',
        ...(this.cookie === null ? {} : { cookie: this.cookie }),
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...headers,
      },
      ...(body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) }),
    });
    const [given] = response.headers.getSetCookie();
    if (given !== undefined) this.cookie = given.split(';')[0] ?? null;
    const bytes = new Uint8Array(await response.arrayBuffer());
    const text = new TextDecoder().decode(bytes);
    const isJson =
      /json/.test(response.headers.get('content-type') ?? '') &&
      !/ndjson/.test(response.headers.get('content-type') ?? '');
    return {
      status: response.status,
      headers: response.headers,
      text,
      bytes,
      body: isJson ? JSON.parse(text) : null,
    };
  }

  /** The class session of this clinic, begun when it is first asked for. */
  async beginClass(): Promise<string> {
    if (this.classSession !== null) return this.classSession;
    const id = v7();
    const content = { title: 'Tuesday group (invented)', endsBy: '2026-11-26T00:00:00Z' };
    const entry = this.frame('class-session', null, content, {
      book: 'class',
      role: 'teacher',
      id,
      session: id,
    });
    const came = await this.send('POST', '/api/class-sessions', { entry });
    if (came.status !== 201) throw new Error(`class refused: ${came.text}`);
    this.classSession = id;
    return id;
  }

  /** Adds a person of a class under a pseudonym and answers the id. */
  async addSubject(session: string, pseudonym: string): Promise<string> {
    const person = v7();
    const known = { book: 'class', schema: 2, session } as const;
    const entry = this.frame('person', person, { identifiers: CLASS_IDENTIFIERS }, known);
    const identity = { pseudonym, ageYears: null };
    const came = await this.send('POST', `/api/class-sessions/${session}/persons`, { identity, entry });
    if (came.status !== 201) throw new Error(`person refused: ${came.text}`);
    return person;
  }

  /** Adds a person and answers the id; fails the test where the person is refused. */
  async addPerson(identity: Identity = HESTER, book: EntryFrame['book'] = 'care'): Promise<string> {
    if (book === 'class') return await this.addSubject(await this.beginClass(), identity.name);
    const frame = this.personFrame(identity, book);
    const came = await this.send('POST', `/api/books/${book}/persons`, { identity, entry: frame });
    if (came.status !== 201) throw new Error(`person refused: ${came.text}`);
    return frame.person ?? '';
  }

  personFrame(identity: Identity, book: EntryFrame['book'] = 'care'): EntryFrame {
    return this.frame('person', v7(), { identifiers: identifiersOf(identity) }, { book });
  }

  /** A counted pulse: n beats in so many seconds. */
  pulse(
    person: string,
    n: number,
    windowSeconds: number,
    more: Partial<EntryFrame> = {},
    inForce = NOTHING_CHOSEN,
  ): EntryFrame {
    const read = parseCount({ n, windowSeconds });
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    const evidence = { count: read.value, circumstances: UNKNOWN_CIRCUMSTANCES, override: null, note: null };
    return this.frame('count', person, chartCount(evidence, inForce, PROGRAM), more);
  }

  /** A tapped pulse. */
  taps(person: string, seconds: readonly number[], more: Partial<EntryFrame> = {}): EntryFrame {
    const read = parseTaps({ of: 'pulse', source: 'touch', seconds });
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    const evidence = {
      taps: read.value,
      repair: true,
      circumstances: UNKNOWN_CIRCUMSTANCES,
      override: null,
      note: null,
    };
    return this.frame('taps', person, chartTaps(evidence, NOTHING_CHOSEN, PROGRAM), more);
  }

  /** A pressure taken sitting at the right upper arm. */
  pressure(
    person: string,
    run: Record<string, unknown>,
    more: Partial<EntryFrame> = {},
    inForce = NOTHING_CHOSEN,
    gauge: string | null = null,
  ): EntryFrame {
    const read = parseRun(run);
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    const evidence = {
      run: read.value,
      place: {
        site: 'upper-arm',
        side: 'right',
        posture: 'sit',
        cuff: null,
        armCm: null,
        override: null,
      },
      circumstances: { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: null },
      gauge,
      override: null,
      note: null,
    } as const;
    return this.frame('run', person, chartRun(evidence, inForce, PROGRAM), more);
  }

  /** A sign that is neither counted nor taken with a cuff. */
  otherSign(person: string, sign: Record<string, unknown>, more: Partial<EntryFrame> = {}): EntryFrame {
    const read = parseSign(sign);
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    const evidence = { sign: read.value, circumstances: UNKNOWN_SIGN_CIRCUMSTANCES, note: null };
    return this.frame('sign', person, chartSign(evidence, NOTHING_CHOSEN, PROGRAM), more);
  }

  /** Signs entries together. */
  sign(...entries: EntryFrame[]): Promise<Came> {
    return this.send('POST', '/api/entries', { entries });
  }

  /** What an amendment of an entry carries. */
  amending(
    old: EntryFrame,
    reason: NonNullable<EntryFrame['amends']>['reason'] = 'typing-slip',
  ): Partial<EntryFrame> {
    return { amends: { entry: old.id, reason, text: null }, round: old.round, book: old.book };
  }

  async chart(person: string, book = 'care'): Promise<Came> {
    return await this.send('GET', `/api/books/${book}/persons/${person}`);
  }

  frame(
    kind: EntryFrame['kind'],
    person: string | null,
    content: object,
    more: Partial<EntryFrame> = {},
  ): EntryFrame {
    this.sequence += 1;
    return {
      frame: 1,
      id: v7(),
      book: 'care',
      kind,
      schema: { count: 2, run: 6, exercise: 4, series: 3, sign: 2, reported: 2 }[kind as string] ?? 1,
      person,
      round: ['count', 'taps', 'run', 'sign', 'round'].includes(kind) ? v7() : null,
      session: more.book === 'class' ? this.classSession : null,
      agent: this.agent,
      role: 'observer',
      device: this.device,
      sequence: this.sequence,
      measuredAt: { at: '2026-11-25T09:30:00+00:00', zone: 'Europe/Lisbon', asEntered: null },
      writtenAt: '2026-11-25T09:32:00+00:00',
      amends: null,
      content: content as Record<string, unknown>,
      ...more,
    };
  }
}
