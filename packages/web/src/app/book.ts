import type { Book } from '@evenfall/record';
import { createContext, useContext } from 'react';

/** In which book, and in which session of a class, a screen reads and writes. */
export type InBook = { readonly book: Book; readonly session: string | null };

export const IN_CARE: InBook = { book: 'care', session: null };

/** The bedside needs no wrapping: what stands in no other book is of the charts. */
export const BookContext = createContext<InBook>(IN_CARE);

export function useBook(): InBook {
  return useContext(BookContext);
}

/** Whether a session is over and what is shown of it was kept by agreement: nothing can be added to it. */
export function useIsOver(): boolean {
  const { book, session } = useBook();
  return book === 'class' && session === null;
}

/** The page of a session of a class, from wherever below it; of none, the page of the class. */
export function sessionHref(session: string | null): string {
  return session === null ? '~/class' : `~/class/${session}`;
}

/** What is entered of a class goes with its session, also what is typed and not sent. */
export const FORM_OF_CLASS = / class ([0-9a-f-]{36})$/;

/** What a form is called in a book: one of a class ends in its session. */
export function formIn({ session }: InBook, form: string): string {
  return session === null ? form : `${form} class ${session}`;
}
