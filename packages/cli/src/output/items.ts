import type { Words } from '@evenfall/words';
import type { Answer } from '../answer.js';
import type { Item } from '../command.js';
import { columns } from './columns.js';

/** What `--list` shows, in the order of the handbook. Source: docs/conventions.md section 1. */
export function listed(items: readonly Item[], words: Words): Answer {
  const source = words.sentence('commandLine.source');
  const rows = items.map(({ title, source: from, status, typed }) => [
    typed,
    title,
    `${source}: ${from}`,
    status,
  ]);
  return { kind: 'one', json: { items }, lines: columns(rows) };
}
