import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { expect, onTestFinished, test } from 'vitest';
import { fingerprintOf, keepCertificate } from './keepCertificate.js';
import type { MachineNames } from './machineNames.js';

const WARD: MachineNames = { names: ['ward-pc', 'ward-pc.local'], addresses: ['192.168.7.20'] };
const DAY_MS = 86_400_000;
const NOW = new Date('2026-11-25T10:00:00Z');
const later = (days: number) => new Date(NOW.getTime() + days * DAY_MS);

async function folder() {
  const path = await mkdtemp(`${tmpdir()}/evenfall-tls-`);
  onTestFinished(() => rm(path, { recursive: true, force: true }));
  return { folder: path, write: (file: string, text: string) => writeFile(file, text, { mode: 0o600 }) };
}

test('authority and certificate stay the same from start to start', async () => {
  const files = await folder();
  const first = await keepCertificate(files, WARD, NOW);
  expect(await keepCertificate(files, WARD, later(1))).toEqual(first);
  expect(fingerprintOf(first.authority.certificate)).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/);
});

test('another private address makes a new certificate under the authority that phones trust already', async () => {
  const files = await folder();
  const first = await keepCertificate(files, WARD, NOW);
  const moved = await keepCertificate(files, { ...WARD, addresses: ['10.0.0.9'] }, NOW);
  expect(moved.authority).toEqual(first.authority);
  expect(moved.server.certificate).not.toBe(first.server.certificate);
});

test('a name the authority may not vouch for makes a new authority', async () => {
  const files = await folder();
  const first = await keepCertificate(files, WARD, NOW);
  const renamed = await keepCertificate(files, { ...WARD, names: ['clinic-pc'] }, NOW);
  expect(renamed.authority.certificate).not.toBe(first.authority.certificate);
});

// Valid from a day before it is made: 396 days are left, of which the last 30 renew it.
test.each([
  [365, true],
  [366, false],
  [367, false],
])('after %i days the certificate is the same: %s', async (days, same) => {
  const files = await folder();
  const first = await keepCertificate(files, WARD, NOW);
  const then = await keepCertificate(files, WARD, later(days));
  expect(then.server.certificate === first.server.certificate).toBe(same);
  expect(then.authority).toEqual(first.authority);
});

test('an authority never ends before what it signs', async () => {
  const files = await folder();
  const first = await keepCertificate(files, WARD, NOW);
  expect((await keepCertificate(files, WARD, later(3248))).authority).toEqual(first.authority);
  expect((await keepCertificate(files, WARD, later(3249))).authority).not.toEqual(first.authority);
});
