import { randomBytes } from 'node:crypto';
import { readFile, rename, rm, stat, symlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { errorCode } from '../problem.js';

/** The package's own list of its links, in its folder `native`. */
export const LINK_LIST = 'pg-symlinks.json';

type Link = { readonly path: string; readonly leadsTo: string };

/**
 * Makes the links between library names that the package's install script would have made; npm 12 and
 * `--ignore-scripts` block it, and the server then stops for want of a library. Links that are there are kept.
 */
export async function makeLinks(native: string): Promise<void> {
  for (const { path, leadsTo } of await linksOf(native)) {
    if (await leadsSomewhere(path)) continue;
    const beside = `${path}.${randomBytes(6).toString('hex')}`;
    await symlink(leadsTo, beside);
    await rename(beside, path).catch(async (error: unknown) => {
      await rm(beside, { force: true });
      throw error;
    });
  }
}

/** Whether every link is there and leads to a file. */
export async function areLinksWhole(native: string): Promise<boolean> {
  for (const { path } of await linksOf(native)) {
    if (!(await leadsSomewhere(path))) return false;
  }
  return true;
}

/** The package's own list; its paths start at the folder above `native`. No list, no links (Windows). */
async function linksOf(native: string): Promise<Link[]> {
  const text = await readFile(join(native, LINK_LIST), 'utf8').catch((error: unknown) => {
    if (errorCode(error) === 'ENOENT') return '[]';
    throw error;
  });
  const list = JSON.parse(text) as { source: string; target: string }[];
  return list.map(({ source, target }) => ({
    path: join(dirname(native), target),
    leadsTo: dirname(source) === dirname(target) ? basename(source) : join(dirname(native), source),
  }));
}

async function leadsSomewhere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
