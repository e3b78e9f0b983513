import { Link, Route, Switch } from 'wouter';
import { useApp } from '../app/context.js';
import { Page } from '../parts/Page.js';
import { PlanPage } from '../plan/PlanPage.js';
import { ScenarioPage } from '../scenarios/ScenarioPage.js';
import { ScenariosPage } from '../scenarios/ScenariosPage.js';
import { DebriefPage } from './DebriefPage.js';
import { ExercisesPage } from './ExercisesPage.js';

/** Pages about practice beside the room: what came of exercises, simulated people of the place's own. */
export function AfterPracticeRoutes() {
  return (
    <Switch>
      <Route path="/practice/exercises">
        <ExercisesPage />
      </Route>
      <Route path="/practice/exercises/:exercise">
        {({ exercise }) => <DebriefPage key={exercise} exercise={exercise} />}
      </Route>
      <Route path="/practice/plan">
        <PlanPage />
      </Route>
      <Route path="/practice/scenarios">
        <ScenariosPage />
      </Route>
      <Route path="/practice/scenarios/:source">
        {({ source }) => <ScenarioPage key={source} source={source} />}
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
