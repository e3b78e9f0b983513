import type { CountOf } from '@evenfall/clinical';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { withNotDone } from './draft.js';
import { NotDoneForm, notDoneText } from './NotDoneForm.js';
import { nextHref } from './nextHref.js';
import { reasonsOf } from './notDoneReasons.js';
import { useCameFrom } from './useCameFrom.js';
import { useNextStep } from './useNextStep.js';
import type { Round } from './useRound.js';

type NotDoneHereProps = { readonly round: Round; readonly sign: CountOf; readonly person: string };

/** On the page that takes a sign: it is not done, and why; then on to what comes next. */
export function NotDoneHere({ round, sign, person }: NotDoneHereProps) {
  const { words } = useApp();
  const [, go] = useLocation();
  const cameFrom = useCameFrom(person);
  const [isAsking, setAsking] = useState(false);
  const nextStep = useNextStep();
  const { notDone } = round.draft[sign];
  if (notDone !== null)
    return (
      <div className="buttons">
        <p>{words.sentence('review.notDoneIs', { text: notDoneText(notDone, words) })}</p>
        <button
          type="button"
          className="button button-quiet"
          onClick={() => round.change((draft) => withNotDone(draft, sign, null))}
        >
          {words.sentence('review.notDoneUndo')}
        </button>
      </div>
    );
  if (!isAsking)
    return (
      <div className="buttons buttons-middle">
        <button type="button" className="button button-quiet" onClick={() => setAsking(true)}>
          {words.sentence('review.notDone')}
        </button>
      </div>
    );
  return (
    <NotDoneForm
      reasons={reasonsOf(sign)}
      onKeep={(kept) =>
        nextStep(withNotDone(round.draft, sign, kept), round, ({ step }) => {
          round.change((draft) => withNotDone(draft, sign, kept));
          go(cameFrom?.href ?? nextHref(person, step), { replace: true });
        })
      }
      onCancel={() => setAsking(false)}
    />
  );
}
