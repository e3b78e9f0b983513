import { type ReactNode, useEffect } from 'react';
import { useApp, useKept } from '../app/context.js';
import { PageFoot } from '../parts/Page.js';
import { LanguageChoice } from '../preferences/LanguageChoice.js';
import { loadSite } from '../server/load.js';

/** The blank screen before the app: nothing of anybody stands on it. Whoever comes chooses the language to read it in. */
export function CoverFrame({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const app = useApp();
  const { words } = app;
  const isInvented = useKept(({ known }) => known.about.value?.site.invented ?? false);
  useEffect(() => void loadSite(app), [app]);
  useEffect(() => {
    document.title = words.sentence('app.pageTitle', { text: title });
  }, [words, title]);
  return (
    <div className="page cover-page">
      {isInvented ? <p className="invented-band">{words.sentence('app.inventedBand')}</p> : null}
      <main className="page-main" id="main">
        <p className="wordmark">{words.sentence('app.name')}</p>
        <h1>{title}</h1>
        {children}
        <LanguageChoice />
      </main>
      <PageFoot />
    </div>
  );
}
