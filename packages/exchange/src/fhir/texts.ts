/** JSON text in ASCII alone: a FHIR string takes no other kind of space than four, and this keeps every sign. */
export function asciiJson(value: unknown): string {
  return JSON.stringify(value).replace(
    /[^\x20-\x7e]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** A text as a FHIR string may be: no kind of space but four, and none at its ends; null for one that has nothing else. */
export function fhirString(text: string): string | null {
  const plain = text.replace(/(?![ \r\n\t])\s/g, ' ').trim();
  return plain === '' ? null : plain;
}

/** The same of every text within a resource; a list or an object keeps its shape. */
export function plainTexts<Within>(value: Within): Within {
  if (typeof value === 'string') return (fhirString(value) ?? value) as Within;
  if (Array.isArray(value)) return value.map(plainTexts) as Within;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, member]) => [key, plainTexts(member)]),
  ) as Within;
}
