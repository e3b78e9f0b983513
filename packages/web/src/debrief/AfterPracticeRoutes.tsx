import { Link, Route, Switch } from 'wouter';
import { useApp } from '../app/context.js';
import { Page } from '../parts/Page.js';
import { DebriefPage } from './DebriefPage.js';
import { ExercisesPage } from './ExercisesPage.js';

/** Pages about practice beside the room: what came of exercises. */
export function AfterPracticeRoutes() {
  return (
    <Switch>
      <Route path="/practice/exercises">
        <ExercisesPage />
      </Route>
      <Route path="/practice/exercises/:exercise">
        {({ exercise }) => <DebriefPage key={exercise} exercise={exercise} />}
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
