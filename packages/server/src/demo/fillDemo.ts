import {
  chartGaugeLog,
  chartRound,
  diaryAsked,
  type Entry,
  type EntryFrame,
  type InForce,
  identifiersOf,
  inForceUnder,
  NOTHING_CHOSEN,
  PROGRAM,
  type RoundContent,
  readEntry,
  roundFactsOf,
} from '@evenfall/record';
import type { Kysely } from 'kysely';
import { v7 } from 'uuid';
import type { Tables } from '../database/schema.js';
import { addAgent } from '../store/agents.js';
import { addPerson, entriesOf } from '../store/persons.js';
import { type Incoming, type Taken, takeEntries } from '../store/takeEntries.js';
import { awayContent, type InventedAway } from './awaySeries.js';
import { bytesFrom, chanceFrom } from './chance.js';
import { INVENTED_PEOPLE } from './clinic.js';
import { correctedCount, must, pressureContent, rateContent, signContent } from './contents.js';
import { keepDemoProtocol } from './demoProtocol.js';
import { INVENTED_CUFFS, INVENTED_GAUGES } from './equipment.js';
import {
  type Amended,
  INVENTED_AGENTS,
  type InventedAgent,
  type InventedCount,
  type InventedFact,
  type InventedPerson,
  type InventedRound,
} from './invented.js';

const ZONE = 'UTC';
const MS_PER_HOUR = 3_600_000;
const HOURS_PER_MINUTE = 1 / 60;
const HOURS_PER_DAY = 24;

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
  private readonly agents: Record<InventedAgent, string>;
  private readonly gauges: Partial<Record<InventedAgent, string>> = {};
  private inForce: InForce = NOTHING_CHOSEN;
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
      await addAgent(this.db, this.site, { id: this.agents[key as InventedAgent], name });
    }
    await this.chooseProtocol();
    await this.equip();
    for (const invented of INVENTED_PEOPLE) await this.person(invented);
  }

  private async chooseProtocol(): Promise<void> {
    const { protocol, version } = await keepDemoProtocol(this.db, this.site);
    this.inForce = inForceUnder(protocol, version);
    const longAgo = Math.max(...INVENTED_PEOPLE.map(sinceHours)) + 1;
    await this.keep([this.frame('protocol-chosen', 'doctor', longAgo, { version })]);
  }

  /** The gauges with their logs, and the cuffs, all named before anything was read. */
  private async equip(): Promise<void> {
    const logged = INVENTED_GAUGES.flatMap(({ log }) => log.map(({ daysAgo }) => daysAgo * HOURS_PER_DAY));
    const longAgo = Math.max(...INVENTED_PEOPLE.map(sinceHours), ...logged) + 1;
    for (const { named, readBy, log } of INVENTED_GAUGES) {
      const gauge = this.frame('equipment', 'doctor', longAgo, named);
      this.gauges[readBy] = gauge.id;
      const lines = log.map(({ daysAgo, agent, log: done, note = null }) => {
        const content = chartGaugeLog({ gauge: gauge.id, log: done, note }, NOTHING_CHOSEN, PROGRAM);
        return this.frame('gauge-logged', agent, daysAgo * HOURS_PER_DAY, content);
      });
      await this.keep([gauge, ...lines]);
    }
    await this.keep(INVENTED_CUFFS.map((cuffs) => this.frame('equipment', 'doctor', longAgo, cuffs)));
  }

  private async person(invented: InventedPerson): Promise<void> {
    const { identity, facts = [], rounds, away = [], diary } = invented;
    const person = this.id();
    const firstHours = sinceHours(invented);
    const content = { identifiers: identifiersOf(identity) };
    const frame = { ...this.frame('person', 'sister', firstHours, content), person };
    const where = { site: this.site, book: 'care' as const, person };
    kept(await addPerson(this.db, where, identity, incoming(frame), PROGRAM));
    for (const fact of facts) await this.keep([this.fact(person, fact)]);
    for (const round of rounds) await this.keep(await this.round(invented, person, round));
    for (const series of away) await this.keep([await this.series(invented, person, series)]);
    if (diary !== undefined) await this.keep([this.diary(person, diary)]);
  }

  /** Readings from away, brought in on the day after the last one. */
  private async series(
    { identity }: InventedPerson,
    person: string,
    invented: InventedAway,
  ): Promise<EntryFrame> {
    const days = invented.of === 'home' ? invented.days.length : 2;
    const hours = (invented.daysAgo - days) * HOURS_PER_DAY;
    const { entries } = await entriesOf(this.db, { site: this.site, book: 'care', person });
    const facts = roundFactsOf(identity, entries, this.at(hours).slice(0, 10));
    const where = { now: this.now, zone: ZONE, inForce: this.inForce };
    const content = awayContent(invented, facts, where);
    return { ...this.frame('series', 'sister', hours, content), person, round: this.id() };
  }

  private diary(person: string, invented: NonNullable<InventedPerson['diary']>): EntryFrame {
    const { daysAgo, days, language } = invented;
    const from = this.at(daysAgo * HOURS_PER_DAY).slice(0, 10);
    const { readingsInSitting } = this.inForce.homeRules;
    const asked = diaryAsked({ daysAsked: days, readingsInSitting }, from);
    const content = { ...asked, language, note: null };
    return { ...this.frame('diary-handed', 'sister', (daysAgo + 1) * HOURS_PER_DAY, content), person };
  }

  private fact(person: string, { daysAgo, about, text }: InventedFact): EntryFrame {
    const hours = daysAgo * HOURS_PER_DAY;
    const content = { about, from: this.at(hours).slice(0, 10), until: null, text: text ?? null };
    return { ...this.frame('fact', 'sister', hours, content), person };
  }

  private async round(
    { identity }: InventedPerson,
    person: string,
    invented: InventedRound,
  ): Promise<EntryFrame[]> {
    const { hoursAgo, agent, pulse, breaths, pressures = [], signs: others = [] } = invented;
    // A round of pulse and breaths alone was signed before the clinic had chosen a protocol.
    const isWhole = pressures.length > 0;
    const inForce = isWhole ? this.inForce : NOTHING_CHOSEN;
    const { entries } = await entriesOf(this.db, { site: this.site, book: 'care', person });
    const facts = roundFactsOf(identity, entries, this.at(hoursAgo).slice(0, 10));
    const within = { person, round: this.id() };
    const frames: EntryFrame[] = [];
    const signs: RoundContent['signs'] = [];
    const add = (sign: string, kind: EntryFrame['kind'], content: object, minutes: number) => {
      const frame = {
        ...this.frame(kind, agent, hoursAgo - minutes * HOURS_PER_MINUTE, content),
        ...within,
      };
      frames.push(frame);
      const named = signs.find((one) => one.sign === sign);
      if (named !== undefined && 'entries' in named) named.entries.push(frame.id);
      else signs.push({ sign, entries: [frame.id] } as RoundContent['signs'][number]);
    };
    for (const [sign, done] of [
      ['pulse', pulse],
      ['breaths', breaths],
    ] as const) {
      if ('notDone' in done) signs.push({ sign, notDone: { reason: done.notDone, text: null } });
      else {
        const { kind, content } = rateContent(sign, done, facts.ageMonths, inForce, this.chance);
        add(sign, kind, content, 0);
      }
    }
    for (const [index, one] of pressures.entries())
      add('pressure', 'run', pressureContent(one, inForce, this.gauges[agent] ?? null), 1 + index);
    for (const one of others) {
      const content = signContent(one, facts.ageMonths, inForce);
      add(content.evidence.sign.of, 'sign', content, 1 + pressures.length);
    }
    const status = agent === 'learner' ? ('preliminary' as const) : ('final' as const);
    const evidence = {
      exceptions: invented.exceptions === undefined ? null : [...invented.exceptions],
      features: invented.features === undefined ? null : [...invented.features],
      unwell: null,
      facts: { ...facts, arms: facts.arms.map((arm) => ({ ...arm })) },
    };
    const signed = isWhole
      ? chartRound(
          { status, signs, evidence, note: null, isCuffAsked: pressures.length > 0 },
          frames.map(entryOf),
          inForce,
          PROGRAM,
        )
      : { status, signs, protocolVersion: null, note: null };
    const minutesTaken = 2 + pressures.length;
    const signing = {
      ...this.frame('round', agent, hoursAgo - minutesTaken * HOURS_PER_MINUTE, signed),
      ...within,
      schema: isWhole ? 4 : 1,
    };
    const [first] = frames;
    const amendments =
      first === undefined
        ? []
        : (invented.amended ?? []).map((amended) => this.amendment(first, amended, pulse as InventedCount));
    return [
      ...frames,
      signing,
      ...amendments,
      ...this.slipsPutRight(invented, frames),
      ...this.saidOf(invented, signing),
    ];
  }

  private amendment(old: EntryFrame, amended: Amended, done: InventedCount): EntryFrame {
    const reason = 'inError' in amended ? amended.inError : amended.reason;
    const [kind, content] =
      'inError' in amended
        ? (['entered-in-error', { note: null }] as const)
        : (['count', correctedCount({ ...done, n: amended.n }, NOTHING_CHOSEN)] as const);
    return this.amending(old, kind, amended.agent, 1, content, reason);
  }

  /** Pressures that were signed with a slip, put right half an hour later by whoever signed. */
  private slipsPutRight(
    { hoursAgo, agent, pressures = [] }: InventedRound,
    frames: readonly EntryFrame[],
  ): EntryFrame[] {
    const runs = frames.filter(({ kind }) => kind === 'run');
    return pressures.flatMap((one, index) => {
      const old = runs[index];
      if (one.meant === undefined || old === undefined) return [];
      const content = pressureContent({ ...one, run: one.meant }, this.inForce, this.gauges[agent] ?? null);
      return [this.amending(old, 'run', agent, hoursAgo - 0.5, content, 'typing-slip')];
    });
  }

  private amending(
    old: EntryFrame,
    kind: EntryFrame['kind'],
    agent: InventedAgent,
    hoursAgo: number,
    content: object,
    reason: 'typing-slip' | 'wrong-person',
  ): EntryFrame {
    const { person, round, measuredAt } = old;
    const amends = { entry: old.id, reason, text: null };
    return { ...this.frame(kind, agent, hoursAgo, content), person, round, measuredAt, amends };
  }

  /** What was said of a round after it was signed: what closes its acts-now, and who countersigned it. */
  private saidOf({ hoursAgo, closed, countersigned }: InventedRound, signing: EntryFrame): EntryFrame[] {
    const { person, round } = signing;
    const frames: EntryFrame[] = [];
    if (closed !== undefined) {
      const { agent, minutesLater, conditions, toldWhom, saidBack } = closed;
      const hours = hoursAgo - minutesLater * HOURS_PER_MINUTE;
      const toldAt = { at: this.at(hours), zone: ZONE, asEntered: null };
      const content = { conditions, toldWhom, toldAt, saidBack };
      frames.push({ ...this.frame('act-now-closed', agent, hours, content), person, round });
    }
    if (countersigned !== undefined) {
      const { agent, minutesLater, agrees, note = null } = countersigned;
      const content = { signing: signing.id, agrees, ownRound: null, note };
      const hours = hoursAgo - minutesLater * HOURS_PER_MINUTE;
      const frame = this.frame('countersigned', agent, hours, content);
      frames.push({ ...frame, person, round, role: 'supervisor' });
    }
    return frames;
  }

  private async keep(frames: readonly EntryFrame[]): Promise<void> {
    kept(await takeEntries(this.db, this.site, frames.map(incoming), PROGRAM));
  }

  private frame(
    kind: EntryFrame['kind'],
    agent: InventedAgent,
    hoursAgo: number,
    content: object,
  ): EntryFrame {
    this.sequence += 1;
    const at = this.at(hoursAgo);
    return {
      frame: 1,
      id: this.id(),
      book: 'care',
      kind,
      schema: { count: 2, run: 6, series: 3, sign: 2 }[kind as string] ?? 1,
      person: null,
      round: null,
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

  private at(hoursAgo: number): string {
    return new Date(this.now.getTime() - hoursAgo * MS_PER_HOUR).toISOString();
  }

  private id(): string {
    return v7({ random: bytesFrom(this.chance), msecs: this.now.getTime() });
  }
}

/** How long ago a person was entered: before everything that is known of them. */
function sinceHours({ facts = [], rounds, away = [] }: InventedPerson): number {
  const hours = [
    ...rounds.map(({ hoursAgo }) => hoursAgo),
    ...facts.map(({ daysAgo }) => daysAgo * HOURS_PER_DAY),
    ...away.map(({ daysAgo }) => daysAgo * HOURS_PER_DAY),
  ];
  return Math.max(1, ...hours) + 0.1;
}

function incoming(frame: EntryFrame): Incoming {
  return { frame, entry: entryOf(frame) };
}

function entryOf(frame: EntryFrame): Entry {
  return must(readEntry(frame));
}

function kept(taken: Taken): void {
  if (taken.outcome !== 'taken') throw new Error(`the demo was refused: ${JSON.stringify(taken.refusals)}`);
}
