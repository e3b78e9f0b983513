import { CLASS_IDENTIFIERS, type EntryFrame } from '@evenfall/record';
import { v7 } from 'uuid';
import type { OpenDatabase } from '../database/openDatabase.js';
import type { Came, TestClinic } from './clinic.js';

/** The teacher's acts of a class. */
const TEACHER = { book: 'class', role: 'teacher' } as const;

/** The end of the invented day of the test clinic, whose clock says 2026-11-25 10:00 UTC. */
export const END_OF_DAY = '2026-11-26T00:00:00.000Z';

/** Class sessions of a test clinic: begun, filled and ended as a teacher does. */
export class Classroom {
  private readonly clinic: TestClinic;
  private readonly database: OpenDatabase;

  constructor(clinic: TestClinic, database: OpenDatabase) {
    this.clinic = clinic;
    this.database = database;
  }

  beginning(endsBy = END_OF_DAY): EntryFrame {
    const id = v7();
    const content = { title: 'Tuesday group (invented)', endsBy };
    return this.clinic.frame('class-session', null, content, { ...TEACHER, id, session: id });
  }

  async begin(endsBy = END_OF_DAY): Promise<string> {
    const entry = this.beginning(endsBy);
    const came = await this.clinic.send('POST', '/api/class-sessions', { entry });
    if (came.status !== 201) throw new Error(came.text);
    return entry.id;
  }

  /** The request that adds a person under a pseudonym. */
  adding(session: string, pseudonym: string, person = v7()) {
    const known = { book: 'class', schema: 2, session } as const;
    const entry = this.clinic.frame('person', person, { identifiers: CLASS_IDENTIFIERS }, known);
    return { identity: { pseudonym, ageYears: 24 }, entry };
  }

  add(session: string, pseudonym: string): Promise<Came> {
    return this.clinic.send(
      'POST',
      `/api/class-sessions/${session}/persons`,
      this.adding(session, pseudonym),
    );
  }

  async addSubject(session: string, pseudonym: string): Promise<string> {
    const body = this.adding(session, pseudonym);
    const came = await this.clinic.send('POST', `/api/class-sessions/${session}/persons`, body);
    if (came.status !== 201) throw new Error(came.text);
    return body.entry.person ?? '';
  }

  pulse(person: string, session: string | null, more: Partial<EntryFrame> = {}): EntryFrame {
    return this.clinic.pulse(person, 19, 15, { book: 'class', session, ...more });
  }

  agreed(person: string, session: string, content: object = {}): EntryFrame {
    const both = { teacherAgrees: true, subjectAgrees: true, ...content };
    return this.clinic.frame('kept-by-agreement', person, both, { ...TEACHER, session });
  }

  ending(session: string): EntryFrame {
    return this.clinic.frame('class-session-ended', null, {}, { ...TEACHER, session });
  }

  end(session: string, keep: EntryFrame[] = [], entry = this.ending(session)): Promise<Came> {
    return this.clinic.send('DELETE', `/api/class-sessions/${session}`, { entry, keep });
  }

  withdraw(session: string, person: string): Promise<Came> {
    return this.clinic.send('DELETE', `/api/class-sessions/${session}/persons/${person}`, {
      withdraws: true,
    });
  }

  /** Every table of the database with a row in which one of these texts stands anywhere. */
  async tracesOf(...texts: string[]): Promise<string[]> {
    const { pool } = this.database;
    const tables = await pool.query(
      `select table_name from information_schema.tables where table_schema = 'public' and table_type = 'BASE TABLE'`,
    );
    const found: string[] = [];
    for (const { table_name: table } of tables.rows as { table_name: string }[]) {
      const { rows } = await pool.query(`select row_to_json(kept)::text as row from "${table}" kept`);
      const isFound = (rows as { row: string }[]).some(({ row }) => texts.some((text) => row.includes(text)));
      if (isFound) found.push(table);
    }
    return found.sort();
  }
}
