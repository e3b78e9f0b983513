import type { ComponentProps } from 'react';
import { BookContext } from '../app/book.js';
import { useApp } from '../app/context.js';
import { Page } from './Page.js';

const SIMULATED = { book: 'simulated', session: null } as const;

type FrameProps = Omit<ComponentProps<typeof Page>, 'heading'> & {
  /** Over the whole width of a large screen. */
  readonly isWide?: boolean;
};

/**
 * Every page of practice: of the book of simulations, and it says so in its title, on the screen and on paper. A bare one
 * says it in one word beside its title.
 */
export function SimulatedPage({ title, under, isWide = false, ...page }: FrameProps) {
  const { words } = useApp();
  const shown =
    page.isBare === true
      ? {
          heading: (
            <span className="simulated-heading">
              <span>{title}</span>
              <span className="simulated">{words.sentence('practice.simulated')}</span>
            </span>
          ),
          under,
        }
      : {
          heading: title,
          under: (
            <>
              <p className="simulated">{words.sentence('practice.band')}</p>
              {under}
            </>
          ),
        };
  return (
    <BookContext value={SIMULATED}>
      <div className={isWide ? 'simulated-wide' : undefined}>
        <Page {...page} {...shown} title={words.sentence('practice.pageTitle', { text: title })} />
      </div>
    </BookContext>
  );
}
