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
  return bytesToHex(sha256(utf8ToBytes(canonicalJson(protocolDocument(protocol)))));
}
