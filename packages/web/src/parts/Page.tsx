import { isReviewed } from '@evenfall/words';
import { type ReactNode, useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { CoverButton, CoverSheet, useCover } from '../cover/CoverSheet.js';
import { NewerNotice } from './NewerNotice.js';
import { useKeptFocus } from './useKeptFocus.js';
import { WaitingNotice } from './WaitingNotice.js';

type PageProps = {
  /** What the page is, for its title bar and its history. */
  readonly title: string;
  /** The heading; the title if absent. */
  readonly heading?: ReactNode;
  /** Where back leads; absent on the start page. */
  readonly back?: { readonly href: string; readonly text: string };
  /** What stands right under the heading. */
  readonly under?: ReactNode;
  /** Without the footer, where every line of the screen is needed. */
  readonly isBare?: boolean;
  /** What stands at the head of what is printed, where the page prints otherwise than it shows. */
  readonly printed?: ReactNode | undefined;
  /** What stands again at the head of every printed sheet of a page that prints as it shows. */
  readonly running?: ReactNode;
  /** Whether it can be covered, as every page of a round can. */
  readonly isCoverable?: boolean;
  /** Whether it uses the width of a laptop for two columns. */
  readonly isWide?: boolean;
  readonly children: ReactNode;
};

let isFirstPage = true;

/** The frame of every page: the bands of an invented clinic and of a class, the way back, one heading, one main part. */
export function Page({
  title,
  heading,
  back,
  under,
  isBare = false,
  isCoverable = false,
  isWide = false,
  printed,
  running,
  children,
}: PageProps) {
  const isCovered = useCover(isCoverable);
  const { words } = useApp();
  const isInvented = useKept(({ known }) => known.about.value?.site.invented ?? false);
  const isClass = useBook().book === 'class';
  const isKeeping = useKept((state) => state.isKeeping);
  const headingRef = useRef<HTMLHeadingElement>(null);
  const pageRef = useRef<HTMLDivElement>(null);
  useKeptFocus(pageRef);

  useEffect(() => {
    const key = isClass
      ? isInvented
        ? 'class.pageTitleInvented'
        : 'class.pageTitle'
      : isInvented
        ? 'app.pageTitleInvented'
        : 'app.pageTitle';
    document.title = isCovered ? words.sentence('app.name') : words.sentence(key, { text: title });
  }, [words, isInvented, isClass, isCovered, title]);

  // A new page is read from its heading on; only the first of a visit leaves the focus to the browser.
  useEffect(() => {
    window.scrollTo(0, 0);
    if (isFirstPage) isFirstPage = false;
    else headingRef.current?.focus({ preventScroll: true });
  }, []);

  return (
    <>
      {isCovered ? <CoverSheet /> : null}
      <div
        ref={pageRef}
        className={`page${printed === undefined ? '' : ' page-printed'}${isWide ? ' page-wide' : ''}`}
        inert={isCovered}
      >
        <a className="skip" href="#main">
          {words.sentence('app.skip')}
        </a>
        <header className="page-top">
          <div className="bands">
            {isInvented ? <p className="invented-band">{words.sentence('app.inventedBand')}</p> : null}
            {isClass ? <p className="class-band">{words.sentence('class.band')}</p> : null}
          </div>
          {printed === undefined ? null : <div className="printed-only print-head">{printed}</div>}
          {running === undefined ? null : (
            <div className="printed-only print-running">
              {running}
              {isReviewed(words) ? null : <p className="small">{words.sentence('app.notReviewed')}</p>}
            </div>
          )}
          <div className="page-head">
            {back === undefined ? (
              <span className="wordmark">{words.sentence('app.name')}</span>
            ) : (
              <Link href={back.href} className="back">
                {back.text}
              </Link>
            )}
            {isCoverable ? <CoverButton /> : null}
          </div>
        </header>
        <main className="page-main" id="main" tabIndex={-1}>
          <div className="page-title">
            <h1 ref={headingRef} tabIndex={-1}>
              {heading ?? title}
            </h1>
            {under}
          </div>
          {isKeeping ? null : <p className="notice">{words.sentence('app.notKept')}</p>}
          <NewerNotice />
          <WaitingNotice isShort={isCoverable} />
          {children}
        </main>
        <PageFoot isBare={isBare} />
      </div>
    </>
  );
}

/** What the program is for, and whether a clinician has read the words it is said in. */
export function PageFoot({ isBare = false }: { readonly isBare?: boolean }) {
  const { words } = useApp();
  const isUnreviewed = !isReviewed(words);
  if (isBare && !isUnreviewed) return null;
  return (
    <footer className="page-foot">
      {isBare ? null : <p>{words.sentence('cautions.aid')}</p>}
      {isUnreviewed ? <p>{words.sentence('app.notReviewed')}</p> : null}
    </footer>
  );
}
