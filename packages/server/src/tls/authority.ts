import './reflectMetadata.js';
import { randomBytes, webcrypto } from 'node:crypto';
import {
  AuthorityKeyIdentifierExtension,
  BasicConstraintsExtension,
  ExtendedKeyUsage,
  ExtendedKeyUsageExtension,
  Extension,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectAlternativeNameExtension,
  SubjectKeyIdentifierExtension,
  X509Certificate,
  X509CertificateGenerator,
} from '@peculiar/x509';
import type { MachineNames } from './machineNames.js';
import { NAME_CONSTRAINTS_OID, nameConstraints } from './nameConstraints.js';
import { type Permitted, permittedFor } from './permitted.js';

/** A certificate with its key, both PEM. */
export type Certified = { readonly certificate: string; readonly key: string };

/** A certificate authority of this machine alone, and what it may vouch for. */
export type Authority = Certified & { readonly permitted: Permitted };

const KEYS = { name: 'ECDSA', namedCurve: 'P-256' } as const;
const SIGNED = { name: 'ECDSA', hash: 'SHA-256' } as const;
const DAY_MS = 86_400_000;

/** A phone whose clock is behind must still find the certificate begun. Source: decision of this project. */
const BEGINS_EARLIER_DAYS = 1;
/** A phone is made to trust it once. Source: decision of this project. */
const AUTHORITY_DAYS = 3650;
/** A server's certificate is taken by browsers for 398 days at most (CA/Browser Forum ballot SC31, from memory). */
export const LEAF_DAYS = 397;

/** Makes an authority for a machine: it vouches for servers directly, never through another authority. */
export async function makeAuthority(machine: MachineNames, now: Date): Promise<Authority> {
  const keys = await newKeys();
  const permitted = permittedFor(machine);
  const serialNumber = newSerial();
  const certificate = await X509CertificateGenerator.createSelfSigned({
    serialNumber,
    name: [{ CN: [`Evenfall on ${machine.names[0] ?? 'this machine'} (${serialNumber.slice(-6)})`] }],
    ...validFor(now, AUTHORITY_DAYS),
    keys,
    signingAlgorithm: SIGNED,
    extensions: [
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign, true),
      new Extension(NAME_CONSTRAINTS_OID, true, nameConstraints(permitted)),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  return { certificate: `${certificate.toString('pem')}\n`, key: await pemOf(keys.privateKey), permitted };
}

/** A server's certificate for all names and addresses of the machine, with a new key. */
export async function issue(authority: Authority, machine: MachineNames, now: Date): Promise<Certified> {
  const keys = await newKeys();
  const issuer = new X509Certificate(authority.certificate);
  const certificate = await X509CertificateGenerator.create({
    serialNumber: newSerial(),
    subject: [{ CN: [machine.names[0] ?? machine.addresses[0] ?? 'evenfall'] }],
    issuer: issuer.subject,
    ...validFor(now, LEAF_DAYS),
    publicKey: keys.publicKey,
    signingKey: await signingKey(authority.key),
    signingAlgorithm: SIGNED,
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      new SubjectAlternativeNameExtension([
        ...machine.names.map((value) => ({ type: 'dns', value }) as const),
        ...machine.addresses.map((value) => ({ type: 'ip', value }) as const),
      ]),
      await AuthorityKeyIdentifierExtension.create(issuer.publicKey),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  return { certificate: `${certificate.toString('pem')}\n`, key: await pemOf(keys.privateKey) };
}

function newKeys(): Promise<webcrypto.CryptoKeyPair> {
  return webcrypto.subtle.generateKey(KEYS, true, ['sign', 'verify']);
}

async function pemOf(key: webcrypto.CryptoKey): Promise<string> {
  const bytes = await webcrypto.subtle.exportKey('pkcs8', key);
  return `${PemConverter.encode(bytes, 'PRIVATE KEY')}\n`;
}

async function signingKey(pem: string): Promise<webcrypto.CryptoKey> {
  const bytes = PemConverter.decodeFirst(pem);
  return webcrypto.subtle.importKey('pkcs8', bytes, KEYS, false, ['sign']);
}

/** The last day is counted from the first, which lies before now. */
function validFor(now: Date, days: number): { readonly notBefore: Date; readonly notAfter: Date } {
  const notBefore = new Date(now.getTime() - BEGINS_EARLIER_DAYS * DAY_MS);
  return { notBefore, notAfter: new Date(notBefore.getTime() + days * DAY_MS) };
}

/** 16 random bytes, positive: RFC 5280, section 4.1.2.2. */
function newSerial(): string {
  const bytes = randomBytes(16);
  bytes[0] = ((bytes[0] ?? 0) & 0x7f) | 0x40;
  return bytes.toString('hex');
}
