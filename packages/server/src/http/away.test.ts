import { setTimeout as sleep } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { openEmbedded } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

test('while the database is away that is said, nothing is told of how it is reached, and sent again it is kept', async () => {
  const database = await openEmbedded();
  const clinic = await TestClinic.open(database);
  const pulse = clinic.pulse(await clinic.addPerson(), 36, 30);
  process.kill(-(database.keeper?.postgresPid() ?? Number.NaN), 'SIGKILL');
  const came = await clinic.sign(pulse);
  expect([came.status, Number(came.headers.get('retry-after'))]).toEqual([503, 5]);
  expect(came.body).toMatchObject({
    status: 503,
    detail: expect.stringContaining('Nothing of this was kept'),
  });
  expect(came.text).not.toMatch(/postgres|evenfall-|127\.0\.0\.1|ECONN|ENOENT/i);
  // Its keeper starts it again.
  let again = came;
  for (const until = Date.now() + 20_000; again.status === 503 && Date.now() < until; await sleep(100))
    again = await clinic.sign(pulse);
  expect(again.status).toBe(201);
  expect((await clinic.sign(pulse)).status).toBe(200);
  await database.close();
}, 60_000);
