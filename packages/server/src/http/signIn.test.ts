import { PATHS } from '@evenfall/api';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openEmbedded, type TestDatabase } from '../database/testing.js';
import { SIGN_IN } from '../signIn/figures.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

const PHRASE = 'a lamp beside the green door';
const minutes = (clock: Date, more: number) => new Date(clock.getTime() + more * 60_000);

// On PostgreSQL itself; `accountLog.test.ts` goes through the same steps on the one connection of a database in memory.
describe('signing in', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  const agents: Record<string, string> = {};

  /** Signs in on this browser; the first pass phrase is changed at once, as its user does. */
  async function signIn(name: string, passPhrase = PHRASE) {
    return await clinic.send('POST', '/api/sign-in', { signIn: name, passPhrase });
  }
  async function make(name: string, roles: readonly string[]) {
    const { status, body, sent } = await clinic.addAccount(name, roles);
    expect(status).toBe(201);
    agents[name] = body.agent.id;
    await signIn(name, sent.passPhrase);
    const chosen = { old: sent.passPhrase, passPhrase: PHRASE };
    expect((await clinic.send('PUT', '/api/sign-in/pass-phrase', chosen)).status).toBe(200);
    const pin = await clinic.send('PUT', '/api/sign-in/pin', { passPhrase: PHRASE, pin: '4826' });
    expect(pin.status).toBe(200);
    return body.id as string;
  }
  const state = async () => (await clinic.send('GET', '/api/sign-in')).body;
  const asSigned = (name: string) => ({ agent: agents[name] ?? '' });

  let person = '';
  let ines = '';
  let wren = '';
  beforeAll(async () => {
    database = await openEmbedded();
    clinic = await TestClinic.open(database);
    // Before there is an account, whoever sits at the machine may act, and nobody is asked.
    person = await clinic.addPerson();
    expect((await clinic.sign(clinic.pulse(person, 36, 30))).status).toBe(201);
    expect(await state()).toMatchObject({ needed: false, current: null, here: [] });
    expect((await clinic.send('GET', '/api/accounts')).status).toBe(403);

    // Nobody could make another account: the first is an owner.
    expect((await clinic.addAccount('wren', ['clinician'])).body.problems).toMatchObject([
      { field: '/roles' },
    ]);
    ines = await make('ines', ['owner', 'clinician', 'supervisor']);
    wren = await make('wren', ['clinician']);
    await make('sol', ['learner']);
  }, 120_000);
  afterAll(async () => {
    await database.close();
  });
  beforeEach(() => {
    clinic.cookie = null;
  });

  test('nobody reads or keeps anything before they sign in', async () => {
    const open = ['about', 'readSignIn', 'signIn', 'signOut', 'lockDevice', 'takeOver'];
    const ids: Record<string, string> = { book: 'care', person };
    for (const [name, { method, path: pattern }] of Object.entries(PATHS)) {
      if (open.includes(name)) continue;
      const path = pattern.replace(/\{(\w+)\}/g, (_, part: string) => ids[part] ?? v7());
      const came = await clinic.send(method.toUpperCase(), path, method === 'get' ? undefined : {});
      expect([name, came.status]).toEqual([name, 401]);
      expect(came.text).not.toMatch(/Quillfeather/);
    }
    for (const path of [
      `/api/books/care/persons/${person}/export?as=csv`,
      '/%61pi/books/care/persons',
      '/api/about/../books/care/persons',
      '/api/sign-in/pin',
    ]) {
      const came = await clinic.send('GET', path);
      expect([path, came.status]).toEqual([path, 401]);
      expect(came.text).not.toMatch(/Quillfeather/);
    }
    expect((await clinic.sign(clinic.pulse(person, 36, 30))).status).toBe(401);
    expect((await clinic.send('GET', '/api/about')).status).toBe(200);
    expect(await state()).toMatchObject({ needed: true, current: null, here: [] });
  });

  test('with name and pass phrase the charts open, under a cookie that no script and no other site can use', async () => {
    const came = await signIn('INES');
    expect(came.status).toBe(200);
    expect(came.body).toMatchObject({
      needed: true,
      current: {
        agent: { name: 'ines (invented)' },
        roles: ['owner', 'clinician', 'supervisor'],
        isOwnPhrase: true,
      },
    });
    // OWASP ASVS 4.0.3, 3.4 (from memory).
    const cookie = came.headers.getSetCookie()[0] ?? '';
    expect(cookie).toMatch(/HttpOnly/i);
    expect(cookie).toMatch(/SameSite=Strict/i);
    expect(cookie).toMatch(/Path=\//);
    expect(JSON.stringify(came.body)).not.toMatch(/argon|lamp/);
    expect((await clinic.chart(person)).body.identity).toEqual(HESTER);
    expect((await clinic.send('GET', '/api/accounts')).body.accounts).toHaveLength(3);
    expect(JSON.stringify((await clinic.send('GET', '/api/accounts')).body)).not.toMatch(/argon|phrase":"/);
  });

  test('a wrong name and a wrong pass phrase are answered alike, and too many of them are told to wait', async () => {
    const nobody = await signIn('nobody-here');
    const wrong = await signIn('wren', 'a lamp beside the red door');
    expect([nobody.status, wrong.status]).toEqual([401, 401]);
    expect(nobody.text).toBe(wrong.text);
    for (let tries = 1; tries < SIGN_IN.wrongPhrasesAtMost; tries++)
      expect((await signIn('wren', 'a lamp beside the red door')).status).toBe(401);
    const stopped = await signIn('wren');
    expect(stopped.status).toBe(429);
    expect(Number(stopped.headers.get('retry-after'))).toBeGreaterThan(0);
    // Of other names nothing is held back, and after the time the right pass phrase opens again.
    expect((await signIn('ines')).status).toBe(200);
    const was = clinic.clock;
    clinic.clock = minutes(was, SIGN_IN.wrongPhrasesWithinMinutes - 1);
    expect((await signIn('wren')).status).toBe(429);
    clinic.clock = minutes(was, SIGN_IN.wrongPhrasesWithinMinutes);
    expect((await signIn('wren')).status).toBe(200);
    clinic.clock = was;
    // The right one wipes the slate.
    expect((await signIn('wren', 'no')).status).toBe(401);
  });

  test('signed out, the cookie opens nothing any more', async () => {
    await signIn('ines');
    const { cookie } = clinic;
    expect((await clinic.send('DELETE', '/api/sign-in', {})).body).toMatchObject({ current: null, here: [] });
    clinic.cookie = cookie;
    expect((await clinic.chart(person)).status).toBe(401);
    expect((await state()).here).toEqual([]);
  });

  test('a first pass phrase opens nothing until another is chosen', async () => {
    const { sent } = await clinic.addAccount('tove', ['clinician']);
    await signIn('tove', sent.passPhrase);
    expect(await state()).toMatchObject({ current: { isOwnPhrase: false } });
    expect((await clinic.chart(person)).status).toBe(401);
    const change = (passPhrase: string, old = sent.passPhrase) =>
      clinic.send('PUT', '/api/sign-in/pass-phrase', { old, passPhrase });
    expect((await change('short words')).body.problems).toMatchObject([
      { field: '/passPhrase', code: 'out-of-range' },
    ]);
    expect((await change(sent.passPhrase)).body.problems).toMatchObject([{ code: 'contradicts' }]);
    expect((await change('aaaaaaaaaaaaaaaa')).body.problems).toMatchObject([{ code: 'contradicts' }]);
    expect((await change(PHRASE, 'not the old one at all')).status).toBe(401);
    expect((await change(PHRASE)).status).toBe(200);
    expect((await clinic.chart(person)).status).toBe(200);
  });

  test('without a request for too long, or locked by hand, a PIN is asked for', async () => {
    await signIn('ines');
    const was = clinic.clock;
    clinic.clock = minutes(was, SIGN_IN.idleMinutes - 1);
    expect((await clinic.chart(person)).status).toBe(200);
    // That was a request: the time starts again.
    clinic.clock = minutes(was, 2 * SIGN_IN.idleMinutes - 2);
    expect((await clinic.chart(person)).status).toBe(200);
    clinic.clock = minutes(was, 3 * SIGN_IN.idleMinutes - 2);
    expect((await clinic.chart(person)).status).toBe(401);
    expect(await state()).toMatchObject({
      current: null,
      here: [{ agent: { name: 'ines (invented)' }, hasPin: true }],
    });
    const over = await clinic.send('POST', '/api/sign-in/take-over', { account: ines, pin: '4826' });
    expect(over.body.current.signIn).toBe('ines');
    expect((await clinic.chart(person)).status).toBe(200);
    await clinic.send('POST', '/api/sign-in/lock', {});
    expect((await clinic.chart(person)).status).toBe(401);
    clinic.clock = was;
  });

  test('after a long shift the pass phrase is asked for again, whatever was done', async () => {
    await signIn('ines');
    const was = clinic.clock;
    for (let at = 0; at < SIGN_IN.wholeHours * 60; at += 10) {
      clinic.clock = minutes(was, at);
      expect((await clinic.send('GET', '/api/agents')).status).toBe(200);
    }
    clinic.clock = minutes(was, SIGN_IN.wholeHours * 60);
    expect((await clinic.send('GET', '/api/agents')).status).toBe(401);
    expect((await clinic.send('POST', '/api/sign-in/take-over', { account: ines, pin: '4826' })).status).toBe(
      401,
    );
    clinic.clock = was;
  }, 60_000);

  test('a shared device is handed over by PIN to whoever signed in on it, and to nobody else', async () => {
    await signIn('ines');
    expect((await clinic.send('POST', '/api/sign-in/take-over', { account: wren, pin: '4826' })).status).toBe(
      401,
    );
    await signIn('wren');
    expect((await state()).here.map(({ agent }: { agent: { name: string } }) => agent.name)).toEqual([
      'ines (invented)',
      'wren (invented)',
    ]);
    const over = await clinic.send('POST', '/api/sign-in/take-over', { account: ines, pin: '4826' });
    expect(over.body.current.signIn).toBe('ines');
    // Another browser has nothing of it.
    clinic.cookie = null;
    expect((await clinic.send('POST', '/api/sign-in/take-over', { account: ines, pin: '4826' })).status).toBe(
      401,
    );
  });

  // OWASP ASVS 4.0.3, 3.2.1 (from memory): a new session token at each authentication.
  test('a device that is taken over by PIN gets a new cookie, and the one before opens nothing to anybody', async () => {
    await signIn('ines');
    await signIn('wren');
    const before = clinic.cookie;
    const over = await clinic.send('POST', '/api/sign-in/take-over', { account: ines, pin: '4826' });
    const after = clinic.cookie;
    expect(over.headers.getSetCookie()[0]).toMatch(/HttpOnly/i);
    expect(after).not.toBe(before);
    expect((await clinic.chart(person)).status).toBe(200);
    // Everybody who signed in here came along.
    expect((await state()).here).toHaveLength(2);
    clinic.cookie = before;
    expect((await clinic.chart(person)).status).toBe(401);
    expect((await state()).here).toEqual([]);
    expect((await clinic.send('POST', '/api/sign-in/take-over', { account: wren, pin: '4826' })).status).toBe(
      401,
    );
    clinic.cookie = after;
    // A wrong PIN renews nothing.
    await clinic.send('POST', '/api/sign-in/take-over', { account: wren, pin: '0000' });
    expect(clinic.cookie).toBe(after);
    expect((await clinic.chart(person)).status).toBe(200);
  });

  test('five wrong PINs end the sign-in: then even the right one opens nothing', async () => {
    await signIn('ines');
    await clinic.send('POST', '/api/sign-in/lock', {});
    for (let tries = 1; tries <= SIGN_IN.wrongPinsAtMost; tries++) {
      const came = await clinic.send('POST', '/api/sign-in/take-over', { account: ines, pin: '0000' });
      expect(came.status).toBe(401);
    }
    expect((await clinic.send('POST', '/api/sign-in/take-over', { account: ines, pin: '4826' })).status).toBe(
      401,
    );
    expect((await state()).here).toEqual([]);
    expect((await signIn('ines')).status).toBe(200);
  });

  test('wrong PINs sent all at once are counted all the same', async () => {
    await signIn('ines');
    await clinic.send('POST', '/api/sign-in/lock', {});
    // Which of them is looked at first is chance; that none is after the fifth, whatever it is, is not.
    const guess = (pin: string) =>
      clinic.send('POST', '/api/sign-in/take-over', { account: ines, pin }).then(({ status }) => status);
    const came = await Promise.all(Array.from({ length: 12 }, (_, at) => guess(`70${10 + at}`)));
    expect(came).toEqual(came.map(() => 401));
    expect([await guess('4826'), (await state()).here]).toEqual([401, []]);
  });

  test('a device learns which of the accounts that it names are closed, and nothing of others', async () => {
    const gone = await clinic.addAccount('vera', ['learner']);
    await signIn('ines');
    const close = (isClosed: boolean) => clinic.send('PUT', `/api/accounts/${gone.body.id}`, { isClosed });
    expect((await close(true)).status).toBe(200);
    clinic.cookie = null;
    const asked = async (...kept: string[]) =>
      (await clinic.send('GET', `/api/sign-in?kept=${kept.join(',')}`)).body.closed;
    expect(await asked(gone.body.id, ines, v7())).toEqual([gone.body.id]);
    expect(await asked(ines)).toEqual([]);
    expect((await state()).closed).toEqual([]);
    expect((await clinic.send('GET', '/api/sign-in?kept=everybody')).status).toBe(422);
    await signIn('ines');
    expect((await close(false)).status).toBe(200);
    expect(await asked(gone.body.id)).toEqual([]);
  });

  test('a PIN of one digit or a row is refused, and one without the pass phrase', async () => {
    await signIn('ines');
    const choose = (pin: string | null, passPhrase = PHRASE) =>
      clinic.send('PUT', '/api/sign-in/pin', { passPhrase, pin });
    for (const pin of ['123', '123456789', '12a4', '1111', '1234', '9876', ''])
      expect([pin, (await choose(pin)).status]).toEqual([pin, 422]);
    expect((await choose('4826', 'something else entirely')).status).toBe(401);
    expect((await choose('48265173')).status).toBe(200);
    expect((await choose('4826')).status).toBe(200);
  });

  test('nobody charts in the name of somebody else', async () => {
    await signIn('wren');
    const mine = clinic.pulse(person, 36, 30, asSigned('wren'));
    expect((await clinic.sign(mine)).status).toBe(201);
    const forged = await clinic.sign(clinic.pulse(person, 36, 30, asSigned('ines')));
    expect(forged.status).toBe(403);
    expect(forged.body.problems).toMatchObject([{ field: '/entries/0/agent', code: 'contradicts' }]);
    const frame = { ...clinic.personFrame({ ...HESTER, number: 'INV-79' }), ...asSigned('ines') };
    const added = await clinic.send('POST', '/api/books/care/persons', {
      identity: { ...HESTER, number: 'INV-79' },
      entry: frame,
    });
    expect(added.status).toBe(403);
  });

  test('each does what their roles allow', async () => {
    const erased = (name: string) =>
      clinic.send('DELETE', `/api/books/care/persons/${person}/identity`, {
        entry: clinic.frame('identity-erased', person, { reason: 'asked for' }, asSigned(name)),
      });
    await signIn('wren');
    expect((await erased('wren')).status).toBe(403);
    expect((await clinic.send('GET', '/api/accounts')).status).toBe(403);
    expect((await clinic.send('POST', '/api/protocols', { content: {} })).status).toBe(403);
    expect((await clinic.send('POST', '/api/agents', { id: v7(), name: 'Nobody (invented)' })).status).toBe(
      403,
    );
    const session = v7();
    const content = { title: 'Evening group (invented)', endsBy: '2026-11-26T00:00:00Z' };
    const begin = (name: string) =>
      clinic.send('POST', '/api/class-sessions', {
        entry: clinic.frame('class-session', null, content, {
          ...asSigned(name),
          book: 'class',
          role: 'teacher',
          id: session,
          session,
        }),
      });
    expect((await begin('wren')).status).toBe(403);
    await signIn('ines');
    expect((await begin('ines')).status).toBe(201);
  });

  test('a learner’s signing is preliminary or refused', async () => {
    await signIn('sol');
    const signing = (status: string) =>
      clinic.sign(clinic.frame('round', person, { status }, asSigned('sol')) as never);
    expect((await signing('final')).status).toBe(422); // not a whole signing: read before it is judged
    const pulse = clinic.pulse(person, 36, 30, asSigned('sol'));
    expect((await clinic.sign(pulse)).status).toBe(201);
  });

  test('a learner puts nothing in the place of what somebody else charted', async () => {
    await signIn('wren');
    const hers = clinic.pulse(person, 36, 30, asSigned('wren'));
    expect((await clinic.sign(hers)).status).toBe(201);
    await signIn('sol');
    const own = clinic.pulse(person, 40, 30, asSigned('sol'));
    expect((await clinic.sign(own)).status).toBe(201);
    const amending = (old: typeof hers) =>
      clinic.sign(clinic.pulse(person, 42, 30, { ...clinic.amending(old), ...asSigned('sol') }));
    expect((await amending(own)).status).toBe(201);
    const refused = await amending(hers);
    expect([refused.status, refused.body.problems?.[0]?.field]).toEqual([403, '/entries/0/amends/entry']);
  });

  test('an owner makes, changes and closes accounts; never the last owner', async () => {
    await signIn('ines');
    const agent = { id: v7(), name: 'Bo (invented)' };
    const body = {
      id: v7(),
      agent,
      signIn: 'bo',
      roles: ['clinician'],
      passPhrase: 'seven lanterns in a row',
    };
    const made = await clinic.send('POST', '/api/accounts', body);
    expect([made.status, made.body.isOwnPhrase]).toEqual([201, false]);
    expect((await clinic.send('POST', '/api/accounts', body)).status).toBe(200);
    const again = await clinic.send('POST', '/api/accounts', {
      ...body,
      id: v7(),
      agent: { ...agent, id: v7() },
    });
    expect(again.body.problems).toMatchObject([{ field: '/signIn', code: 'repeated' }]);
    for (const signInName of ['', 'b', 'with space', 'a/b'])
      expect(
        (await clinic.send('POST', '/api/accounts', { ...body, id: v7(), signIn: signInName })).status,
      ).toBe(422);
    const change = (id: string, what: object) => clinic.send('PUT', `/api/accounts/${id}`, what);
    expect((await change(body.id, { roles: ['learner', 'learner'] })).status).toBe(422);
    expect((await change(body.id, { roles: [] })).status).toBe(422);
    expect((await change(body.id, { roles: ['supervisor'] })).body.roles).toEqual(['supervisor']);
    expect((await change(ines, { isClosed: true })).body.problems).toMatchObject([{ field: '/isClosed' }]);
    expect((await change(ines, { roles: ['clinician'] })).body.problems).toMatchObject([{ field: '/roles' }]);
    expect((await change(v7(), { isClosed: true })).status).toBe(404);

    const owner = clinic.cookie;
    clinic.cookie = null;
    await signIn('bo', body.passPhrase);
    const bo = clinic.cookie;
    clinic.cookie = owner;
    expect((await change(body.id, { isClosed: true })).body.closedAt).toMatch(/T/);
    clinic.cookie = bo;
    expect(await state()).toMatchObject({ current: null, here: [] });
    clinic.cookie = null;
    expect((await signIn('bo', body.passPhrase)).status).toBe(401);
  });

  test('nobody charts in the name of a closed account, in a class neither', async () => {
    const { body } = await clinic.addAccount('kit', ['learner']);
    agents.kit = body.agent.id;
    await signIn('ines');
    const pupilAgent = clinic.agent;
    clinic.agent = agents.ines ?? '';
    const session = await clinic.beginClass();
    clinic.agent = pupilAgent;
    const pupil = await clinic.addSubject(session, 'Wagtail');
    const inName = (agent: string) =>
      clinic
        .sign(clinic.pulse(pupil, 36, 30, { agent, book: 'class', session }))
        .then(({ status }) => status);
    expect(await inName(pupilAgent)).toBe(201); // nobody signs in as them
    expect(await inName(body.agent.id)).toBe(403);
    await clinic.send('PUT', `/api/accounts/${body.id}`, { isClosed: true });
    expect(await inName(body.agent.id)).toBe(403);
  });

  test('a new first pass phrase signs every device out', async () => {
    await signIn('wren');
    const device = clinic.cookie;
    clinic.cookie = null;
    await signIn('ines');
    const first = 'nine small boats at sea';
    expect((await clinic.send('PUT', `/api/accounts/${wren}`, { passPhrase: first })).status).toBe(200);
    clinic.cookie = device;
    expect((await clinic.chart(person)).status).toBe(401);
    clinic.cookie = null;
    expect((await signIn('wren', first)).body.current.isOwnPhrase).toBe(false);
    await clinic.send('PUT', '/api/sign-in/pass-phrase', { old: first, passPhrase: PHRASE });
  });

  test('the log names nobody who signs in', async () => {
    clinic.log.length = 0;
    await signIn('ines');
    await signIn('ines', 'a wrong one, mistyped');
    expect(clinic.log.map(({ route, status }) => [route, status])).toEqual([
      ['/api/sign-in', 200],
      ['/api/sign-in', 401],
    ]);
    expect(JSON.stringify(clinic.log)).not.toMatch(/ines|wrong one/);
  });
});
