import { fileText, linesOf } from '@evenfall/api';
import { book, id, refusalsOf } from '@evenfall/record';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { stream } from 'hono/streaming';
import { z } from 'zod';
import { problemAnswer } from '../http/problems.js';
import type { World } from '../http/world.js';
import { bringFile } from '../importing/bringFile.js';
import { problemsOfFile } from '../importing/problemsOfFile.js';
import { backUp } from '../keeping/backup.js';
import { checkRecord } from '../keeping/check.js';
import { restore } from '../keeping/restore.js';

/** Whose chart a file is for; without a person, whom the file itself names. */
const importQuery = z.object({ book: book.default('care'), person: id.nullable().default(null) });

/**
 * What the command line asks of the program that keeps the folder: backup, restore, check. Mounted on the control
 * socket only, which nobody but the folder's own account can open; never on a network address.
 */
export function controlRoutes(app: OpenAPIHono, world: World): void {
  app.get('/control/backup', (c) => {
    c.header('content-type', 'application/x-ndjson');
    return stream(c, async (out) => {
      await backUp(world.db, world.site(), world.program, world.now(), async (line) => {
        await out.write(line);
      });
    });
  });

  app.post('/control/restore', async (c) => {
    const body = c.req.raw.body;
    if (body === null) return problemAnswer(c, 400, [], 'backup-expected');
    const restored = await restore(
      world.db,
      linesOf(body as unknown as AsyncIterable<Uint8Array>),
      world.site().invented,
    );
    if (!restored.ok) return problemAnswer(c, 422, restored.refusals);
    await world.siteChanged();
    return c.json({ lines: restored.lines });
  });

  app.post('/control/import', async (c) => {
    const asked = importQuery.safeParse(c.req.query());
    if (!asked.success) return problemAnswer(c, 422, refusalsOf(asked.error, c.req.query(), '/query'));
    const text = fileText(new Uint8Array(await c.req.arrayBuffer()));
    const brought = await bringFile(world, text, asked.data);
    if (!brought.ok) return problemAnswer(c, 422, brought.refusals);
    const { ofRecord: _, ...value } = brought.value;
    const [refused, unclear] = [value.refused, value.unclear].map((ones) =>
      problemsOfFile(text, value.format, ones).map(
        ({ rule: _rule, figures: _figures, choices: _choices, ...problem }) => problem,
      ),
    );
    return c.json({ ...value, refused, unclear });
  });

  app.get('/control/check', async (c) => c.json(await checkRecord(world.db, world.site().id)));
}
