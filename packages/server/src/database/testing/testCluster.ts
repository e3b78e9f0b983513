import { join } from 'node:path';
import { databaseAccount } from '../account/account.js';
import { findBinaries } from '../binaries/findBinaries.js';
import type { Cluster } from '../cluster/postmaster.js';
import { prepareFolder } from '../folder/prepareFolder.js';
import { socketFolder } from '../folder/socketFolder.js';

/** All that a cluster in `outer` needs, nothing of it made yet but its folder. */
export async function testCluster(
  outer: string,
  env: NodeJS.ProcessEnv = {},
): Promise<Cluster & { readonly socketFolder: string }> {
  const account = await databaseAccount({ kind: 'throwaway' });
  const layout = await prepareFolder(join(outer, 'data'), 'clinic', account);
  const sockets = await socketFolder(layout, account);
  const binaries = await findBinaries(account, env);
  return { layout, account, binaries, endpoint: { kind: 'socket', folder: sockets }, socketFolder: sockets };
}
