import type { NetworkInterfaceInfo } from 'node:os';
import { expect, test } from 'vitest';
import { hostsOf, machineNames } from './machineNames.js';

const at = (address: string, internal = false) => ({ address, internal }) as NetworkInterfaceInfo;
const machine = {
  hostname: 'Ward-PC.clinic.example',
  interfaces: {
    lo: [at('127.0.0.1', true), at('::1', true)],
    eth0: [at('FD00::2'), at('192.168.7.20'), at('fe80::1')],
    wlan0: [at('10.0.0.4')],
  },
};

test.each([null, '0.0.0.0', '::'])('listening at %s, a machine has all its names and addresses', (host) => {
  expect(machineNames(host, machine)).toEqual({
    names: ['ward-pc.clinic.example', 'ward-pc.local'],
    addresses: ['192.168.7.20', '10.0.0.4', 'fd00::2'],
  });
});

test('listening at one address it has that one; a name is one more name', () => {
  expect(machineNames('10.0.0.4', machine).addresses).toEqual(['10.0.0.4']);
  expect(machineNames('vitals.example', machine).names).toContain('vitals.example');
});

test('an address of version 6 stands in brackets where a request names its host (RFC 3986, 3.2.2)', () => {
  expect(hostsOf({ names: ['ward-pc'], addresses: ['fd00::2'] })).toEqual(new Set(['ward-pc', '[fd00::2]']));
});
