import { openDatabase } from '../packages/server/dist/database/openDatabase.js';

/** The embedded database of a folder that a server used before, opened as the server opens it. */
export function openEmbeddedIn(folder) {
  const account = process.getuid?.() === 0 ? { account: { kind: 'named', account: 'nobody' } } : {};
  const { DATABASE_URL: _shared, ...env } = process.env;
  return openDatabase({ folder, env, ...account });
}
