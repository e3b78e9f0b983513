import type { Scenario } from '@evenfall/physiology';
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../../app/context.js';
import { begunPractice } from '../begin.js';
import { type Ears, FRESH_EARS, keepEars, readEars } from '../ears.js';
import { GiveUp } from '../GiveUp.js';
import { deviceShelf, type PracticeDraft } from '../keptPractice.js';
import { nowOfThisPage } from '../ofThisPage.js';
import { roomAt } from '../roomAt.js';
import { personName, seenText } from '../whoComesIn.js';
import { EarsPanel } from './EarsPanel.js';
import { ShowPanel } from './ShowPanel.js';

type BeginProps = {
  readonly scenario: Scenario;
  readonly draft: PracticeDraft | null;
  readonly onBegin: (draft: PracticeDraft) => void;
  readonly onGiveUp: () => void;
};

/** The ears first, then one comes in. */
export function BeginPanel({ scenario, draft, onBegin, onGiveUp }: BeginProps) {
  const { words, ids, clock, store } = useApp();
  const shelf = useMemo(deviceShelf, []);
  const ears = useMemo(() => readEars(shelf) ?? FRESH_EARS, [shelf]);
  const [shownSeed, setShownSeed] = useState<number | null>(null);
  const begin = (said: Ears) => {
    keepEars(shelf, said);
    const { sequence } = store.get().kept;
    store.change((state) => ({ ...state, kept: { ...state.kept, sequence: sequence + 1 } }));
    const made = { exercise: ids(), round: ids(), sequence, begunAt: clock.stamp() };
    nowOfThisPage(made.exercise);
    const { aids, thresholdDb, showsSounds } = said;
    onBegin({
      ...begunPractice(scenario, freshSeed(), made, { aids, thresholdDb }),
      wasShown: showsSounds,
    });
  };
  if (shownSeed !== null)
    return <ShowPanel scenario={scenario} seed={shownSeed} ears={ears} onEnd={() => setShownSeed(null)} />;
  return (
    <>
      <p>{seenText(scenario, words)}</p>
      {draft === null ? (
        <EarsPanel ears={ears} done={words.sentence('practice.withSound')} onDone={begin} />
      ) : (
        <div className="notice">
          <p>
            {words.sentence('practice.otherUnderWay')}{' '}
            <Link href={roomAt(draft.visit.scenario.id)}>
              {words.sentence('practice.underWay', { text: personName(draft.visit.scenario) })}
            </Link>
          </p>
          <GiveUp onGiveUp={onGiveUp} />
        </div>
      )}
      <button type="button" className="button button-quiet" onClick={() => setShownSeed(freshSeed())}>
        {words.sentence('practice.showMe')}
      </button>
    </>
  );
}

function freshSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
}
