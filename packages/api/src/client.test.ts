import type { EntryFrame } from '@evenfall/record';
import { describe, expect, expectTypeOf, test } from 'vitest';
import { type Answer, call, type Gives, type Send, type Takes } from './client.js';
import type { About, PersonRecord, PersonRow, ProblemDetails, TakenEntries } from './shapes.js';

const PERSON = '01950000-0000-7000-8000-000000000001';

type Sent = { path: string; method: string; headers: Record<string, string>; body?: string };

/** A server that answers every request with one answer, and remembers what it was asked. */
function answering(answer: () => Response | Promise<Response>): { send: Send; sent: Sent[] } {
  const sent: Sent[] = [];
  const send: Send = async (path, init) => {
    sent.push({ path, ...init });
    return await answer();
  };
  return { send, sent };
}

function json(status: number, value: unknown, type = 'application/json'): Response {
  return new Response(JSON.stringify(value), { status, headers: { 'content-type': type } });
}

describe('what is sent', () => {
  test('a path with its parameters filled in and escaped, and no body where there is none', async () => {
    const { send, sent } = answering(() => json(200, {}));
    await call(send, 'readPerson', { params: { book: 'care', person: 'a/b c' } });
    expect(sent).toEqual([
      { path: '/api/books/care/persons/a%2Fb%20c', method: 'GET', headers: { accept: 'application/json' } },
    ]);
  });

  test('a query behind the path', async () => {
    const { send, sent } = answering(() => json(200, {}));
    await call(send, 'exportPerson', { params: { book: 'class', person: PERSON }, query: { as: 'csv' } });
    await call(send, 'exportPerson', { params: { book: 'class', person: PERSON } });
    expect(sent.map(({ path }) => path)).toEqual([
      `/api/books/class/persons/${PERSON}/export?as=csv`,
      `/api/books/class/persons/${PERSON}/export`,
    ]);
  });

  test('a body as JSON that says so', async () => {
    const { send, sent } = answering(() => json(201, {}));
    const wren = { id: PERSON, name: 'Wren “=1” (invented)' };
    await call(send, 'addAgent', { body: wren });
    expect(sent[0]).toMatchObject({
      method: 'POST',
      headers: { accept: 'application/json', 'content-type': 'application/json' },
    });
    expect(JSON.parse(sent[0]?.body ?? '')).toEqual(wren);
  });
});

describe('what comes back', () => {
  const about: About = {
    program: 'evenfall 0.1.0',
    site: { id: PERSON, name: 'Test clinic (invented)', invented: true },
    now: '2026-11-25T09:00:00.000Z',
    protocolVersion: null,
  };
  const refused: ProblemDetails = {
    type: 'about:blank',
    title: 'Some values were refused',
    status: 422,
    code: null,
    detail: null,
    problems: [
      {
        file: null,
        line: null,
        column: null,
        field: '/identity/number',
        code: 'missing',
        expected: 'a second identifier: a birth date or a number',
        got: null,
        message: 'identity/number: expected a second identifier',
        rule: 'second-identifier',
        figures: {},
        choices: [],
      },
    ],
  };
  const asked = (answer: () => Response | Promise<Response>) => call(answering(answer).send, 'about', {});

  test('an accepted request: its value, and whether something is new', async () => {
    expect(await asked(() => json(200, about))).toEqual({ ok: true, status: 200, value: about });
    expect(await asked(() => json(201, about, 'application/json; charset=UTF-8'))).toMatchObject({
      status: 201,
    });
  });

  test('CSV as the text that came', async () => {
    const text = 'schema,notice\r\nevenfall-chart-1,INVENTED\r\n';
    const type = { 'content-type': 'text/csv; charset=utf-8; header=present' };
    const { send } = answering(() => new Response(text, { headers: type }));
    const came = await call(send, 'exportPerson', { params: { book: 'care', person: PERSON } });
    expect(came).toEqual({ ok: true, status: 200, value: text });
  });

  test('a refusal: its problem document (RFC 9457), and that the server was there', async () => {
    const came = await asked(() => json(422, refused, 'application/problem+json'));
    expect(came).toEqual({ ok: false, status: 422, offline: false, problem: refused });
  });

  test('a refusal in another form: its status and no problem document', async () => {
    for (const answer of [
      () => new Response('Not found', { status: 404, headers: { 'content-type': 'text/plain' } }),
      () => new Response('{"half', { status: 404, headers: { 'content-type': 'application/problem+json' } }),
    ]) {
      expect(await asked(answer)).toEqual({ ok: false, status: 404, offline: false, problem: null });
    }
  });

  test('no answer: offline, and nothing is known of whether the request arrived', async () => {
    const came = await asked(() => Promise.reject(new TypeError('fetch failed')));
    expect(came).toEqual({ ok: false, status: 0, offline: true, problem: null });
  });

  test('an answer that broke off on the way: offline too, never an error thrown at the caller', async () => {
    const cut = new ReadableStream({
      start(controller) {
        controller.enqueue(new TextEncoder().encode('{"program": "evenf'));
        controller.error(new TypeError('terminated'));
      },
    });
    const came = await asked(() => new Response(cut, { headers: { 'content-type': 'application/json' } }));
    expect(came).toEqual({ ok: false, status: 0, offline: true, problem: null });
  });

  test('an answer that calls itself JSON and is not: no value is made up', async () => {
    const broken = () => new Response('<html>', { headers: { 'content-type': 'application/json' } });
    expect(await asked(broken)).toEqual({ ok: false, status: 200, offline: false, problem: null });
  });
});

describe('types, checked by the compiler', () => {
  const { send } = answering(() => json(200, {}));

  test('each route gives what its schema says', () => {
    expectTypeOf<Gives<'about'>>().toEqualTypeOf<About>();
    expectTypeOf<Gives<'readPerson'>>().toEqualTypeOf<PersonRecord>();
    expectTypeOf<Gives<'listPersons'>>().toEqualTypeOf<{ persons: PersonRow[]; unreadable: number }>();
    expectTypeOf<Gives<'addEntries'>>().toEqualTypeOf<TakenEntries>();
    expectTypeOf<Gives<'exportPerson'>>().toEqualTypeOf<string>();
    const came = () => call(send, 'readPerson', { params: { book: 'care', person: PERSON } });
    expectTypeOf(came).returns.resolves.toEqualTypeOf<Answer<PersonRecord>>();
  });

  test('each route takes what its schema says', () => {
    expectTypeOf<EntryFrame[]>().toExtend<Takes<'addEntries'>['body']['entries']>();
    expectTypeOf<Omit<EntryFrame, 'agent'>[]>().not.toExtend<Takes<'addEntries'>['body']['entries']>();
    expectTypeOf<Takes<'addAgent'>['body']>().toEqualTypeOf<{ id: string; name: string }>();
    expectTypeOf<Takes<'listPersons'>['params']>().toEqualTypeOf<{ book: 'care' | 'class' | 'simulated' }>();
  });

  test('what a route does not take is refused', () => {
    const wrong = () => [
      // @ts-expect-error a route that is not there
      call(send, 'readPatient', {}),
      // @ts-expect-error a path parameter is missing
      call(send, 'readPerson', { params: { book: 'care' } }),
      // @ts-expect-error no book is called demo
      call(send, 'listPersons', { params: { book: 'demo' } }),
      // @ts-expect-error parameters are missing
      call(send, 'listPersons', {}),
      // @ts-expect-error the body is missing
      call(send, 'addAgent', {}),
      // @ts-expect-error the body lacks a name
      call(send, 'addAgent', { body: { id: PERSON } }),
      // @ts-expect-error only CSV can be asked for
      call(send, 'exportPerson', { params: { book: 'care', person: PERSON }, query: { as: 'pdf' } }),
    ];
    expect(wrong).toBeTypeOf('function');
  });

  test('an answer must be looked at before its value is', () => {
    const careless = (came: Answer<About>) => {
      // @ts-expect-error a refusal has no value
      return came.value;
    };
    expect(careless({ ok: false, status: 0, offline: true, problem: null })).toBeUndefined();
  });
});
