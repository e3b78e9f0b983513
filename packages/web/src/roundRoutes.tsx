import { Route } from 'wouter';
import { later, pageOf } from './app/later.js';
import { asidePages, tapPages } from './round/asideLater.js';
import { goOnPages, ofARound } from './round/goOnLater.js';

const roundPages = ofARound(later(() => import('./roundPages.js')));
const MeasurePage = pageOf(roundPages, (pages) => pages.MeasurePage);
const PreparePage = pageOf(roundPages, (pages) => pages.PreparePage);
const RoundPage = pageOf(roundPages, (pages) => pages.RoundPage);
const PressurePage = pageOf(goOnPages, (pages) => pages.PressurePage);
const SignsPage = pageOf(asidePages, (pages) => pages.SignsPage);

/**
 * Fetches every part of a round, in the order in which it is asked for: once the first page is there (see `fetchTheRest`),
 * so that a round begins without waiting and goes on where the network does not.
 */
export async function fetchTheRound(): Promise<void> {
  await roundPages.fetch();
  await goOnPages.fetch();
  await asidePages.fetch();
  await tapPages.fetch();
}

/** The screens of a round: the same ones at the bedside and, below the address of a session, in a class. */
export const ROUND_ROUTES = (
  <>
    <Route path="/people/:person/round">{({ person }) => <RoundPage key={person} person={person} />}</Route>
    <Route path="/people/:person/round/pulse">
      {({ person }) => <MeasurePage key={`${person} pulse`} person={person} sign="pulse" />}
    </Route>
    <Route path="/people/:person/round/breaths">
      {({ person }) => <MeasurePage key={`${person} breaths`} person={person} sign="breaths" />}
    </Route>
    <Route path="/people/:person/round/prepare">
      {({ person }) => <PreparePage key={person} person={person} />}
    </Route>
    <Route path="/people/:person/round/pressure">
      {({ person }) => <PressurePage key={person} person={person} />}
    </Route>
    <Route path="/people/:person/round/signs">
      {({ person }) => <SignsPage key={person} person={person} />}
    </Route>
  </>
);
