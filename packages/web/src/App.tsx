import { lazy, Suspense, useEffect } from 'react';
import { Link, Route, Switch } from 'wouter';
import { useApp } from './app/context.js';
import { sessionsIn } from './class/forget.js';
import { Broken } from './parts/Broken.js';
import { Page } from './parts/Page.js';
import { PeoplePage } from './people/PeoplePage.js';
import { QuickPage } from './quick/QuickPage.js';
import { ROUND_ROUTES } from './roundRoutes.js';
import { loadAbout } from './server/load.js';
import { loadClassSessions } from './server/loadClass.js';

/** Fetched after the bedside, which must be there at once; `fetchTheRest` fetches them ahead. */
const laterPages = () => import('./laterPages.js');
const PersonPage = lazy(async () => ({ default: (await laterPages()).PersonPage }));
const AddPersonPage = lazy(async () => ({ default: (await laterPages()).AddPersonPage }));
const CorrectIdentityPage = lazy(async () => ({ default: (await laterPages()).CorrectIdentityPage }));
const FactsPage = lazy(async () => ({ default: (await laterPages()).FactsPage }));
const ProtocolPage = lazy(async () => ({ default: (await laterPages()).ProtocolPage }));
const ToCountersignPage = lazy(async () => ({ default: (await laterPages()).ToCountersignPage }));
const TrendPage = lazy(async () => ({ default: (await laterPages()).TrendPage }));
const VersionPage = lazy(async () => ({ default: (await laterPages()).VersionPage }));
const ClassRoutes = lazy(async () => ({ default: (await laterPages()).ClassRoutes }));
const AmendPage = lazy(async () => ({ default: (await laterPages()).AmendPage }));

/** Fetches what the first page did not need, so that it is there when the server is not. */
export function fetchTheRest(): void {
  // A failure shows when the page is asked for.
  laterPages().catch(() => undefined);
}

/** Which page stands at which address. */
export function AppRoutes() {
  const app = useApp();
  useEffect(() => void loadAbout(app), [app]);
  useEffect(() => {
    // A class may have been ended elsewhere meanwhile: then nothing of it stays on this device.
    if (sessionsIn(app.store.get().kept).length > 0) void loadClassSessions(app);
  }, [app]);
  return (
    <Broken says={app.words.sentence('app.broken')} again={app.words.sentence('app.loadAgain')}>
      <Suspense fallback={null}>
        <Switch>
          <Route path="/">
            <PeoplePage />
          </Route>
          <Route path="/protocol">
            <ProtocolPage />
          </Route>
          <Route path="/protocol/versions/:version">
            {({ version }) => <VersionPage key={version} version={version} />}
          </Route>
          <Route path="/class/*?">
            <ClassRoutes />
          </Route>
          <Route path="/countersign">
            <ToCountersignPage />
          </Route>
          <Route path="/people/new">
            <AddPersonPage />
          </Route>
          <Route path="/people/:person">{({ person }) => <PersonPage key={person} person={person} />}</Route>
          <Route path="/people/:person/quick">
            {({ person }) => <QuickPage key={person} person={person} />}
          </Route>
          <Route path="/people/:person/identity">
            {({ person }) => <CorrectIdentityPage key={person} person={person} />}
          </Route>
          <Route path="/people/:person/facts">
            {({ person }) => <FactsPage key={person} person={person} />}
          </Route>
          <Route path="/people/:person/trend">
            {({ person }) => <TrendPage key={person} person={person} />}
          </Route>
          {ROUND_ROUTES}
          <Route path="/people/:person/values/:entry/amend">
            {({ person, entry }) => <AmendPage key={entry} person={person} entry={entry} />}
          </Route>
          <Route>
            <NoSuchPage />
          </Route>
        </Switch>
      </Suspense>
    </Broken>
  );
}

function NoSuchPage() {
  const { words } = useApp();
  return (
    <Page title={words.sentence('app.notFound')}>
      <Link href="/" className="button">
        {words.sentence('app.toPeople')}
      </Link>
    </Page>
  );
}
