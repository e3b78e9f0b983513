import { type StoredEntry, upgradeExercise } from '@evenfall/record';
import { useCallback } from 'react';
import { useApp, useKept } from '../app/context.js';
import { stampText } from '../app/times.js';
import { Asking } from '../parts/Asking.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { DebriefShown } from './DebriefShown.js';
import { scenarioName } from './exerciseName.js';
import { useFetched } from './useFetched.js';

type Kept = Extract<StoredEntry, { kind: 'exercise' }>;

/** One kept exercise and what came of it. */
export function DebriefPage({ exercise }: { readonly exercise: string }) {
  const { words, server } = useApp();
  const ask = useCallback(() => server.call('readExercise', { params: { exercise } }), [server, exercise]);
  const { asked, again } = useFetched(ask);
  // One that still waits on this device is shown from here, without network too.
  const waits = useKept(({ kept }) =>
    kept.waiting.find(({ round, person }) => person === null && round === exercise),
  );
  const waiting = waits?.entries[0];
  const here =
    waiting === undefined ? null : { ...waiting, content: upgradeExercise(waiting.content, waiting.schema) };
  const entry = (asked.value?.entry ?? here) as Kept | null;
  const name =
    entry === null ? null : scenarioName(entry.content.scenario.id, entry.content.scenario.title, words);
  const who = asked.value?.agents.find(({ id }) => id === entry?.agent)?.name;
  return (
    <SimulatedPage
      title={name === null ? words.sentence('debrief.title') : words.sentence('debrief.titleOf', { name })}
      back={{ href: '/practice/exercises', text: words.sentence('debrief.listBack') }}
      under={
        entry === null ? null : (
          <p className="soft">
            {words.sentence('debrief.by', {
              name: who ?? words.sentence('chart.unknownAgent'),
              when: stampText(entry.measuredAt, words),
            })}
          </p>
        )
      }
    >
      {waits !== undefined && entry !== null ? (
        <DebriefShown exercise={entry.content} />
      ) : (
        <Asking asked={asked} again={again} missing={words.sentence('debrief.missing')}>
          {() => (entry === null ? null : <DebriefShown exercise={entry.content} />)}
        </Asking>
      )}
    </SimulatedPage>
  );
}
