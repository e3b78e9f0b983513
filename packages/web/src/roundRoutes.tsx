import { Route } from 'wouter';
import { withWords } from './app/deviceWords.js';
import { type Later, later, pageOf } from './app/later.js';
import { withTapRules } from './round/tapRulesLater.js';

/** Pages with the words and the rules that only a guided round needs. */
function ofARound<Pages>(pages: Later<Pages>): Later<Pages> {
  return withWords(['round'], withTapRules(pages));
}

/** Asked for once the first page is there (see `fetchTheRest`), so that a round begins without waiting. */
export const roundPages = ofARound(later(() => import('./roundPages.js')));
export const signPages = ofARound(later(() => import('./signPages.js')));
const PressurePage = pageOf(roundPages, (pages) => pages.PressurePage);
const MeasurePage = pageOf(roundPages, (pages) => pages.MeasurePage);
const PreparePage = pageOf(roundPages, (pages) => pages.PreparePage);
const RoundPage = pageOf(roundPages, (pages) => pages.RoundPage);
const SignsPage = pageOf(signPages, (pages) => pages.SignsPage);

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
