import { PATHS } from '@evenfall/api';
import { Validator } from '@seriousme/openapi-schema-validator';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

describe('the edge of the server', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  test.each([
    ['a body that is not JSON', '{"entries": [', {}, 400],
    ['a form of another site', 'entries=1', { 'content-type': 'application/x-www-form-urlencoded' }, 415],
    ['plain text, which a foreign page may send unasked', '{}', { 'content-type': 'text/plain' }, 415],
    ['a page of another origin', '{}', { origin: 'http://elsewhere.example' }, 403],
    ['a page of another port', '{}', { origin: 'http://localhost:9' }, 403],
    ['a name made to point here', '{}', { host: 'evenfall.example' }, 403],
    ['a request another site started', '{}', { 'sec-fetch-site': 'cross-site' }, 403],
    ['a body over the limit', `{"entries": "${'x'.repeat(9_000_000)}"}`, {}, 413],
    ['values that are refused', '{"entries": []}', {}, 422],
  ] as const)('answers %s with a problem document', async (_, body, headers, status) => {
    const came = await clinic.send('POST', '/api/entries', body, headers);
    expect(came.status).toBe(status);
    // RFC 9457 (problem details for HTTP APIs), section 3.
    expect(came.headers.get('content-type')).toBe('application/problem+json');
    expect(came.body).toMatchObject({ type: 'about:blank', status, title: expect.stringMatching(/\w/) });
  });

  test('an address that is not there, and a person who is not, are 404', async () => {
    expect((await clinic.send('GET', '/api/nothing')).status).toBe(404);
    const nobody = '/api/books/care/persons/01950000-0000-7000-8000-000000000000';
    for (const [method, path, body] of [
      ['GET', nobody, undefined],
      ['GET', `${nobody}/export`, undefined],
      [
        'DELETE',
        `${nobody}/identity`,
        { entry: clinic.frame('identity-erased', nobody.slice(-36), { reason: 'x' }) },
      ],
    ] as const) {
      const came = await clinic.send(method, path, body);
      expect([came.status, came.headers.get('content-type')]).toEqual([404, 'application/problem+json']);
    }
  });

  test('every refusal names its place, what was expected and what came, all together', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 19, 15);
    const came = await clinic.sign(
      { ...pulse, id: 'mine' as never, role: 'boss' as never, extra: 1 } as never,
      {
        ...pulse,
        measuredAt: { ...pulse.measuredAt, at: 'yesterday' },
      },
    );
    const found = came.body.problems.map(
      ({ field, code, got }: { field: string; code: string; got: string }) => [field, code, got],
    );
    expect(found).toEqual(
      expect.arrayContaining([
        ['/entries/0/id', 'contradicts', 'mine'],
        ['/entries/0/role', 'unknown-id', 'boss'],
        ['/entries/0/extra', 'unknown-field', 'extra'],
        ['/entries/1/measuredAt/at', 'not-a-time', 'yesterday'],
      ]),
    );
    for (const { expected, message } of came.body.problems) {
      expect(expected).toMatch(/\w/);
      expect(message).not.toMatch(/undefined|NaN|\[object/);
    }
  });

  test('a value measured far ahead of the clock is refused; a day line away is not', async () => {
    const person = await clinic.addPerson();
    const at = (text: string) => ({ measuredAt: { at: text, zone: 'Pacific/Kiritimati', asEntered: null } });
    expect((await clinic.sign(clinic.pulse(person, 36, 30, at('2026-11-26T00:00:00+14:00')))).status).toBe(
      201,
    );
    const ahead = await clinic.sign(clinic.pulse(person, 36, 30, at('2027-11-25T10:00:00+00:00')));
    expect(ahead.body.problems).toMatchObject([{ field: '/entries/0/measuredAt/at', code: 'out-of-range' }]);
  });

  test('answers hold the strict headers, and data is never kept by a cache', async () => {
    const { headers } = await clinic.send('GET', '/api/books/care/persons');
    const policy = headers.get('content-security-policy') ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe|http|\*|data:/);
    expect(headers.get('cache-control')).toBe('no-store');
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('referrer-policy')).toBe('no-referrer');
  });

  test('the log has a line for each request, and no name, number or id of anybody', async () => {
    clinic.log.length = 0;
    const person = await clinic.addPerson();
    await clinic.sign(clinic.pulse(person, 36, 30));
    await clinic.chart(person);
    await clinic.send('GET', `/api/books/care/persons/${person}?name=${HESTER.name}`);
    expect(clinic.log.map(({ method, route, status }) => [method, route, status])).toEqual([
      ['POST', '/api/books/:book/persons', 201],
      ['POST', '/api/entries', 201],
      ['GET', '/api/books/:book/persons/:person', 200],
      ['GET', '/api/books/:book/persons/:person', 200],
    ]);
    expect(JSON.stringify(clinic.log)).not.toMatch(/Quillfeather|INV-77|1961|[0-9a-f]{8}-[0-9a-f]{4}/);
  });

  test('the OpenAPI document is valid 3.1 and has every route', async () => {
    const { body } = await clinic.send('GET', '/api/openapi.json');
    const checked = await new Validator().validate(structuredClone(body));
    expect(checked.errors ?? []).toEqual([]);
    expect(body.openapi).toBe('3.1.0');
    for (const { method, path } of Object.values(PATHS))
      expect(body.paths[path], `${method} ${path}`).toHaveProperty(method);
  });

  test('an agent sent twice is kept once; another name under the same id is a conflict', async () => {
    const agent = { id: clinic.personFrame(HESTER).id, name: 'Ines (invented)' };
    const statuses = [];
    for (const sent of [agent, agent, { ...agent, name: 'Other (invented)' }]) {
      statuses.push((await clinic.send('POST', '/api/agents', sent)).status);
    }
    expect(statuses).toEqual([201, 200, 409]);
    expect((await clinic.send('GET', '/api/agents')).body.agents).toContainEqual({
      ...agent,
      isLearning: false,
    });
  });

  test('nothing of all this was a fault of the program', () => {
    expect(clinic.faults).toEqual([]);
  });
});
