import { SCENARIOS, type Scenario, scenarioOf } from '@evenfall/physiology';
import { useEffect } from 'react';
import { Link, useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { useOwnScenarios } from '../scenarios/ownScenarios.js';
import { GiveUp } from './GiveUp.js';
import { GROUP_NAMES, GROUPS } from './groups.js';
import { roomAt } from './roomAt.js';
import { scenarioLesson, scenarioTitle, whoText } from './scenarioText.js';
import { usePractice } from './usePractice.js';
import { MET, personName } from './whoComesIn.js';

/** Who comes in: the simulated people, and what is under way. */
export function PracticePage() {
  const { words } = useApp();
  const say = words.sentence;
  const { draft, put, isElsewhere, goOnHere } = usePractice();
  // What another tab did is shown as it is now.
  useEffect(() => {
    if (isElsewhere) goOnHere();
  }, [isElsewhere, goOnHere]);
  const [, go] = useLocation();
  const own = useOwnScenarios().asked.value ?? [];
  return (
    <SimulatedPage
      title={say('practice.title')}
      back={{ href: '/', text: words.sentence('people.title') }}
      isWide
    >
      <p className="practice-lead">{say('practice.lead')}</p>
      <WhoMeasures />
      {draft === null ? null : (
        <div className="notice practice-under-way">
          <p>{say('practice.underWay', { text: personName(draft.visit.scenario) })}</p>
          <div className="buttons">
            <Link href={roomAt(draft.visit.scenario.id)} className="button button-first">
              {say('practice.goOn')}
            </Link>
            <GiveUp onGiveUp={() => put(null)} />
          </div>
        </div>
      )}
      <section aria-labelledby="practice-people">
        <div className="practice-people-head">
          <h2 id="practice-people">{say('practice.people')}</h2>
          <button
            type="button"
            className="button"
            onClick={() => {
              const at = crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
              go(`/practice/${SCENARIOS[at % SCENARIOS.length]?.id}`);
            }}
          >
            {say('practice.surprise')}
          </button>
        </div>
        {MET.map(({ group, ids }) => (
          <section key={group} aria-labelledby={`practice-${group}`}>
            <h3 id={`practice-${group}`} className="practice-group">
              {say(`practice.met-${group}`)}
            </h3>
            <People scenarios={peopleOf(ids)} />
          </section>
        ))}
      </section>
      <OwnPeople own={own} />
      <Lessons own={own} />
      <div className="buttons">
        <Link href="/practice/room" className="button">
          {say('practice.forAll')}
        </Link>
        <Link href="/practice/exercises" className="button">
          {say('practice.own')}
        </Link>
        <Link href="/practice/scenarios" className="button">
          {say('scenarioForm.title')}
        </Link>
        <Link href="/practice/plan" className="button">
          {say('plan.title')}
        </Link>
      </div>
    </SimulatedPage>
  );
}

/** Those that the place made for itself; nothing where there is none, or where they cannot be asked for just now. */
function OwnPeople({ own }: { readonly own: readonly Scenario[] }) {
  const { words } = useApp();
  if (own.length === 0) return null;
  return (
    <section aria-labelledby="practice-own">
      <h2 id="practice-own">{words.sentence('practice.ofOurOwn')}</h2>
      <People scenarios={own} />
    </section>
  );
}

/** For whoever teaches: what each person is there for. A learner who looks here finds the lesson before the person. */
function Lessons({ own }: { readonly own: readonly Scenario[] }) {
  const { words } = useApp();
  const say = words.sentence;
  const list = (scenarios: readonly Scenario[]) => (
    <ul className="practice-lessons">
      {scenarios.map((scenario) => (
        <li key={scenario.id}>
          <Link href={roomAt(scenario.id)}>{personName(scenario)}</Link>
          {': '}
          <strong>{scenarioTitle(scenario, words)}</strong>. {scenarioLesson(scenario, words)}
        </li>
      ))}
    </ul>
  );
  return (
    <details className="practice-teacher">
      <summary>{say('practice.forTeachers')}</summary>
      {GROUP_NAMES.map((group) => (
        <section key={group}>
          <h3 className="practice-group">{say(`practice.group-${group}`)}</h3>
          {list(peopleOf(GROUPS[group]))}
        </section>
      ))}
      {own.length === 0 ? null : (
        <section>
          <h3 className="practice-group">{say('practice.ofOurOwn')}</h3>
          {list(own)}
        </section>
      )}
    </details>
  );
}

function peopleOf(ids: readonly string[]): readonly Scenario[] {
  return ids.map(scenarioOf).filter((one) => one !== undefined);
}

function People({ scenarios }: { readonly scenarios: readonly Scenario[] }) {
  const { words } = useApp();
  return (
    <ul className="practice-people">
      {scenarios.map((scenario) => (
        <li key={scenario.id}>
          <Link href={roomAt(scenario.id)} className="practice-card">
            <span className="practice-name">{personName(scenario)}</span>
            <span className="small soft">{whoText(scenario, words)}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
