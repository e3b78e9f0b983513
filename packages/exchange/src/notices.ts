import type { Book } from '@evenfall/record';

/** The words that every page and file of a book that is not care, or of invented people, must say. */
export function noticesOf({
  book,
  invented,
}: {
  readonly book: Book;
  readonly invented: boolean;
}): readonly string[] {
  return [...(invented ? ['INVENTED'] : []), ...(book === 'care' ? [] : [book.toUpperCase()])];
}
