import { Suspense, useEffect } from 'react';
import { Link, Route, Switch } from 'wouter';
import { useApp } from './app/context.js';
import { withWords } from './app/deviceWords.js';
import { later, pageOf } from './app/later.js';
import { sessionsIn } from './class/forget.js';
import { Broken } from './parts/Broken.js';
import { Page } from './parts/Page.js';
import { PeoplePage } from './people/PeoplePage.js';
import { withTapRules } from './round/tapRulesLater.js';
import { fetchTheRound, ROUND_ROUTES } from './roundRoutes.js';
import { loadAbout } from './server/load.js';
import { loadClassSessions } from './server/loadClass.js';

const EVERY_PART = ['round', 'aside', 'later'] as const;

/** Fetched after the bedside, which must be there at once; `fetchTheRest` fetches them ahead. */
const laterPages = withWords(
  EVERY_PART,
  later(() => import('./laterPages.js')),
);
const awayPages = withWords(
  EVERY_PART,
  later(() => import('./awayPages.js')),
);
const practicePages = withWords(
  [...EVERY_PART, 'practice'],
  withTapRules(later(() => import('./practicePages.js'))),
);
const debriefPages = withWords(
  [...EVERY_PART, 'practice'],
  later(() => import('./debriefPages.js')),
);
const quickPages = later(() => import('./quickPages.js'));
const QuickPage = pageOf(quickPages, (pages) => pages.QuickPage);
const PersonPage = pageOf(laterPages, (pages) => pages.PersonPage);
const AddPersonPage = pageOf(laterPages, (pages) => pages.AddPersonPage);
const CorrectIdentityPage = pageOf(laterPages, (pages) => pages.CorrectIdentityPage);
const FactsPage = pageOf(laterPages, (pages) => pages.FactsPage);
const EquipmentPage = pageOf(laterPages, (pages) => pages.EquipmentPage);
const GaugePage = pageOf(laterPages, (pages) => pages.GaugePage);
const ProtocolPage = pageOf(laterPages, (pages) => pages.ProtocolPage);
const ToCountersignPage = pageOf(laterPages, (pages) => pages.ToCountersignPage);
const HandOverPage = pageOf(laterPages, (pages) => pages.HandOverPage);
const DiaryPage = pageOf(laterPages, (pages) => pages.DiaryPage);
const CardPage = pageOf(laterPages, (pages) => pages.CardPage);
const SettingsPage = pageOf(laterPages, (pages) => pages.SettingsPage);
const AwayNewPage = pageOf(awayPages, (pages) => pages.AwayNewPage);
const SeriesPage = pageOf(awayPages, (pages) => pages.SeriesPage);
const PracticePage = pageOf(practicePages, (pages) => pages.PracticePage);
const RoomModePage = pageOf(practicePages, (pages) => pages.RoomModePage);
const RoomPage = pageOf(practicePages, (pages) => pages.RoomPage);
const AfterPracticeRoutes = pageOf(debriefPages, (pages) => pages.AfterPracticeRoutes);
const TrendPage = pageOf(laterPages, (pages) => pages.TrendPage);
const VersionPage = pageOf(laterPages, (pages) => pages.VersionPage);
const ClassRoutes = pageOf(laterPages, (pages) => pages.ClassRoutes);
const OwnAccountPage = pageOf(laterPages, (pages) => pages.OwnAccountPage);
const AccountsPage = pageOf(laterPages, (pages) => pages.AccountsPage);
const MarkPage = pageOf(laterPages, (pages) => pages.MarkPage);
const AmendPage = pageOf(laterPages, (pages) => pages.AmendPage);

/** Fetches what the first page did not need, so that it is there when the server is not. */
export function fetchTheRest(): void {
  // A failure shows when the page is asked for.
  quickPages
    .fetch()
    .then(fetchTheRound)
    .then(laterPages.fetch)
    .then(awayPages.fetch)
    .then(practicePages.fetch)
    .then(debriefPages.fetch)
    .catch(() => undefined);
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
          <Route path="/equipment">
            <EquipmentPage />
          </Route>
          <Route path="/equipment/gauges/:gauge">
            {({ gauge }) => <GaugePage key={gauge} gauge={gauge} />}
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
          <Route path="/practice">
            <PracticePage />
          </Route>
          <Route path="/practice/room">
            <RoomModePage />
          </Route>
          <Route path="/practice/exercises/*?">
            <AfterPracticeRoutes />
          </Route>
          <Route path="/practice/scenarios/*?">
            <AfterPracticeRoutes />
          </Route>
          <Route path="/practice/plan">
            <AfterPracticeRoutes />
          </Route>
          <Route path="/practice/own/:scenario">
            {({ scenario }) => <RoomPage key={scenario} scenario={scenario} />}
          </Route>
          <Route path="/practice/:scenario">
            {({ scenario }) => <RoomPage key={scenario} scenario={scenario} />}
          </Route>
          <Route path="/countersign">
            <ToCountersignPage />
          </Route>
          <Route path="/account">
            <OwnAccountPage />
          </Route>
          <Route path="/accounts">
            <AccountsPage />
          </Route>
          <Route path="/card">
            <CardPage />
          </Route>
          <Route path="/mark">
            <MarkPage />
          </Route>
          <Route path="/settings">
            <SettingsPage />
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
          <Route path="/people/:person/hand-over">
            {({ person }) => <HandOverPage key={person} person={person} />}
          </Route>
          <Route path="/people/:person/trend">
            {({ person }) => <TrendPage key={person} person={person} />}
          </Route>
          <Route path="/people/:person/diary/:diary">
            {({ person, diary }) => <DiaryPage key={diary} person={person} diary={diary} />}
          </Route>
          <Route path="/people/:person/away/new">
            {({ person }) => <AwayNewPage key={person} person={person} />}
          </Route>
          <Route path="/people/:person/away/:series">
            {({ person, series }) => <SeriesPage key={series} person={person} series={series} />}
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
