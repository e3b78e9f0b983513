import { type ReactNode, useEffect, useState } from 'react';
import { useApp } from '../app/context.js';
import type { Later } from '../app/later.js';

/** How long what is still fetched is not worth a word, ms. Source: decision. */
const QUIET_MS = 1_000;

type GoOnProps<Pages> = {
  readonly part: Later<Pages>;
  /** What is shown of it until it is here. */
  readonly meanwhile?: ReactNode;
  readonly children: (pages: Pages) => ReactNode;
};

/**
 * What a round goes on with: drawn at once where it is here. Where the network is slow, or went before it came, that is
 * said; what was counted meanwhile is kept. A browser does not ask again for a part that failed: the page is loaded again.
 */
export function GoOn<Pages>({ part, meanwhile = null, children }: GoOnProps<Pages>) {
  const { words } = useApp();
  const [pages, setPages] = useState(part.here);
  const [is, setIs] = useState<'quiet' | 'slow' | 'failed'>('quiet');
  const isMissing = pages === null;
  useEffect(() => {
    if (!isMissing) return undefined;
    part.fetch().then(
      (here) => setPages(here),
      () => setIs('failed'),
    );
    const slow = window.setTimeout(() => setIs((was) => (was === 'quiet' ? 'slow' : was)), QUIET_MS);
    return () => window.clearTimeout(slow);
  }, [isMissing, part]);
  if (pages !== null) return <>{children(pages)}</>;
  if (is === 'quiet') return meanwhile;
  return (
    <>
      {meanwhile}
      <div className="notice" role="status">
        <p>{words.sentence(is === 'slow' ? 'review.stillFetched' : 'review.notFetched')}</p>
        {is === 'slow' ? null : (
          <button type="button" className="button" onClick={() => window.location.reload()}>
            {words.sentence('app.loadAgain')}
          </button>
        )}
      </div>
    </>
  );
}
