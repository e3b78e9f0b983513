/** What a sentence about a refused start may quote: paths, accounts, the text to type; and numbers, as text. */
type Names = Readonly<Record<string, string>>;

/** Why the record could not be opened, and what to do: one sentence for each code the server gives. */
export const starting = {
  'account-needed': (n) =>
    `This is the machine's root account, and a clinic's record never belongs to root: name whose it is with ${n.type ?? '--account NAME'}, or set ${n.variable ?? 'EVENFALL_ACCOUNT'}. The demo needs none (--demo).`,
  'account-unknown': (n) => `There is no account named ${n.got} on this machine.`,
  'account-is-root': (n) => `A clinic's record never belongs to ${n.got}: name an ordinary account.`,
  'account-other': (n) =>
    `Only root can act for another account: this is ${n.expected}, and ${n.got} was named.`,
  'folder-unreachable': (n) =>
    `The account ${n.account} may not enter ${n.blocked}: let it in, or name another folder with --data.`,
  'lan-owner-needed': () =>
    `Beyond this machine Evenfall opens to nobody before there is an owner's account: make one with evenfall account add --name "..." --sign-in NAME --role owner, then start again.`,
  'lan-no-folder': () =>
    `With DATABASE_URL there is no folder for a certificate of Evenfall's own: give one with --certificate and --key.`,
  'lan-no-address': () =>
    `This machine has no address in a network: connect it, or name one of its addresses with --host.`,
  'host-unknown': (n) =>
    `This machine does not have the address ${n.got}: leave --host out, or name one it has.`,
  'certificate-unreadable': (n) => `The certificate or its key cannot be used: ${n.reason}`,
  'folder-owner': (n) =>
    `The folder belongs to another account (${n.owner ?? n.ownerId}): only that one opens it.`,
  'folder-not-ours': (n) =>
    `The folder ${n.got ?? ''} is not empty and holds no record of Evenfall: name another.`,
  'no-record': (n) =>
    `There is no record of Evenfall in ${n.folder ?? n.got}: look at the name of the folder (--data), or make one there: evenfall serve --data ${n.folder ?? n.got}. Nothing was made yet.`,
  'folder-other-purpose': () =>
    `Invented people and a real clinic never share a folder: leave out --demo, or name another folder.`,
  'folder-damaged': (n) =>
    `A part of the record in ${n.got ?? 'the folder'} is missing: restore the newest backup into a new folder.`,
  'folder-in-use': (n) =>
    n.address === undefined
      ? `Another process (${n.pid ?? 'unknown'}) keeps this folder.`
      : `Evenfall runs already: ${n.address} (process ${n.pid}).`,
  'folder-other-major': (n) =>
    `The record was written by PostgreSQL ${n.folderMajor}, and this one is ${n.binariesMajor}: back up with the old program (EVENFALL_PG_BIN), then restore into a new folder.`,
  'folder-unwritable': (n) => `The folder ${n.got ?? ''} cannot be written (${n.reason}).`,
  'socket-folder-taken': (n) =>
    `The folder for sockets ${n.got ?? ''} exists and belongs to somebody else: remove it.`,
  'binaries-missing': () =>
    `No PostgreSQL comes with Evenfall for this kind of machine: name one with EVENFALL_PG_BIN, or a server with DATABASE_URL.`,
  'binaries-unreachable': (n) =>
    `The account ${n.account} may not run PostgreSQL from ${n.got ?? 'its folder'}.`,
  'binaries-unusable': (n) => `PostgreSQL does not start here: ${n.log ?? n.reason ?? n.got}`,
  'binaries-too-old': (n) => `PostgreSQL ${n.oldestMajor} or newer is needed: ${n.got}.`,
  'create-failed': (n) => `PostgreSQL could not make its folder: ${n.log}`,
  'start-failed': (n) => `PostgreSQL stopped while starting: ${n.log}`,
  'start-too-slow': (n) => `PostgreSQL did not answer in time: ${n.log}`,
  'server-unreachable': (n) => `The PostgreSQL of DATABASE_URL does not answer (${n.reason}).`,
  'server-refused': (n) => `The PostgreSQL of DATABASE_URL refuses this account or database (${n.reason}).`,
  'server-too-old': (n) =>
    `The PostgreSQL of DATABASE_URL is too old: ${n.expected} is needed, this is ${n.got}.`,
  'server-not-utf8': (n) => `The database of DATABASE_URL must be UTF8; it is ${n.got}.`,
  'pages-missing': () => `The app in the browser was not built: npm start builds it (or npm run build).`,
  'port-in-use': (n) => `Another program listens on port ${n.port}: name a free one with --port.`,
  'site-other-purpose': () =>
    `Invented people and a real clinic never share a record: leave out --demo, or name another folder or database.`,
} as const satisfies Record<string, (names: Names) => string>;
