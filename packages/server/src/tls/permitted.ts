import { BlockList, isIP, isIPv6 } from 'node:net';
import type { MachineNames } from './machineNames.js';

/** A block of addresses. */
export type Block = { readonly address: string; readonly bits: number };

/** What an authority may vouch for: names (and what lies below them) and blocks of addresses. */
export type Permitted = { readonly names: readonly string[]; readonly blocks: readonly Block[] };

/**
 * Addresses that no machine of the open internet has: a machine's own address changes among them from day to day.
 * Sources: RFC 1918, RFC 3927, RFC 4193, RFC 4291 and RFC 1122 (loopback).
 */
export const PRIVATE_BLOCKS: readonly Block[] = [
  { address: '10.0.0.0', bits: 8 },
  { address: '172.16.0.0', bits: 12 },
  { address: '192.168.0.0', bits: 16 },
  { address: '169.254.0.0', bits: 16 },
  { address: '127.0.0.0', bits: 8 },
  { address: 'fc00::', bits: 7 },
  { address: 'fe80::', bits: 10 },
  { address: '::1', bits: 128 },
];

/**
 * The least that lets an authority vouch for this machine tomorrow too: its own names, private addresses, and those
 * of its addresses that are not private, one by one. Who steals its key can pose as no site of the internet.
 */
export function permittedFor({ names, addresses }: MachineNames): Permitted {
  const open = addresses.filter((address) => !isWithin(PRIVATE_BLOCKS, address));
  return {
    names: [...names, 'localhost'],
    blocks: [...PRIVATE_BLOCKS, ...open.map((address) => ({ address, bits: isIPv6(address) ? 128 : 32 }))],
  };
}

/** Whether an authority that may vouch for `permitted` may vouch for all of these. */
export function permits(permitted: Permitted, { names, addresses }: MachineNames): boolean {
  const isBelow = (name: string) =>
    permitted.names.some((allowed) => name === allowed || name.endsWith(`.${allowed}`));
  return names.every(isBelow) && addresses.every((address) => isWithin(permitted.blocks, address));
}

function isWithin(blocks: readonly Block[], address: string): boolean {
  const list = new BlockList();
  for (const block of blocks) list.addSubnet(block.address, block.bits, familyOf(block.address));
  return list.check(address, familyOf(address));
}

function familyOf(address: string): 'ipv4' | 'ipv6' {
  return isIP(address) === 6 ? 'ipv6' : 'ipv4';
}
