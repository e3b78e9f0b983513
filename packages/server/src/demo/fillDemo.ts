import { type Count, parseCount, parseTaps, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import {
  chartCount,
  chartTaps,
  type EntryFrame,
  identifiersOf,
  NOTHING_CHOSEN,
  PROGRAM,
  readEntry,
} from '@evenfall/record';
import type { Kysely } from 'kysely';
import { v7 } from 'uuid';
import type { Tables } from '../database/schema.js';
import { addAgent } from '../store/agents.js';
import { addPerson } from '../store/persons.js';
import { type Incoming, type Taken, takeEntries } from '../store/takeEntries.js';
import { bytesFrom, chanceFrom } from './chance.js';
import {
  type Amended,
  INVENTED_AGENTS,
  INVENTED_PEOPLE,
  type InventedCount,
  type InventedPerson,
  type InventedRound,
  type InventedTaps,
} from './clinic.js';
import { inventTaps } from './inventTaps.js';

const ZONE = 'UTC';
const MS_PER_HOUR = 3_600_000;

/** Fills an empty demo clinic with its invented people, their times counted back from now. A filled one is left as it is. */
export async function fillDemo(db: Kysely<Tables>, site: string, now: Date): Promise<void> {
  const somebody = await db.selectFrom('person').select('id').where('site', '=', site).executeTakeFirst();
  if (somebody === undefined) await new DemoFilling(db, site, now).all();
}

class DemoFilling {
  private readonly db: Kysely<Tables>;
  private readonly site: string;
  private readonly now: Date;
  private readonly chance = chanceFrom(20261125);
  private readonly device: string;
  private readonly agents: Record<keyof typeof INVENTED_AGENTS, string>;
  private sequence = 0;

  constructor(db: Kysely<Tables>, site: string, now: Date) {
    this.db = db;
    this.site = site;
    this.now = now;
    this.device = this.id();
    this.agents = { sister: this.id(), doctor: this.id(), learner: this.id() };
  }

  async all(): Promise<void> {
    for (const [key, name] of Object.entries(INVENTED_AGENTS)) {
      await addAgent(this.db, this.site, { id: this.agents[key as keyof typeof INVENTED_AGENTS], name });
    }
    for (const invented of INVENTED_PEOPLE) await this.person(invented);
  }

  private async person({ identity, rounds }: InventedPerson): Promise<void> {
    const person = this.id();
    const content = { identifiers: identifiersOf(identity) };
    const firstHours = Math.max(1, ...rounds.map(({ hoursAgo }) => hoursAgo)) + 0.1;
    const frame = this.frame('person', person, null, 'sister', firstHours, content);
    const where = { site: this.site, book: 'care' as const, person };
    kept(await addPerson(this.db, where, identity, incoming(frame), PROGRAM));
    for (const round of rounds)
      kept(await takeEntries(this.db, this.site, this.round(person, round).map(incoming), PROGRAM));
  }

  private round(person: string, invented: InventedRound): EntryFrame[] {
    const { hoursAgo, agent, pulse, breaths } = invented;
    const round = this.id();
    const frames: EntryFrame[] = [];
    const signs: Record<string, unknown>[] = [];
    for (const [sign, done] of [
      ['pulse', pulse],
      ['breaths', breaths],
    ] as const) {
      if ('notDone' in done) signs.push({ sign, notDone: { reason: done.notDone, text: null } });
      else {
        const frame = this.value(person, round, agent, hoursAgo, sign, done);
        frames.push(frame);
        signs.push({ sign, entries: [frame.id] });
      }
    }
    const status = agent === 'learner' ? 'preliminary' : 'final';
    frames.push(
      this.frame('round', person, round, agent, hoursAgo - 0.03, {
        status,
        signs,
        protocolVersion: null,
        note: null,
      }),
    );
    const first = frames[0];
    if (first !== undefined)
      frames.push(
        ...(invented.amended ?? []).map((amended) => this.amendment(first, amended, pulse as InventedCount)),
      );
    return frames;
  }

  private value(
    person: string,
    round: string,
    agent: keyof typeof INVENTED_AGENTS,
    hoursAgo: number,
    of: 'pulse' | 'breaths',
    done: InventedCount | InventedTaps,
  ): EntryFrame {
    const circumstances = {
      ...UNKNOWN_CIRCUMSTANCES,
      site: of === 'pulse' ? ('radial' as const) : null,
      rhythmFelt: ('rhythmFelt' in done ? done.rhythmFelt : undefined) ?? null,
      strength: ('strength' in done ? done.strength : undefined) ?? null,
    };
    const added = { circumstances, override: null, note: null };
    if ('rhythm' in done) {
      const taps = must(parseTaps({ of, source: 'touch', seconds: inventTaps(done, this.chance) }));
      return this.frame(
        'taps',
        person,
        round,
        agent,
        hoursAgo,
        chartTaps({ taps, repair: true, ...added }, NOTHING_CHOSEN, PROGRAM),
      );
    }
    return this.frame(
      'count',
      person,
      round,
      agent,
      hoursAgo,
      chartCount({ count: countOf(of, done), ...added }, NOTHING_CHOSEN, PROGRAM),
    );
  }

  private amendment(old: EntryFrame, amended: Amended, done: InventedCount): EntryFrame {
    const reason = 'inError' in amended ? amended.inError : amended.reason;
    const amends = { entry: old.id, reason, text: null };
    const evidence = { circumstances: UNKNOWN_CIRCUMSTANCES, override: null, note: null };
    const [kind, content] =
      'inError' in amended
        ? (['entered-in-error', { note: null }] as const)
        : ([
            'count',
            chartCount(
              { count: countOf('pulse', { ...done, n: amended.n }), ...evidence },
              NOTHING_CHOSEN,
              PROGRAM,
            ),
          ] as const);
    return {
      ...this.frame(kind, old.person ?? '', old.round, amended.agent, 1, content),
      measuredAt: old.measuredAt,
      amends,
    };
  }

  private frame(
    kind: EntryFrame['kind'],
    person: string,
    round: string | null,
    agent: keyof typeof INVENTED_AGENTS,
    hoursAgo: number,
    content: object,
  ): EntryFrame {
    this.sequence += 1;
    const at = new Date(this.now.getTime() - hoursAgo * MS_PER_HOUR).toISOString();
    return {
      frame: 1,
      id: this.id(),
      book: 'care',
      kind,
      schema: 1,
      person,
      round,
      session: null,
      agent: this.agents[agent],
      role: 'observer',
      device: this.device,
      sequence: this.sequence,
      measuredAt: { at, zone: ZONE, asEntered: null },
      writtenAt: at,
      amends: null,
      content: content as Record<string, unknown>,
    };
  }

  private id(): string {
    return v7({ random: bytesFrom(this.chance), msecs: this.now.getTime() });
  }
}

function countOf(of: 'pulse' | 'breaths', { n, windowSeconds, clock, first }: InventedCount): Count {
  return must(parseCount({ of, n, windowSeconds, clock: clock ?? 'any', first: first ?? 1 }));
}

function incoming(frame: EntryFrame): Incoming {
  return { frame, entry: must(readEntry(frame)) };
}

function must<T>(read: { ok: true; value: T } | { ok: false; refusals: readonly unknown[] }): T {
  if (!read.ok) throw new Error(`the demo is wrong: ${JSON.stringify(read.refusals)}`);
  return read.value;
}

function kept(taken: Taken): void {
  if (taken.outcome !== 'taken') throw new Error(`the demo was refused: ${JSON.stringify(taken.refusals)}`);
}
