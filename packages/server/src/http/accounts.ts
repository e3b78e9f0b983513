import { ROUTES } from '@evenfall/api';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { addAccount, type Changed, changeAccount, listAccounts } from '../signIn/accounts.js';
import { problemAnswer } from './problems.js';
import { notOf } from './signedIn.js';
import { unlessBusy } from './signIn.js';
import type { World } from './world.js';

/** Who signs in here: listed, made, changed and closed by an owner, or on the socket of the folder's own account. */
export function accountRoutes(app: OpenAPIHono, { db, site }: World, isTrusted: boolean): void {
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
      answered(c, await addAccount(db, site().id, c.req.valid('json')), 201),
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
    return (await unlessBusy(c, async () =>
      answered(c, await changeAccount(db, site().id, c.req.valid('param').account, change), 200),
    )) as never;
  });
}

const shown = <T extends { readonly roles: readonly unknown[] }>(account: T) => ({
  ...account,
  roles: [...account.roles] as T['roles'][number][],
});

function answered(c: Context, changed: Changed, status: 200 | 201): Response {
  if (!changed.ok) return problemAnswer(c, changed.status, changed.refusals);
  return c.json(changed.account, changed.already ? 200 : status);
}
