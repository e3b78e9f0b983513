import { VERSION_SHOWN } from '@evenfall/report';
import { publishedSource, type Words } from '@evenfall/words';
import type { Answer } from '../answer.js';
import type { Item, ItemField } from '../command.js';
import { wrap } from './wrap.js';

/** What stands under what to type for it is set in. */
const INDENT = 4;

/** The fields that are surer or less sure than their set: `memory: droppedDays, leastDays`. */
function otherwise(status: string, fields: readonly ItemField[]): string[] {
  const others = [...new Set(fields.map((one) => one.status))].filter((one) => one !== status);
  return others.map((other) => {
    const keys = fields.filter((one) => one.status === other).map(({ key }) => key);
    return `${other}: ${keys.join(', ')}`;
  });
}

/** The same with its sources as they can be looked up; null where nothing published is named. */
function asPublished({ id, title, source, fields, ...rest }: Item) {
  const own = fields?.map((field) => ({ ...field, source: publishedSource(field.source) }));
  return {
    id,
    title,
    source: publishedSource(source),
    ...rest,
    ...(own === undefined ? {} : { fields: own }),
  };
}

/** What `--list` shows, in the order of the handbook. Source: docs/conventions.md section 1. */
export function listed(items: readonly Item[], words: Words): Answer {
  const source = words.sentence('commandLine.source');
  const lines = items.flatMap(({ title, source: from, status, typed, version, fields = [] }) => [
    ...wrap(typed),
    ...wrap(title, INDENT),
    ...wrap(`${source}: ${[publishedSource(from), status].filter(Boolean).join('; ')}`, INDENT),
    ...otherwise(status, fields).flatMap((line) => wrap(line, INDENT)),
    ...(version === undefined
      ? []
      : wrap(
          words.sentence('commandLine.itemVersion', { version: version.slice(0, VERSION_SHOWN) }),
          INDENT,
        )),
  ]);
  return { kind: 'one', json: { items: items.map(asPublished) }, lines };
}
