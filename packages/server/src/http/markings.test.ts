import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openEmbedded, openMemory, type TestDatabase } from '../database/testing.js';
import { MARKING } from '../marking/figures.js';
import { clockMs, forgetMarkings } from '../marking/markings.js';
import { TestClinic } from '../testing/clinic.js';

const mark = (atMs: number, more: object = {}) => ({ id: v7(), atMs, offsetMs: 1.5, withinMs: 4, ...more });

describe.each([
  ['memory', openMemory],
  ['embedded', openEmbedded],
] as const)('a second person marks on another device, %s', (_kind, open) => {
  let database: TestDatabase;
  /** Two servers that share a database: the observer asks one, the second person the other. */
  let here: TestClinic;
  let there: TestClinic;
  beforeAll(async () => {
    database = await open();
    here = await TestClinic.open(database);
    there = await TestClinic.open(database);
  }, 120_000);
  afterAll(async () => {
    await database.close();
  });

  async function opened() {
    const marking = v7();
    const { status, body } = await here.send('POST', '/api/markings', { id: marking });
    expect(status).toBe(201);
    return { marking, code: body.code as string };
  }
  const join = (code: string, marker: string) => there.send('POST', '/api/markers', { code, marker });
  const keep = (marker: string, version: number, marks: object[]) =>
    there.send('PUT', `/api/markers/${marker}`, { version, marks });
  const read = (marking: string, after = -1) => here.send('GET', `/api/markings/${marking}?after=${after}`);

  test('what is marked through one server is read through another, each mark once', async () => {
    const { marking, code } = await opened();
    expect((await read(marking)).body).toEqual({
      turn: 0,
      isJoined: false,
      heardSecondsAgo: null,
      marks: [],
    });
    const marker = v7();
    expect((await join(code.toLowerCase(), marker)).status).toBe(200);
    expect((await join(code, marker)).status).toBe(200);
    expect((await read(marking)).body).toMatchObject({ turn: 1, isJoined: true, heardSecondsAgo: 0 });
    const [valve, first, last] = [mark(1000), mark(7000), mark(30_000)];
    expect((await keep(marker, 1, [valve])).body).toEqual({ version: 1, runAtMs: null });
    expect((await keep(marker, 3, [valve, first, last])).body).toEqual({ version: 3, runAtMs: null });
    // Sent again, and one that was on its way too long: nothing changes.
    expect((await keep(marker, 3, [valve, first, last])).body).toEqual({ version: 3, runAtMs: null });
    expect((await keep(marker, 2, [valve, first])).body).toEqual({ version: 3, runAtMs: null });
    expect((await read(marking)).body).toMatchObject({ turn: 3, marks: [valve, first, last] });
    // Taken back on the device that marked.
    await keep(marker, 4, [valve, first]);
    expect((await read(marking)).body.marks).toEqual([valve, first]);
  });

  test('the device that marks is told of each run, and its minutes count anew from there', async () => {
    const began = here.clock;
    const { marking, code } = await opened();
    const marker = v7();
    await join(code, marker);
    const say = (runAtMs: number | null) => here.send('PUT', `/api/markings/${marking}`, { runAtMs });
    const later = (minutes: number) => {
      here.clock = new Date(began.getTime() + minutes * 60_000);
      there.clock = here.clock;
    };
    later(9);
    expect((await say(1_795_658_910_553.25)).status).toBe(200);
    expect((await keep(marker, 1, [])).body).toEqual({ version: 1, runAtMs: 1_795_658_910_553.25 });
    later(18);
    expect((await say(null)).status).toBe(200);
    expect((await keep(marker, 2, [])).body).toEqual({ version: 2, runAtMs: null });
    later(28);
    expect((await say(5)).status).toBe(404);
    await here.send('DELETE', `/api/markings/${marking}`, {});
    later(0);
  });

  test('an answer waits until there is something new', async () => {
    const { marking, code } = await opened();
    const waiting = read(marking, 0);
    const marker = v7();
    await join(code, marker);
    expect((await waiting).body).toMatchObject({ turn: 1, isJoined: true });
    const next = read(marking, 1);
    await keep(marker, 1, [mark(5)]);
    expect((await next).body.marks).toHaveLength(1);
  });

  test('a code joins one device; a wrong one and that of a run that is over are answered alike', async () => {
    const { marking, code } = await opened();
    const marker = v7();
    await join(code, marker);
    expect((await join(code, v7())).status).toBe(409);
    expect((await here.send('DELETE', `/api/markings/${marking}`, {})).status).toBe(200);
    expect((await read(marking)).status).toBe(404);
    expect((await keep(marker, 9, [mark(1)])).status).toBe(404);
    const ended = await join(code, v7());
    const wrong = await join('AAAAAA', v7());
    expect([ended.status, wrong.status]).toEqual([404, 404]);
    expect(ended.text).toBe(wrong.text);
    // Nothing of it is left anywhere.
    expect(await here.db.selectFrom('marking').select('id').where('id', '=', marking).execute()).toEqual([]);
  });

  test('it is over after its minutes, not before, and then forgotten', async () => {
    const began = here.clock;
    const { marking, code } = await opened();
    const marker = v7();
    await join(code, marker);
    const at = (ms: number) => {
      here.clock = new Date(began.getTime() + MARKING.lastsMinutes * 60_000 + ms);
      there.clock = here.clock;
    };
    at(-1);
    expect((await read(marking)).status).toBe(200);
    expect((await keep(marker, 1, [])).status).toBe(200);
    at(0);
    expect((await read(marking)).status).toBe(404);
    expect((await keep(marker, 2, [])).status).toBe(404);
    expect((await join(code, marker)).status).toBe(404);
    const [{ id: site }] = (await here.db.selectFrom('site').select('id').execute()) as [{ id: string }];
    await forgetMarkings(here.db, site, here.clock);
    expect(await here.db.selectFrom('marking').select('id').execute()).toEqual([]);
    here.clock = began;
    there.clock = began;
  });

  test('the clock is the database’s own, the same behind every server, and runs on', async () => {
    const first = (await here.send('GET', '/api/clock')).body.atMs as number;
    const second = (await there.send('GET', '/api/clock')).body.atMs as number;
    expect(second).toBeGreaterThan(first);
    expect(Math.abs(Date.now() - (await clockMs(here.db)))).toBeLessThan(60_000);
  });

  test('what is no list of marks is refused', async () => {
    const { code } = await opened();
    const marker = v7();
    await join(code, marker);
    const refused = async (version: number, marks: object[]) => (await keep(marker, version, marks)).status;
    expect(await refused(-1, [])).toBe(422);
    expect(await refused(1, [mark(1, { withinMs: -1 })])).toBe(422);
    expect(await refused(1, [mark(1, { name: 'somebody' })])).toBe(422);
    expect(
      await refused(
        1,
        Array.from({ length: 21 }, () => mark(1)),
      ),
    ).toBe(422);
    expect(
      await refused(
        1,
        Array.from({ length: 20 }, () => mark(1)),
      ),
    ).toBe(200);
  });

  test('too many wrong codes of one account are told to wait; another account is not held back', async () => {
    // Wrong codes of before do not count any more.
    const later = new Date(there.clock.getTime() + MARKING.wrongCodesWithinMinutes * 60_000);
    here.clock = later;
    there.clock = later;
    const { code } = await opened();
    for (let tries = 0; tries < MARKING.wrongCodesAtMost; tries++)
      expect((await join('AAAAAA', v7())).status).toBe(404);
    const stopped = await join(code, v7());
    expect(stopped.status).toBe(429);
    expect(Number(stopped.headers.get('retry-after'))).toBeGreaterThan(0);
    await here.addAccount('ines', ['owner', 'clinician']);
    await here.addAccount('olm', ['owner']);
    const enter = async (name: string) => {
      there.cookie = null;
      const first = `${name} walks by the quiet river`;
      await there.send('POST', '/api/sign-in', { signIn: name, passPhrase: first });
      const chosen = { old: first, passPhrase: 'a lamp beside the green door' };
      expect((await there.send('PUT', '/api/sign-in/pass-phrase', chosen)).status).toBe(200);
    };
    // From here on nobody joins who is not signed in, or who takes no signs.
    expect((await join(code, v7())).status).toBe(401);
    await enter('olm');
    expect((await join(code, v7())).status).toBe(403);
    expect((await there.send('POST', '/api/markings', { id: v7() })).status).toBe(403);
    await enter('ines');
    expect((await join(code, v7())).status).toBe(200);
  }, 30_000);

  test('a QR picture is for another device: none on the loopback', async () => {
    here.cookie = there.cookie;
    expect((await here.send('POST', '/api/markings', { id: v7() })).body.picture).toBeNull();
  });
});
