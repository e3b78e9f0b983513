import { publishedSource, type Words } from '@evenfall/words';
import type { Answer } from '../answer.js';
import type { Item } from '../command.js';
import { wrap } from './wrap.js';

/** What stands under what to type for it is set in. */
const INDENT = 4;

/** What `--list` shows, in the order of the handbook. Source: docs/conventions.md section 1. */
export function listed(items: readonly Item[], words: Words): Answer {
  const source = words.sentence('commandLine.source');
  const lines = items.flatMap(({ title, source: from, status, typed }) => [
    ...wrap(typed),
    ...wrap(title, INDENT),
    ...wrap(`${source}: ${[publishedSource(from), status].filter(Boolean).join('; ')}`, INDENT),
  ]);
  return { kind: 'one', json: { items }, lines };
}
