import { X509Certificate } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { isIP } from 'node:net';
import { join } from 'node:path';
import { type Authority, type Certified, issue, makeAuthority } from './authority.js';
import type { MachineNames } from './machineNames.js';
import { permits } from './permitted.js';

/** How files of the data folder are written: whole or not at all, open to their owner alone. */
export type KeyFiles = {
  readonly folder: string;
  readonly write: (path: string, text: string) => Promise<void>;
};

/** What a server shows, and the authority that phones are to trust. */
export type Kept = { readonly authority: Authority; readonly server: Certified };

const DAY_MS = 86_400_000;
/** A certificate is made anew this long before its end. Source: decision of this project. */
const RENEW_DAYS = 30;

/**
 * The authority and the server's certificate of a data folder: those that are there, or new ones. The certificate is
 * made anew when the machine's names change or its end is near; the authority only where it may not vouch for them
 * or ends itself, since every phone must then trust the new one.
 *
 * Errors: throws where the folder cannot be read or written.
 */
export async function keepCertificate(files: KeyFiles, machine: MachineNames, now: Date): Promise<Kept> {
  const authorityFile = join(files.folder, 'authority.json');
  const serverFile = join(files.folder, 'server.json');
  const found = await readJson<Authority>(authorityFile);
  const isGood = found !== null && permits(found.permitted, machine) && lasts(found.certificate, now, 400);
  const authority = isGood ? found : await makeAuthority(machine, now);
  if (!isGood) await files.write(authorityFile, JSON.stringify(authority));
  const old = await readJson<Certified>(serverFile);
  if (old !== null && fits(old.certificate, authority, machine, now)) return { authority, server: old };
  const server = await issue(authority, machine, now);
  await files.write(serverFile, JSON.stringify(server));
  return { authority, server };
}

/** Whether a server's certificate is the authority's, names all that the machine is called, and is not near its end. */
export function fits(pem: string, authority: Certified, machine: MachineNames, now: Date): boolean {
  const certificate = new X509Certificate(pem);
  return (
    certificate.checkIssued(new X509Certificate(authority.certificate)) &&
    certificate.verify(new X509Certificate(authority.certificate).publicKey) &&
    [...machine.names, ...machine.addresses].every((name) => isNamed(certificate, name)) &&
    lasts(pem, now, RENEW_DAYS)
  );
}

function isNamed(certificate: X509Certificate, name: string): boolean {
  return (isIP(name) === 0 ? certificate.checkHost(name) : certificate.checkIP(name)) !== undefined;
}

function lasts(pem: string, now: Date, days: number): boolean {
  return Date.parse(new X509Certificate(pem).validTo) - now.getTime() > days * DAY_MS;
}

/** SHA-256 of a certificate, in pairs of hexadecimal digits as phones show it. */
export function fingerprintOf(pem: string): string {
  return new X509Certificate(pem).fingerprint256;
}

async function readJson<T>(path: string): Promise<T | null> {
  try {
    return JSON.parse(await readFile(path, 'utf8')) as T;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}
