import {
  chartSeries,
  compareSeries,
  GENERAL_RULES,
  projectChart,
  type Standing,
  valueStanding,
} from '@evenfall/record';
import { Kysely } from 'kysely';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { migrate } from '../database/migrations/index.js';
import type { Tables } from '../database/schema.js';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { checkRecord } from '../keeping/check.js';
import { listAgentsHere } from '../store/agents.js';
import { listPersons } from '../store/listPersons.js';
import { readPerson } from '../store/persons.js';
import { openSite } from '../store/site.js';
import { INVENTED_PEOPLE } from './clinic.js';
import { fillDemo } from './fillDemo.js';

const NOW = new Date('2026-11-25T10:00:00Z');
const SITE = { id: '01950000-0000-7000-8000-000000000001', name: 'Demo (invented)', invented: true };

/** A demo clinic, filled at that instant. */
async function filledAt(now: Date): Promise<{ database: TestDatabase; db: Kysely<Tables> }> {
  const database = await openMemory();
  const db = new Kysely<Tables>({ dialect: database.dialect });
  await migrate(db);
  await openSite(db, SITE);
  await fillDemo(db, SITE.id, now);
  return { database, db };
}

/** Everything that was sent in, in order of key; not when the server took it. */
async function everythingIn(db: Kysely<Tables>) {
  const entries = await db.selectFrom('entry').selectAll().orderBy('id').execute();
  const identities = await db.selectFrom('identity').selectAll().orderBy('person').execute();
  const untimed = ({ recorded_at, ...row }: { recorded_at: Date }) => row;
  return {
    entries: entries.map(untimed),
    identities: identities.map(untimed),
    agents: await listAgentsHere(db, SITE.id),
  };
}

describe('the demo clinic', () => {
  let demo: Awaited<ReturnType<typeof filledAt>>;
  beforeAll(async () => {
    demo = await filledAt(NOW);
  }, 60_000);
  afterAll(async () => {
    await demo.database.close();
  });

  async function chartOf(name: string) {
    const person = (await listPersons(demo.db, SITE.id, 'care')).find(
      ({ identity }) => identity?.name === name,
    );
    const found = await readPerson(demo.db, { site: SITE.id, book: 'care', person: person?.id ?? '' });
    return projectChart(found?.entries ?? []);
  }

  test('holds everybody who was invented, in the care book only', async () => {
    const people = await listPersons(demo.db, SITE.id, 'care');
    expect(people.map(({ identity }) => identity?.name).sort()).toEqual(
      INVENTED_PEOPLE.map(({ identity }) => identity.name).sort(),
    );
    expect(await listPersons(demo.db, SITE.id, 'class')).toEqual([]);
    expect(await listPersons(demo.db, SITE.id, 'simulated')).toEqual([]);
  });

  test('has nobody who could be taken for a real person: a number that says INV or a name that says invented', async () => {
    for (const { identity } of await listPersons(demo.db, SITE.id, 'care'))
      expect(`${identity?.number} ${identity?.name}`).toMatch(/^INV-|\(invented\)/);
    for (const { name } of await listAgentsHere(demo.db, SITE.id)) expect(name).toMatch(/invented/);
  });

  test('holds no value that is not what its evidence gives', async () => {
    const checked = await checkRecord(demo.db, SITE.id);
    expect(checked.findings).toEqual([]);
    expect(checked.values).toBeGreaterThan(10);
  });

  test('shows every way in which a value can stand', async () => {
    const standings = new Set<Standing>();
    for (const { identity } of INVENTED_PEOPLE)
      for (const { values } of (await chartOf(identity.name)).rounds)
        for (const { standing } of values) standings.add(standing);
    expect([...standings].sort()).toEqual(['amended', 'as-signed', 'contested', 'entered-in-error']);
  });

  test('has somebody with two weeks at home and a recording, and a diary that is due back', async () => {
    const people = await listPersons(demo.db, SITE.id, 'care');
    const mira = people.find(({ identity }) => identity?.name === 'Mira Tolland');
    // Eight days ago and seven days long: due back yesterday.
    expect(mira?.latest).toMatchObject({ actNow: 0, diary: { dueOn: '2026-11-24' } });
    const where = { site: SITE.id, book: 'care' as const, person: mira?.id ?? '' };
    const series = chartSeries((await readPerson(demo.db, where))?.entries ?? [], GENERAL_RULES);
    expect(series.map(({ content }) => [content.of, content.value.valid])).toEqual([
      ['home', true],
      ['ambulatory', true],
      ['home', true],
    ]);
    const [after, , before] = series.map(({ content: { of, value } }) => ({ of, value }));
    if (before === undefined || after === undefined) throw new Error('two weeks');
    const { mean, isLike } = compareSeries(before, after);
    expect(isLike).toBe(true);
    expect(mean.systolic.difference).toBeLessThan(-5);
  });

  test('has a signing for every round, preliminary where a learner took it', async () => {
    const { rounds } = await chartOf('Orla Wickstead');
    const signings = rounds.map(({ signed }) => signed?.original.content);
    expect(signings).toMatchObject([{ status: 'final' }, { status: 'preliminary' }]);
  });

  test('knows its learner as one, and nobody else', async () => {
    const learning = (await listAgentsHere(demo.db, SITE.id)).filter(({ isLearning }) => isLearning);
    expect(learning.map(({ name }) => name)).toEqual(['Kit Osei-Lund (invented, learner)']);
  });

  /** What the newest round of somebody came to, as its values stand. */
  async function newestOf(name: string) {
    const [round] = (await chartOf(name)).rounds;
    return round === undefined ? null : valueStanding(round, () => null);
  }

  test('has a severe pressure in pregnancy that nobody has closed, and one alert that is closed', async () => {
    const people = await listPersons(demo.db, SITE.id, 'care');
    const open = people.filter(({ latest }) => latest.actNow > 0).map(({ identity }) => identity?.name);
    expect(open).toEqual(['Cleo Marchetti']);
    expect((await newestOf('Cleo Marchetti'))?.actNow).toMatchObject([{ condition: 'severe-in-pregnancy' }]);
    const closed = (await chartOf('Greta Lomax')).rounds.map((round) => round.closed.length);
    expect(closed).toEqual([1, 1]);
  });

  test('has pressures of every kind: by feel alone, down to zero, put right, of a child', async () => {
    const pressures = (await listPersons(demo.db, SITE.id, 'care')).map(
      ({ identity, latest }) => [identity?.name, latest.pressure] as const,
    );
    const of = (name: string) => pressures.find(([one]) => one === name)?.[1];
    expect(of('Nils Okonjo')).toMatchObject({ systolic: 118, muffled: 62, diastolic: 0 });
    expect(of('Marit Solvang')).toMatchObject({ systolic: 146, diastolic: 90 });
    expect((await newestOf('Ida Brandvold'))?.category?.centiles).not.toBeNull();
    const felt = (await chartOf('Ansel Brightwater')).rounds.at(-1)?.values.flatMap(({ current }) => current);
    expect(felt?.find(({ kind }) => kind === 'run')?.content).toMatchObject({
      value: { systolic: 122, diastolic: null },
    });
  });

  // 97.9 degF and 151.5 lb, as a thermometer and scales of the other kind show them (bedside handbook 4.4).
  test('has signs that were typed in other units, and readings on the feet with how they felt', async () => {
    const rows = await demo.db.selectFrom('entry').select('content').orderBy('id').execute();
    const evidences = rows.map(({ content }) => (content as { evidence?: Record<string, unknown> }).evidence);
    const typed = evidences.flatMap((evidence) => (evidence?.typed == null ? [] : [evidence.typed]));
    expect(typed).toEqual(
      expect.arrayContaining([
        { value: 97.9, unit: '[degF]' },
        { value: 151.5, unit: '[lb_av]' },
        { value: 66, unit: '[in_i]' },
      ]),
    );
    const felt = evidences.flatMap((evidence) => {
      const { uprightMinutes = null, unwellUpright } = (evidence?.circumstances ?? {}) as {
        uprightMinutes?: number | null;
        unwellUpright?: boolean | null;
      };
      return uprightMinutes === null ? [] : [[uprightMinutes, unwellUpright]];
    });
    expect(felt).toEqual([
      [1.1, true],
      [3.2, false],
    ]);
  });

  test('says nothing of a child that is said of adults alone', async () => {
    for (const name of ['Pia Lindqvist', 'Ida Brandvold'])
      for (const { values } of (await chartOf(name)).rounds)
        for (const { original } of values) {
          const flags = (original.content as { value: { flags: { code: string }[] } }).value.flags;
          expect(flags.map(({ code }) => code)).not.toEqual(expect.arrayContaining(['very-fast']));
          expect(flags.map(({ code }) => code)).not.toEqual(expect.arrayContaining(['very-slow']));
        }
  });

  test('has a learner’s rounds agreed to, not relied on, and waiting', async () => {
    const { rounds } = await chartOf('Rufus Adeyemi');
    const said = rounds.map(({ isPreliminary, countersigned }) => [
      isPreliminary,
      countersigned.map(({ content }) => content.agrees),
    ]);
    expect(said).toEqual([
      [false, []],
      [true, []],
      [true, [false]],
      [false, [true]],
    ]);
  });

  test('happened before now, and nothing was taken before its person was there', async () => {
    const all = await demo.db.selectFrom('entry').select(['kind', 'person', 'measured_at']).execute();
    const entries = all.filter(({ person }) => person !== null);
    expect(all.filter(({ measured_at }) => measured_at > NOW)).toEqual([]);
    for (const { person } of entries) {
      const own = entries.filter((entry) => entry.person === person);
      const first = own.toSorted((a, b) => a.measured_at.getTime() - b.measured_at.getTime())[0];
      expect(first?.kind).toBe('person');
    }
  });

  test('filled again is left as it is, whatever the clock says by then', async () => {
    const before = await everythingIn(demo.db);
    await fillDemo(demo.db, SITE.id, new Date('2027-01-01T00:00:00Z'));
    expect(await everythingIn(demo.db)).toEqual(before);
  });

  test('is the same to the last id and tap when the clock is the same, on any machine', async () => {
    const other = await filledAt(NOW);
    try {
      expect(await everythingIn(other.db)).toEqual(await everythingIn(demo.db));
    } finally {
      await other.database.close();
    }
  }, 60_000);
});
