import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalJson } from './canonicalJson.js';
import { protocolDocument } from './document.js';
import type { Protocol } from './protocol.js';

/**
 * The name of a protocol's content: the SHA-256 of its canonical JSON (RFC 8785), 64 lower-case hex digits.
 * It does not depend on the order of keys; any change of a value, a source, a sureness or a
 * section's preset changes it. A protocol of an older schema is hashed as that schema writes it.
 */
export function protocolVersion(protocol: Protocol): string {
  const known = KNOWN.get(protocol);
  if (known !== undefined) return known;
  const version = bytesToHex(sha256(utf8ToBytes(canonicalJson(protocolDocument(protocol)))));
  KNOWN.set(protocol, version);
  return version;
}

/** A protocol is never changed once it is made, and an answer for each file of a folder names the same one. */
const KNOWN = new WeakMap<Protocol, string>();
