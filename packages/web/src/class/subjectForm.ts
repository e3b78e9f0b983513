import type { ClassIdentity } from '@evenfall/record';

/** The limits of the record, said here beside the field. */
const LONGEST_PSEUDONYM = 40;
const OLDEST_YEARS = 125;

export type SubjectWrong = Readonly<
  Partial<{ pseudonym: 'pseudonymMissing' | 'pseudonymLong' | 'pseudonymTaken'; ageYears: 'ageWrong' }>
>;

/**
 * Reads who is added to a class: a pseudonym that nobody of the session has, and an age or a blank for not known.
 *
 * @param taken the pseudonyms of the session
 */
export function readSubject(
  typed: { readonly pseudonym: string; readonly ageYears: string },
  taken: readonly string[],
): { readonly identity: ClassIdentity | null; readonly wrong: SubjectWrong } {
  const pseudonym = typed.pseudonym.trim();
  const age = typed.ageYears.trim();
  const ageYears = age === '' ? null : Number(age);
  const wrong: { -readonly [K in keyof SubjectWrong]: SubjectWrong[K] } = {};
  if (pseudonym === '') wrong.pseudonym = 'pseudonymMissing';
  else if (pseudonym.length > LONGEST_PSEUDONYM) wrong.pseudonym = 'pseudonymLong';
  else if (isTaken(pseudonym, taken)) wrong.pseudonym = 'pseudonymTaken';
  if (ageYears !== null && !(/^\d+$/.test(age) && ageYears <= OLDEST_YEARS)) wrong.ageYears = 'ageWrong';
  return { identity: Object.keys(wrong).length > 0 ? null : { pseudonym, ageYears }, wrong };
}

/**
 * A pseudonym that nobody of the session has: a bird, or with a number once every bird is taken. Sessions begin at
 * different birds, so that the first of one is not taken for the first of the next.
 *
 * @param birds one or more
 * @param session any text; the same gives the same order
 */
export function suggestPseudonym(
  birds: readonly string[],
  session: string,
  taken: readonly string[],
): string {
  const start = [...session].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % birds.length, 0);
  const ordered = [...birds.slice(start), ...birds.slice(0, start)];
  for (let time = 1; ; time += 1) {
    const names = time === 1 ? ordered : ordered.map((bird) => `${bird} ${time}`);
    const free = names.find((name) => !isTaken(name, taken));
    if (free !== undefined) return free;
  }
}

function isTaken(pseudonym: string, taken: readonly string[]): boolean {
  return taken.some((one) => one.toLowerCase() === pseudonym.toLowerCase());
}
