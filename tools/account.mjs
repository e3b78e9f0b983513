/**
 * Why `npm start` is refused to root, or null: a clinic's record never belongs to root, and that is better said before
 * minutes of installing than after them. The server itself refuses by the same rule (`account-needed`).
 *
 * @param args what follows `npm start --`
 * @param uid the number of the account that runs this; undefined where the system has none
 */
export function accountNeeded(args, env, uid) {
  if (uid !== 0) return null;
  const is = (...names) =>
    args.some((arg) => names.some((name) => arg === name || arg.startsWith(`${name}=`)));
  if (is('--demo', '--account', '--help', '--version')) return null;
  if (env.EVENFALL_ACCOUNT) return null;
  if (env.DATABASE_URL && !is('--data')) return null;
  const account = env.SUDO_USER && env.SUDO_USER !== 'root' ? env.SUDO_USER : 'NAME';
  return `This is the machine's root account, and a clinic's record never belongs to root: name whose it is with npm start -- --account ${account}, or set EVENFALL_ACCOUNT=${account}. The demo needs none: npm start -- --demo.`;
}
