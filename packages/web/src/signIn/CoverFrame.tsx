import { type ReactNode, useEffect } from 'react';
import { useApp } from '../app/context.js';

/** The blank screen before the app: nothing of anybody stands on it. */
export function CoverFrame({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const { words } = useApp();
  useEffect(() => {
    document.title = words.sentence('app.pageTitle', { text: title });
  }, [words, title]);
  return (
    <div className="page cover-page">
      <main className="page-main" id="main">
        <p className="wordmark">{words.sentence('app.name')}</p>
        <h1>{title}</h1>
        {children}
      </main>
      <footer className="page-foot">
        <p>{words.sentence('cautions.aid')}</p>
      </footer>
    </div>
  );
}
