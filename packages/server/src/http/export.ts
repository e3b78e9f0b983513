import { chartCsv, noticesOf } from '@evenfall/exchange';
import { projectChart } from '@evenfall/record';
import type { Context } from 'hono';
import type { readPerson } from '../store/persons.js';
import type { Site } from '../store/site.js';

/**
 * A person's chart as a CSV file. Its name holds the person's id, never who they are, and the notice of the book:
 * a chart without values has no row that could say it.
 */
export function exportAnswer(
  c: Context,
  found: NonNullable<Awaited<ReturnType<typeof readPerson>>>,
  site: Site,
): Response {
  const { id, book, identity, classIdentity, entries, unreadable, agents } = found;
  const text = chartCsv({
    book,
    invented: site.invented,
    person: id,
    identity,
    classIdentity,
    chart: projectChart(entries),
    agents,
  });
  const name = ['evenfall', ...noticesOf({ book, invented: site.invented }), id].join('-');
  return c.body(text, 200, {
    'content-type': 'text/csv; charset=utf-8; header=present',
    // How many entries this program cannot read, which are in no row.
    'evenfall-unreadable': String(unreadable),
    'content-disposition': `attachment; filename="${name}.csv"`,
  });
}
