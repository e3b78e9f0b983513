import type { ReactNode } from 'react';
import { BookContext } from '../app/book.js';
import { useApp } from '../app/context.js';
import { Page } from '../parts/Page.js';

const IN_PRACTICE = { book: 'simulated', session: null } as const;

type FrameProps = {
  readonly title: string;
  readonly back: { readonly href: string; readonly text: string };
  readonly isBare?: boolean;
  readonly isWide?: boolean;
  readonly children: ReactNode;
};

/** Every page of practice: of the book of simulations, and it says so in its title, on the screen and on paper. */
export function PracticePageFrame({ title, back, isBare = false, isWide = false, children }: FrameProps) {
  const { words } = useApp();
  return (
    <BookContext value={IN_PRACTICE}>
      <div className={isWide ? 'practice practice-wide' : 'practice'}>
        <Page
          title={words.sentence('practice.pageTitle', { text: title })}
          heading={
            isBare ? (
              <span className="practice-heading">
                <span>{title}</span>
                <span className="practice-band">{words.sentence('practice.simulated')}</span>
              </span>
            ) : (
              title
            )
          }
          under={isBare ? null : <p className="practice-band">{words.sentence('practice.band')}</p>}
          back={back}
          isBare={isBare}
        >
          {children}
        </Page>
      </div>
    </BookContext>
  );
}
