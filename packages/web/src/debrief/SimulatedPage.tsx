import type { ComponentProps } from 'react';
import { BookContext } from '../app/book.js';
import { useApp } from '../app/context.js';
import { Page } from '../parts/Page.js';

const SIMULATED = { book: 'simulated', session: null } as const;

/** A page of the book of simulations: it says so on the screen and on paper. */
export function SimulatedPage({ under, ...page }: ComponentProps<typeof Page>) {
  const { words } = useApp();
  return (
    <BookContext value={SIMULATED}>
      <Page
        {...page}
        under={
          <>
            <p className="simulated">{words.sentence('debrief.simulated')}</p>
            {under}
          </>
        }
      />
    </BookContext>
  );
}
