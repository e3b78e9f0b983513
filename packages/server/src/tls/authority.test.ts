import { execFileSync, spawnSync } from 'node:child_process';
import { X509Certificate } from 'node:crypto';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connect, createServer, type TLSSocket } from 'node:tls';
import { describe, expect, onTestFinished, test } from 'vitest';
import { issue, LEAF_DAYS, makeAuthority } from './authority.js';
import type { MachineNames } from './machineNames.js';

const WARD: MachineNames = {
  names: ['ward-pc', 'ward-pc.local'],
  addresses: ['192.168.7.20', '203.0.113.9', 'fd00::2'],
};
const NOW = new Date();
const authority = await makeAuthority(WARD, NOW);
const server = await issue(authority, WARD, NOW);

describe('a certificate of the local authority, judged by Node', () => {
  const read = new X509Certificate(server.certificate);
  const issuer = new X509Certificate(authority.certificate);

  test('is signed by the authority, which is one and the certificate is none', () => {
    expect(read.verify(issuer.publicKey)).toBe(true);
    expect(read.checkIssued(issuer)).toBe(true);
    expect([issuer.ca, read.ca]).toEqual([true, false]);
    expect(issuer.verify(read.publicKey)).toBe(false);
  });

  test('stands for every name and address of the machine, and for no other', () => {
    for (const name of WARD.names) expect(read.checkHost(name), name).toBe(name);
    for (const address of WARD.addresses) expect(read.checkIP(address), address).toBe(address);
    expect(read.checkHost('ward-pc.example')).toBeUndefined();
    expect(read.checkIP('192.168.7.21')).toBeUndefined();
  });

  // CA/Browser Forum ballot SC31: 398 days at most (from memory); the brief of this project asks for 397 or less.
  test('is valid now and for no more than 397 days', () => {
    const [from, to] = [Date.parse(read.validFrom), Date.parse(read.validTo)];
    expect(from).toBeLessThan(NOW.getTime());
    expect((to - from) / 86_400_000).toBe(LEAF_DAYS);
    expect(LEAF_DAYS).toBeLessThanOrEqual(397);
  });
});

/** A handshake between a server with the certificate and a client that trusts the authority alone. */
async function handshake(certified: typeof server, name: string): Promise<string> {
  const listening = createServer({ key: certified.key, cert: certified.certificate });
  onTestFinished(() => void listening.close());
  await new Promise<void>((resolve) => listening.listen(0, '127.0.0.1', resolve));
  const { port } = listening.address() as { port: number };
  return new Promise((resolve) => {
    const options = { host: '127.0.0.1', port, ca: authority.certificate, minVersion: 'TLSv1.3' as const };
    const client: TLSSocket = connect({ ...options, servername: name }, () => {
      client.destroy();
      resolve('trusted');
    });
    client.on('error', (error) => resolve(error.message));
  });
}

describe('trust in the authority, judged by OpenSSL', () => {
  test('reaches its own server', async () => {
    expect(await handshake(server, 'ward-pc.local')).toBe('trusted');
  });

  test('never reaches a site of the internet or another address, though the authority signed for it', async () => {
    const other = { names: ['bank.example'], addresses: ['203.0.113.10'] };
    const forged = await issue(authority, other, NOW);
    expect(await handshake(forged, 'bank.example')).toBe('permitted subtree violation');
    const byAddress = await issue(authority, { names: [], addresses: ['203.0.113.10'] }, NOW);
    expect(await handshake(byAddress, '')).toBe('permitted subtree violation');
  });

  test('covers another private address of tomorrow', async () => {
    const tomorrow = await issue(authority, { names: ['ward-pc.local'], addresses: ['10.1.2.3'] }, NOW);
    expect(await handshake(tomorrow, 'ward-pc.local')).toBe('trusted');
  });

  test.runIf(spawnSync('openssl', ['version']).status === 0)(
    'openssl verify -x509_strict agrees',
    async () => {
      const folder = await mkdtemp(join(tmpdir(), 'evenfall-tls-'));
      onTestFinished(() => rm(folder, { recursive: true, force: true }));
      const [ca, leaf] = [join(folder, 'ca.pem'), join(folder, 'leaf.pem')];
      await writeFile(ca, authority.certificate);
      await writeFile(leaf, server.certificate);
      const verify = (...more: string[]) =>
        spawnSync(
          'openssl',
          ['verify', '-x509_strict', '-purpose', 'sslserver', '-CAfile', ca, ...more, leaf],
          {
            encoding: 'utf8',
          },
        );
      expect(verify('-verify_ip', 'fd00::2').stdout).toContain('leaf.pem: OK');
      expect(verify('-verify_hostname', 'ward-pc.local').stdout).toContain('leaf.pem: OK');
      expect(verify('-verify_ip', '192.168.7.21').status).not.toBe(0);
      const text = execFileSync('openssl', ['x509', '-in', ca, '-noout', '-text'], { encoding: 'utf8' });
      expect(text).toMatch(/Basic Constraints: critical\s+CA:TRUE, pathlen:0/);
      expect(text).toMatch(/Key Usage: critical\s+Certificate Sign\s/);
      expect(text).toMatch(/Name Constraints: critical\s+Permitted:\s+DNS:ward-pc\s/);
      expect(text).toContain('IP:172.16.0.0/255.240.0.0');
      expect(text).toContain('IP:203.0.113.9/255.255.255.255');
    },
  );
});
