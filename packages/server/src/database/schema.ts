import type { ColumnType, Generated } from 'kysely';

/** An instant, as the driver gives it. */
type Instant = ColumnType<Date, string | Date, never>;
type Json = ColumnType<unknown, string, never>;

/** The tables. Every key starts with site (and book), so that rows can be spread by site over a cluster. */
export type Tables = {
  site: { id: string; name: string; invented: boolean; recorded_at: Generated<Date> };
  agent: { site: string; id: string; name: string; recorded_at: ColumnType<Date, string | undefined, never> };
  person: {
    site: string;
    book: string;
    id: string;
    recorded_at: ColumnType<Date, string | undefined, never>;
  };
  identity: {
    site: string;
    book: string;
    person: string;
    version: number;
    content: Json;
    recorded_at: ColumnType<Date, string | undefined, never>;
  };
  entry: {
    site: string;
    book: string;
    id: string;
    frame: Generated<number>;
    kind: string;
    schema: number;
    person: string | null;
    round: string | null;
    session: string | null;
    agent: string;
    role: string;
    device: string;
    sequence: ColumnType<string, number | string, never>;
    measured_at: Instant;
    measured_text: string;
    zone: string;
    written_at: Instant;
    written_text: string;
    as_entered: string | null;
    amends: string | null;
    amends_reason: string | null;
    amends_text: string | null;
    content: Json;
    sha256: string;
    recorded_at: ColumnType<Date, string | undefined, never>;
  };
  protocol: {
    site: string;
    version: string;
    content: Json;
    recorded_at: ColumnType<Date, string | undefined, never>;
  };
  account: {
    site: string;
    id: string;
    agent: string;
    sign_in: string;
    roles: ColumnType<unknown, string, string>;
    phrase: string;
    is_own_phrase: boolean;
    pin: string | null;
    recorded_at: ColumnType<Date, string | undefined, never>;
    closed_at: ColumnType<Date | null, string | null | undefined, string | null>;
  };
  sign_in: {
    site: string;
    device: string;
    account: string;
    is_current: boolean;
    wrong_pins: Generated<number>;
    signed_at: ColumnType<Date, Date, Date>;
    seen_at: ColumnType<Date, Date, Date>;
  };
  sign_in_guess: {
    site: string;
    name: string;
    wrong: number;
    since: ColumnType<Date, Date, Date>;
  };
  marking: {
    site: string;
    id: string;
    code: string;
    marker: string | null;
    turn: Generated<number>;
    version: Generated<number>;
    marks: ColumnType<unknown, string | undefined, string>;
    run_at_ms: ColumnType<number | null, never, number | null>;
    begun_at: ColumnType<Date, Date, Date>;
    heard_at: ColumnType<Date | null, Date | null | undefined, Date>;
  };
  marking_guess: {
    site: string;
    asker: string;
    wrong: number;
    since: ColumnType<Date, Date, Date>;
  };
  latest: {
    site: string;
    book: string;
    person: string;
    entries: number;
    projection: number;
    content: ColumnType<unknown, string, string>;
  };
};
