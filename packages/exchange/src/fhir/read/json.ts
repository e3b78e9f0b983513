/** A JSON object of a stranger: anything may stand under any key. */
export type Json = { readonly [key: string]: unknown };

export function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What is no object reads as one without keys. */
export function asObject(value: unknown): Json {
  return isObject(value) ? value : {};
}

export function objectIn(of: Json, key: string): Json | null {
  const value = of[key];
  return isObject(value) ? value : null;
}

/** The members of a list; none where there is no list. */
export function listIn(of: Json, key: string): readonly unknown[] {
  const value = of[key];
  return Array.isArray(value) ? value : [];
}

export function textIn(of: Json, key: string): string | null {
  const value = of[key];
  return typeof value === 'string' && value.trim() !== '' ? value : null;
}

/** A CodeableConcept in words: its own text, else the first display or code of it. */
export function textOfConcept(value: unknown): string | null {
  const concept = asObject(value);
  const codings = listIn(concept, 'coding').map(asObject);
  const said = codings.map((coding) => textIn(coding, 'display') ?? textIn(coding, 'code'));
  return textIn(concept, 'text') ?? said.find((text) => text !== null) ?? null;
}

/** The codes of one system in a CodeableConcept. */
export function codesIn(value: unknown, system: string): string[] {
  return listIn(asObject(value), 'coding')
    .map(asObject)
    .filter((coding) => coding.system === system)
    .flatMap((coding) => textIn(coding, 'code') ?? []);
}
