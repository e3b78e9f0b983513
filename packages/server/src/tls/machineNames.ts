import { isIP, isIPv6 } from 'node:net';
import { hostname, type NetworkInterfaceInfo, networkInterfaces } from 'node:os';

/** What this machine is called and where it is reached in its network: lower case, nothing twice. */
export type MachineNames = {
  /** Its host name, and the name that multicast DNS answers to. */
  readonly names: readonly string[];
  /** IPv4 addresses first. None of the loopback, none that needs a zone (`fe80::`). */
  readonly addresses: readonly string[];
};

export type Machine = {
  readonly hostname: string;
  readonly interfaces: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>;
};

export function thisMachine(): Machine {
  return { hostname: hostname(), interfaces: networkInterfaces() };
}

/**
 * The names under which a server is reached that listens at `host`: every address of the machine where it listens
 * at all of them, else that one. A `host` that is a name is one more name.
 */
export function machineNames(host: string | null, machine: Machine = thisMachine()): MachineNames {
  const own = machine.hostname.toLowerCase();
  const isName = /^[a-z0-9]([a-z0-9-]*[a-z0-9])?(\.[a-z0-9]([a-z0-9-]*[a-z0-9])?)*$/;
  const short = own.split('.')[0] ?? own;
  const named = host !== null && isIP(host) === 0 ? [host.toLowerCase()] : [];
  const names = [own, `${short}.local`, ...named].filter((name) => isName.test(name) && name !== 'localhost');
  const all = Object.values(machine.interfaces)
    .flatMap((found) => found ?? [])
    .filter(({ internal, address }) => !internal && !/^fe[89ab]/i.test(address))
    .map(({ address }) => address.toLowerCase());
  const isEverywhere = host === null || host === '0.0.0.0' || host === '::' || isIP(host) === 0;
  const addresses = isEverywhere ? all : [host.toLowerCase()];
  return {
    names: [...new Set(names)],
    addresses: [...new Set(addresses)].sort((a, b) => Number(isIPv6(a)) - Number(isIPv6(b))),
  };
}

/** A name or address as it stands in an address of the web, and in the `Host` of a request. */
export function asHost(name: string): string {
  return isIPv6(name) ? `[${name}]` : name;
}

/** All that a request may name as its host, without a port. */
export function hostsOf({ names, addresses }: MachineNames): ReadonlySet<string> {
  return new Set([...names, ...addresses].map(asHost));
}
