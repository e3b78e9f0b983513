import type { ExerciseList } from '@evenfall/api';
import { SCENARIOS } from '@evenfall/physiology';
import { useEffect, useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { PracticePageFrame } from './PracticePageFrame.js';
import type { HasDebrief } from './RoomPage.js';
import { scenarioTitle, whoText } from './scenarioText.js';
import { usePractice } from './usePractice.js';

/** Who comes in: the simulated people, what is under way, and what was practised. */
export function PracticePage({ hasDebrief = false }: HasDebrief) {
  const { words, server } = useApp();
  const say = words.sentence;
  const { draft, put } = usePractice();
  const [, go] = useLocation();
  const [list, setList] = useState<ExerciseList | null>(null);
  useEffect(() => {
    let isHere = true;
    void server.call('listExercises', {}).then((answer) => {
      if (isHere && answer.ok) setList(answer.value);
    });
    return () => {
      isHere = false;
    };
  }, [server]);
  const names = useMemo(() => new Map(list?.agents.map(({ id, name }) => [id, name])), [list]);
  return (
    <PracticePageFrame
      title={say('practice.title')}
      back={{ href: '/', text: words.sentence('people.title') }}
      isWide
    >
      <p className="practice-lead">{say('practice.lead')}</p>
      <WhoMeasures />
      {draft === null ? null : (
        <div className="notice practice-under-way">
          <p>{say('practice.underWay', { text: scenarioTitle(draft.visit.scenario, words) })}</p>
          <div className="buttons">
            <Link href={`/practice/${draft.visit.scenario.id}`} className="button button-first">
              {say('practice.goOn')}
            </Link>
            <button type="button" className="button button-quiet" onClick={() => put(null)}>
              {say('practice.giveUp')}
            </button>
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
        <ul className="practice-people">
          {SCENARIOS.map((scenario) => (
            <li key={scenario.id}>
              <Link href={`/practice/${scenario.id}`} className="practice-card">
                <span className="practice-name">{scenarioTitle(scenario, words)}</span>
                <span className="small soft">{whoText(scenario, words)}</span>
              </Link>
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="practice-own">
        <h2 id="practice-own">{say('practice.own')}</h2>
        {list === null || list.exercises.length === 0 ? (
          <p className="soft">{say('practice.ownNone')}</p>
        ) : (
          <ul className="practice-own">
            {list.exercises.map((one) => {
              const text = `${scenarioTitle({ id: one.scenario, title: one.title }, words)}, ${stampText({ at: one.measuredAt }, words)}`;
              const says = say('practice.ownRow', { text, who: names.get(one.agent) ?? '' });
              const numbers =
                one.systolic === null ? say('practice.noNumbers') : `${one.systolic}/${one.diastolic ?? 'P'}`;
              return (
                <li key={one.id}>
                  {hasDebrief ? (
                    <Link href={`/practice/exercises/${one.id}`}>{says}</Link>
                  ) : (
                    <span>{says}</span>
                  )}
                  <strong>{numbers}</strong>
                  {one.wasShown ? <span className="small soft">{say('practice.shownMark')}</span> : null}
                </li>
              );
            })}
          </ul>
        )}
      </section>
    </PracticePageFrame>
  );
}
