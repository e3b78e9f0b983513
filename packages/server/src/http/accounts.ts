import { ROUTES } from '@evenfall/api';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { addAccount, type Changed, changeAccount, listAccounts } from '../signIn/accounts.js';
import { type AccountPart, accountLog } from './accountLog.js';
import { problemAnswer } from './problems.js';
import { notOf } from './signedIn.js';
import { unlessBusy } from './signIn.js';
import type { World } from './world.js';

/** Who signs in here: listed, made, changed and closed by an owner, or on the socket of the folder's own account. */
export function accountRoutes(app: OpenAPIHono, world: World, isTrusted: boolean): void {
  const { db, site, now } = world;
  const log = accountLog(world.log, now);
  const by = (c: Context) => {
    const asker = c.get('asker');
    return asker === 'anybody' ? null : asker.account;
  };

  /** The first account is made on the command line: in a browser anybody could make it, and be the owner. */
  const barred = (c: Context) =>
    c.get('asker') === 'anybody' && !isTrusted ? problemAnswer(c, 403) : notOf(c, 'owner');

  app.openapi(ROUTES.listAccounts, async (c) => {
    const refused = barred(c);
    if (refused !== null) return refused as never;
    return c.json({ accounts: (await listAccounts(db, site().id)).map(shown) }, 200);
  });

  app.openapi(ROUTES.addAccount, async (c) => {
    const refused = barred(c);
    if (refused !== null) return refused as never;
    return (await unlessBusy(c, async () =>
      answered(c, await addAccount(db, site().id, c.req.valid('json')), 201, ['made']),
    )) as never;
  });

  app.openapi(ROUTES.changeAccount, async (c) => {
    const refused = barred(c);
    if (refused !== null) return refused as never;
    const { roles, isClosed, passPhrase } = c.req.valid('json');
    const change = {
      ...(roles === undefined ? {} : { roles }),
      ...(isClosed === undefined ? {} : { isClosed }),
      ...(passPhrase === undefined ? {} : { passPhrase }),
    };
    const what: AccountPart[] = [
      ...(roles === undefined ? [] : ['roles' as const]),
      ...(isClosed === undefined ? [] : [isClosed ? ('closed' as const) : ('reopened' as const)]),
      ...(passPhrase === undefined ? [] : ['first-pass-phrase' as const]),
    ];
    return (await unlessBusy(c, async () =>
      answered(c, await changeAccount(db, site().id, c.req.valid('param').account, change), 200, what),
    )) as never;
  });

  function answered(c: Context, changed: Changed, status: 200 | 201, what: readonly AccountPart[]): Response {
    if (!changed.ok) return problemAnswer(c, changed.status, changed.refusals);
    const { account, already } = changed;
    if (!already) log({ event: 'account-changed', account: account.id, by: by(c), what });
    return c.json(account, already ? 200 : status);
  }
}

const shown = <T extends { readonly roles: readonly unknown[] }>(account: T) => ({
  ...account,
  roles: [...account.roles] as T['roles'][number][],
});
