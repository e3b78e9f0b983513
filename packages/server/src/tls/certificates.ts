import { readFile } from 'node:fs/promises';
import { createSecureContext } from 'node:tls';
import type { LanSettings } from '@evenfall/api';
import { makeOwnedFolder, writeOwned } from '../database/account/ownedFile.js';
import type { Keeper } from '../database/keeper/keeper.js';
import { StartRefused } from '../start/startRefused.js';
import type { Certified } from './authority.js';
import { keepCertificate } from './keepCertificate.js';
import type { MachineNames } from './machineNames.js';

/** What the server shows now, and the certificate of the local authority; null with a given certificate. */
export type Shown = { readonly server: Certified; readonly authority: string | null };

/** Brings what to show up to date: the given certificate as its files are now, or the local authority's. */
export type Certificates = (machine: MachineNames, now: Date) => Promise<Shown>;

/** Errors: `StartRefused` where a given certificate cannot be used, or there is no folder for one of our own. */
export async function certificatesFor(lan: LanSettings, keeper: Keeper | null): Promise<Certificates> {
  const { given } = lan;
  if (given !== null) {
    return async () => ({ server: await readGiven(given), authority: null });
  }
  if (keeper === null) throw new StartRefused('lan-no-folder', '--certificate');
  const { account, layout } = keeper;
  await makeOwnedFolder(layout.tls, account);
  const files = {
    folder: layout.tls,
    write: (path: string, text: string) => writeOwned(path, text, account),
  };
  return async (machine, now) => {
    const { authority, server } = await keepCertificate(files, machine, now);
    return { server, authority: authority.certificate };
  };
}

async function readGiven(given: NonNullable<LanSettings['given']>): Promise<Certified> {
  try {
    const [certificate, key] = await Promise.all([
      readFile(given.certificate, 'utf8'),
      readFile(given.key, 'utf8'),
    ]);
    createSecureContext({ cert: certificate, key });
    return { certificate, key };
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unknown';
    throw new StartRefused('certificate-unreadable', '--certificate', {}, { names: { reason } });
  }
}
