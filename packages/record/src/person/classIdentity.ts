import { z } from 'zod';

/** More is no pseudonym to call across a room. Characters; source: decision of this project. */
const LONGEST_PSEUDONYM_CHARACTERS = 40;
/** Nobody was older. Completed years; source: decision of this project, above the oldest age known (from memory). */
const OLDEST_YEARS = 125;

/**
 * Who a person of the class book is: a pseudonym and, if they like, their completed years of age. No name, birth
 * date or number has a place in it, nor anything else that would say who lent their arm.
 */
export const classIdentity = z
  .object({
    pseudonym: z.string().trim().min(1).max(LONGEST_PSEUDONYM_CHARACTERS),
    ageYears: z.number().int().min(0).max(OLDEST_YEARS).nullable(),
  })
  .strict();
export type ClassIdentity = z.infer<typeof classIdentity>;

/** What identifies a person of the class book, for the entry that says that they exist. */
export const CLASS_IDENTIFIERS = ['pseudonym'] as const;

/**
 * Completed months of age as far as completed years tell them: never more than the true age, and the same years.
 * Null is not known.
 */
export function classAgeInMonths({ ageYears }: ClassIdentity): number | null {
  return ageYears === null ? null : ageYears * 12;
}
