import type { ComponentProps } from 'react';
import { BookContext } from '../app/book.js';
import { useApp } from '../app/context.js';
import { Page } from '../parts/Page.js';

const SIMULATED = { book: 'simulated', session: null } as const;

/** A page of the book of simulations: it says so in its title, on the screen and on paper. */
export function SimulatedPage({ under, title, ...page }: ComponentProps<typeof Page>) {
  const { words } = useApp();
  return (
    <BookContext value={SIMULATED}>
      <Page
        {...page}
        title={words.sentence('practice.pageTitle', { text: title })}
        heading={title}
        under={
          <>
            <p className="simulated">{words.sentence('practice.band')}</p>
            {under}
          </>
        }
      />
    </BookContext>
  );
}
