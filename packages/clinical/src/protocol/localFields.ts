import type { Field, Replaced } from './field.js';
import type { Protocol } from './protocol.js';
import type { SectionName } from './sections.js';

/** One field that the place decided itself, with the published value that it took the place of. */
export type LocalField = {
  readonly section: SectionName;
  readonly key: string;
  readonly field: Field & { readonly replaces: Replaced };
};

/** Everything in which a protocol differs from the presets that it started from, in the order of the sections. */
export function localFields({ sections }: Pick<Protocol, 'sections'>): LocalField[] {
  return Object.entries(sections).flatMap(([section, fields]) =>
    Object.entries((fields ?? {}) as Readonly<Record<string, Field>>).flatMap(([key, field]) =>
      isReplacing(field) ? [{ section: section as SectionName, key, field }] : [],
    ),
  );
}

function isReplacing(field: Field): field is LocalField['field'] {
  return field.replaces !== null;
}
