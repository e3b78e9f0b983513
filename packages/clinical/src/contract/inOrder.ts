/** Refusals in the order of the fields as documented, unknown ones last. */
export function inOrder<R extends { readonly field: string }>(
  refusals: readonly R[],
  fields: readonly string[],
): R[] {
  const place = (field: string) => {
    const at = fields.indexOf(field.split('/')[1] ?? '');
    return field === '' ? -1 : at < 0 ? fields.length : at;
  };
  return [...refusals].sort((a, b) => place(a.field) - place(b.field));
}
