import { closest } from 'fastest-levenshtein';

/**
 * The real name that was probably meant: the shortest that starts as the typed one does, else the one with the
 * fewest letters to change (Levenshtein distance).
 */
export function nearest(typed: string, names: readonly string[]): string {
  const begun = names.filter((name) => typed !== '' && name.startsWith(typed));
  const [shortest] = begun.sort((a, b) => a.length - b.length);
  return shortest ?? closest(typed, names);
}
