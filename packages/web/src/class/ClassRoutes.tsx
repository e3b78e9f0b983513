import { Link, Route, Switch } from 'wouter';
import { BookContext } from '../app/book.js';
import { useApp } from '../app/context.js';
import { AmendPage } from '../chart/AmendPage.js';
import { Page } from '../parts/Page.js';
import { ROUND_ROUTES } from '../roundRoutes.js';
import { ClassPage } from './ClassPage.js';
import { ClassPersonPage } from './ClassPersonPage.js';
import { SessionPage } from './SessionPage.js';

/** What was kept by agreement stands outside every session. */
const OUTSIDE = { book: 'class', session: null } as const;

/** Every page of the class book. Those of a session stand below its address, so that its rounds never leave it. */
export function ClassRoutes() {
  return (
    <Switch>
      <Route path="/class">
        <BookContext value={OUTSIDE}>
          <ClassPage />
        </BookContext>
      </Route>
      <Route path="/class/kept" nest>
        <BookContext value={OUTSIDE}>
          <Switch>
            <Route path="/people/:person">
              {({ person }) => <ClassPersonPage key={person} person={person} />}
            </Route>
            <Route>
              <NoSuchPage />
            </Route>
          </Switch>
        </BookContext>
      </Route>
      <Route path="/class/:session" nest>
        {({ session }) => <SessionRoutes key={session} session={session} />}
      </Route>
    </Switch>
  );
}

function SessionRoutes({ session }: { readonly session: string }) {
  return (
    <BookContext value={{ book: 'class', session }}>
      <Switch>
        <Route path="/">
          <SessionPage session={session} />
        </Route>
        <Route path="/people/:person">
          {({ person }) => <ClassPersonPage key={person} person={person} />}
        </Route>
        {ROUND_ROUTES}
        <Route path="/people/:person/values/:entry/amend">
          {({ person, entry }) => <AmendPage key={entry} person={person} entry={entry} />}
        </Route>
        <Route>
          <NoSuchPage />
        </Route>
      </Switch>
    </BookContext>
  );
}

function NoSuchPage() {
  const { words } = useApp();
  return (
    <Page title={words.sentence('app.notFound')}>
      <Link href="~/class" className="button">
        {words.sentence('class.title')}
      </Link>
    </Page>
  );
}
