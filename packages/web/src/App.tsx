import { useEffect } from 'react';
import { Link, Route, Switch } from 'wouter';
import { useApp } from './app/context.js';
import { AmendPage } from './chart/AmendPage.js';
import { PersonPage } from './chart/PersonPage.js';
import { Page } from './parts/Page.js';
import { AddPersonPage } from './people/AddPersonPage.js';
import { PeoplePage } from './people/PeoplePage.js';
import { MeasurePage } from './round/MeasurePage.js';
import { RoundPage } from './round/RoundPage.js';
import { loadAbout } from './server/load.js';

/** Which page stands at which address. */
export function AppRoutes() {
  const app = useApp();
  useEffect(() => void loadAbout(app), [app]);
  return (
    <Switch>
      <Route path="/">
        <PeoplePage />
      </Route>
      <Route path="/people/new">
        <AddPersonPage />
      </Route>
      <Route path="/people/:person">{({ person }) => <PersonPage key={person} person={person} />}</Route>
      <Route path="/people/:person/round">{({ person }) => <RoundPage key={person} person={person} />}</Route>
      <Route path="/people/:person/round/pulse">
        {({ person }) => <MeasurePage key={`${person} pulse`} person={person} sign="pulse" />}
      </Route>
      <Route path="/people/:person/round/breaths">
        {({ person }) => <MeasurePage key={`${person} breaths`} person={person} sign="breaths" />}
      </Route>
      <Route path="/people/:person/values/:entry/amend">
        {({ person, entry }) => <AmendPage key={entry} person={person} entry={entry} />}
      </Route>
      <Route>
        <NoSuchPage />
      </Route>
    </Switch>
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
