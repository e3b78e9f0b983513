import type { Identity } from '@evenfall/record';

/** The name of the form that adds a person, in the store. */
export const ADD_PERSON = 'add-person';

export type IdentityWrong = Readonly<
  Partial<
    Record<
      'name' | 'birthDate' | 'number',
      'nameMissing' | 'nameLong' | 'numberLong' | 'secondMissing' | 'birthDateWrong'
    >
  >
>;

type Typed = { readonly name: string; readonly birthDate: string; readonly number: string };

/**
 * Reads an identity as typed: a blank is null, never an empty text. The limits are those of the record, which
 * refuses again; here they are said beside the field.
 *
 * @param birthDate as the native date control gives it, `YYYY-MM-DD`
 * @param today the local date
 */
export function readIdentity(
  typed: Typed,
  today: string,
): { readonly identity: Identity | null; readonly wrong: IdentityWrong } {
  const name = typed.name.trim();
  const number = typed.number.trim();
  const birthDate = typed.birthDate.trim();
  const wrong: { -readonly [K in keyof IdentityWrong]: IdentityWrong[K] } = {};
  if (name === '') wrong.name = 'nameMissing';
  if (name.length > 200) wrong.name = 'nameLong';
  if (number.length > 60) wrong.number = 'numberLong';
  if (birthDate !== '' && (!isDate(birthDate) || birthDate > today)) wrong.birthDate = 'birthDateWrong';
  if (birthDate === '' && number === '') wrong.number = 'secondMissing';
  if (Object.keys(wrong).length > 0) return { identity: null, wrong };
  return {
    identity: { name, birthDate: birthDate === '' ? null : birthDate, number: number === '' ? null : number },
    wrong,
  };
}

/** Which parts of an identity a correction changes. */
export function changedParts(was: Identity, is: Identity): (keyof Identity)[] {
  return (['name', 'birthDate', 'number'] as const).filter((part) => was[part] !== is[part]);
}

/** Whether a text is a date that exists. */
function isDate(text: string): boolean {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (found === null) return false;
  const at = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(text);
}
