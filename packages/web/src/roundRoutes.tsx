import { Route } from 'wouter';
import { PressurePage } from './pressure/PressurePage.js';
import { MeasurePage } from './round/MeasurePage.js';
import { PreparePage } from './round/PreparePage.js';
import { RoundPage } from './round/RoundPage.js';
import { SignsPage } from './signs/SignsPage.js';

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
