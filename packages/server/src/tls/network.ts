import { createServer, type RequestListener } from 'node:http';
import { createServer as createTlsServer } from 'node:https';
import { isIP, type Server } from 'node:net';
import type { Lan, LanSettings } from '@evenfall/api';
import { getRequestListener } from '@hono/node-server';
import { StartRefused } from '../start/startRefused.js';
import type { Certified } from './authority.js';
import type { Certificates } from './certificates.js';
import { frontDoor } from './frontDoor.js';
import { fingerprintOf } from './keepCertificate.js';
import { asHost, hostsOf, type MachineNames, machineNames } from './machineNames.js';
import { terminalPicture } from './picture.js';
import { forCamera } from './reachPage.js';
import { plainApp, type Reached } from './reachRoutes.js';

export type NetworkOptions = {
  readonly lan: LanSettings;
  readonly certificates: Certificates;
  /** Nobody needs to sign in. */
  readonly isOpen: boolean;
  readonly isInvented: () => boolean;
  readonly now: () => Date;
  readonly fault: (error: unknown) => void;
};

/** A server in the network: what it is called, what says how to reach it, and its port once that is open. */
export type Network = {
  readonly hosts: () => ReadonlySet<string>;
  readonly reached: Reached;
  /**
   * Opens the port. `app` answers by TLS from anywhere, and on plain HTTP from this machine alone.
   * Errors: what `listening` throws.
   */
  open(
    app: RequestListener,
    port: number,
    listening: (server: Server, listen: () => void) => Promise<void>,
  ): Promise<number>;
  close(): Promise<void>;
};

/** How often the machine's addresses and the end of the certificate are looked at. Source: decision of this project. */
const LOOK_MS = 60_000;

/** Errors: `StartRefused`. */
export async function network({ lan, certificates, ...options }: NetworkOptions): Promise<Network> {
  let machine = machineNames(lan.host);
  refuseUnreachable(lan, machine);
  let shown = await certificates(machine, options.now());
  let port = 0;
  const closing: (() => Promise<void>)[] = [];
  const reached: Reached = {
    lan: () => lanOf(machine, port, shown.authority, options.isOpen),
    authority: () => shown.authority,
    isInvented: options.isInvented,
  };

  return {
    hosts: () => hostsOf(machine),
    reached,
    async open(app, wanted, listening) {
      const secure = createTlsServer(secureOptions(shown.server), app);
      const own = createServer(app);
      const explained = createServer(getRequestListener(plainApp(reached).fetch));
      const front = frontDoor(secure, (isLoopback) => (isLoopback ? own : explained));
      await listening(front.door, () => front.door.listen(wanted, lan.host ?? undefined));
      closing.push(front.close);
      const bound = front.door.address();
      port = typeof bound === 'object' && bound !== null ? bound.port : wanted;
      const look = async () => {
        const found = machineNames(lan.host);
        if (found.addresses.length > 0) machine = found; // a network that is away for a moment changes nothing
        const next = await certificates(machine, options.now());
        if (next.server.certificate !== shown.server.certificate)
          secure.setSecureContext(secureOptions(next.server));
        shown = next;
      };
      const timer = setInterval(() => void look().catch(options.fault), LOOK_MS);
      timer.unref();
      closing.push(async () => clearInterval(timer));
      return port;
    },
    async close() {
      for (const close of closing.splice(0)) await close();
    },
  };
}

function refuseUnreachable({ host }: LanSettings, { addresses }: MachineNames): void {
  if (addresses.length === 0) throw new StartRefused('lan-no-address', '--host');
  const isOne = host !== null && isIP(host) !== 0 && !['0.0.0.0', '::'].includes(host);
  if (isOne && !machineNames(null).addresses.includes(host.toLowerCase()) && !/^127\./.test(host))
    throw new StartRefused('host-unknown', '--host', {}, { got: host });
}

function secureOptions({ certificate, key }: Certified) {
  return { cert: certificate, key, minVersion: 'TLSv1.2' as const };
}

function lanOf(machine: MachineNames, port: number, authority: string | null, isOpen: boolean): Lan {
  const at = (scheme: string, name: string) => `${scheme}://${asHost(name)}:${port}/`;
  // A given certificate is for a name; a phone finds the machine by its address more surely than by its name.
  const ways =
    authority === null ? [...machine.names, ...machine.addresses] : [...machine.addresses, ...machine.names];
  const addresses = ways.map((name) => at('https', name));
  const explained = authority === null ? null : at('http', machine.addresses[0] ?? '');
  return {
    addresses,
    explained,
    fingerprint: authority === null ? null : fingerprintOf(authority),
    picture: terminalPicture(forCamera({ addresses, explained })),
    isOpen,
  };
}
