import { BlockList, isIPv6 } from 'node:net';
import type { Block, Permitted } from './permitted.js';

/** RFC 5280, section 4.2.1.10. */
export const NAME_CONSTRAINTS_OID = '2.5.29.30';

const SEQUENCE = 0x30;
const PERMITTED_SUBTREES = 0xa0;
const DNS_NAME = 0x82;
const IP_ADDRESS = 0x87;

/** `NameConstraints` with permitted subtrees alone, in DER. Source: RFC 5280, section 4.2.1.10. */
export function nameConstraints({ names, blocks }: Permitted): Uint8Array<ArrayBuffer> {
  const bases = [
    ...names.map((name) => der(DNS_NAME, Buffer.from(name, 'ascii'))),
    ...blocks.map((block) => der(IP_ADDRESS, addressAndMask(block))),
  ];
  const subtrees = Buffer.concat(bases.map((base) => der(SEQUENCE, base)));
  return new Uint8Array(der(SEQUENCE, der(PERMITTED_SUBTREES, subtrees)));
}

function der(tag: number, content: Uint8Array): Buffer {
  const { length } = content;
  const size =
    length < 0x80 ? [length] : length < 0x100 ? [0x81, length] : [0x82, length >> 8, length & 0xff];
  return Buffer.concat([Buffer.from([tag, ...size]), content]);
}

function addressAndMask({ address, bits }: Block): Buffer {
  const bytes = addressBytes(address);
  const mask = bytes.map((_, index) => {
    const set = Math.min(8, Math.max(0, bits - index * 8));
    return (0xff << (8 - set)) & 0xff;
  });
  return Buffer.concat([bytes, mask]);
}

/** 4 or 16 bytes. Errors: throws for a text that is no address. */
export function addressBytes(address: string): Buffer {
  if (!isIPv6(address)) {
    new BlockList().addAddress(address, 'ipv4'); // throws for what is none
    return Buffer.from(address.split('.').map(Number));
  }
  const [head = '', tail] = new URL(`http://[${address}]`).hostname.slice(1, -1).split('::');
  const groups = (text: string) => (text === '' ? [] : text.split(':'));
  const before = groups(head);
  const after = groups(tail ?? '');
  const between = new Array<string>(8 - before.length - after.length).fill('0');
  return Buffer.from(
    [...before, ...between, ...after].flatMap((group) => {
      const value = Number.parseInt(group, 16);
      return [value >> 8, value & 0xff];
    }),
  );
}
