import { z } from 'zod';

/**
 * Who a person is. Kept apart from entries, so that it can be erased while the entries stay. At least two
 * identifiers (bedside handbook 3.18 and 7.1): the name, and a birth date or a number.
 */
export const identity = z
  .object({
    name: z.string().trim().min(1).max(200),
    birthDate: z.iso.date().nullable(),
    number: z.string().trim().min(1).max(60).nullable(),
  })
  .strict()
  .refine((given) => given.birthDate !== null || given.number !== null, {
    path: ['number'],
    message: 'second-identifier',
  });
export type Identity = z.infer<typeof identity>;

/** Which identifiers an identity has, for the entry that says a person exists. */
export function identifiersOf(given: Identity): ('name' | 'birthDate' | 'number')[] {
  return (['name', 'birthDate', 'number'] as const).filter((part) => given[part] !== null);
}

/** Completed months from a birth date to a local date, both `YYYY-MM-DD`; null when not born yet. */
export function ageInMonths(birthDate: string, onDate: string): number | null {
  const [bornYear = 0, bornMonth = 0, bornDay = 0] = birthDate.split('-').map(Number);
  const [year = 0, month = 0, day = 0] = onDate.split('-').map(Number);
  const months = (year - bornYear) * 12 + (month - bornMonth) - (day < bornDay ? 1 : 0);
  return months < 0 ? null : months;
}
