import { type Parsed, type Refusal, refusal } from '@evenfall/clinical';

/** A piece of a template: words as they are, a field, or a part that is left out where none of its fields is known. */
export type Piece<Field extends string = string> =
  | { readonly words: string }
  | { readonly field: Field }
  | { readonly part: readonly Piece<Field>[] };

export type Template<Field extends string = string> = readonly Piece<Field>[];

/** What each field says of one round; null for what is not known. */
export type Values<Field extends string = string> = { readonly [Name in Field]: string | Aside | null };

/** What a field says where it is asked for, and what is said elsewhere too: no part is written for it alone. */
export type Aside = { readonly aside: string };

/**
 * Reads a template: `{pulse}` is a field, `[, pulse {pulse}]` a part that is left out where none of its fields is known,
 * and a sign written twice (`{{`, `]]`) is that sign. Parts do not hold parts.
 *
 * Errors, in order of place, each under the field or sign it is about, with the sign at which it begins (`at`, from 1) in its figures: `unknown-field` with
 * the name that came, `contradicts` for a brace or bracket that is not closed, or that closes nothing.
 */
export function parseTemplate<Field extends string>(
  text: string,
  fields: readonly Field[],
): Parsed<Template<Field>> {
  const refusals: Refusal[] = [];
  const whole: Piece<Field>[] = [];
  let part: Piece<Field>[] | null = null;
  let partAt = 0;
  const refuse = (at: number, code: 'unknown-field' | 'contradicts', rule: string, got: string) =>
    void refusals.push(
      refusal(code === 'unknown-field' ? `{${got}}` : got, code, rule, got, {
        figures: { at: at + 1 },
        choices: code === 'unknown-field' ? fields : [],
      }),
    );
  for (let at = 0; at < text.length; ) {
    const into: Piece<Field>[] = part ?? whole;
    const sign = text[at] as string;
    if ('{}[]'.includes(sign) && text[at + 1] === sign) {
      into.push({ words: sign });
      at += 2;
    } else if (sign === '{') {
      const end = text.indexOf('}', at);
      const name = end < 0 ? '' : text.slice(at + 1, end).trim();
      const field = fields.find((one) => one === name);
      if (end < 0) refuse(at, 'contradicts', 'closed-brace', sign);
      else if (field === undefined) refuse(at, 'unknown-field', 'template-field', name);
      else into.push({ field });
      at = end < 0 ? text.length : end + 1;
    } else if (sign === '[' && part === null) {
      part = [];
      partAt = at;
      at += 1;
    } else if (sign === ']' && part !== null) {
      whole.push({ part });
      part = null;
      at += 1;
    } else if ('}[]'.includes(sign)) {
      refuse(at, 'contradicts', sign === '[' ? 'no-part-in-part' : 'opened-before', sign);
      at += 1;
    } else {
      const next = /[{}[\]]/.exec(text.slice(at));
      const end = next === null ? text.length : at + next.index;
      into.push({ words: text.slice(at, end) });
      at = end;
    }
  }
  if (part !== null) refuse(partAt, 'contradicts', 'closed-bracket', '[');
  if (refusals.length > 0) {
    return { ok: false, refusals: refusals.toSorted((a, b) => (a.figures.at ?? 0) - (b.figures.at ?? 0)) };
  }
  return { ok: true, value: whole };
}

/** The fields that a template names, in or out of a part. */
export function fieldsOf<Field extends string>(template: Template<Field>): readonly Field[] {
  return template.flatMap((piece) => {
    if ('field' in piece) return [piece.field];
    return 'part' in piece ? fieldsOf(piece.part) : [];
  });
}

/**
 * A template filled for one round.
 *
 * @param unknown what stands for a field that is not known and not in a part: never nothing, since a blank could be
 *   read as "as usual"
 */
export function fillTemplate<Field extends string>(
  template: Template<Field>,
  values: Values<Field>,
  unknown: string,
): string {
  return template
    .map((piece) => {
      if ('words' in piece) return piece.words;
      if ('field' in piece) {
        const value: string | Aside | null = values[piece.field];
        return (typeof value === 'string' ? value : value?.aside) ?? unknown;
      }
      const fields = piece.part.flatMap((one) => ('field' in one ? [one.field] : []));
      const isKnown = fields.length === 0 || fields.some((field) => typeof values[field] === 'string');
      return isKnown ? fillTemplate(piece.part, values, unknown) : '';
    })
    .join('');
}
