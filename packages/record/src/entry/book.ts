import { z } from 'zod';

/**
 * The three books. They never mix: every key in storage starts with site and book, so a row of one cannot
 * name a row of another. `care` holds charts, `class` learners' readings of each other, `simulated` practice.
 */
export const BOOKS = ['care', 'class', 'simulated'] as const;
export const book = z.enum(BOOKS);
export type Book = z.infer<typeof book>;
