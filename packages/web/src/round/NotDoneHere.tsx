import { type CountOf, NOT_DONE_REASONS, type NotDoneReason } from '@evenfall/clinical';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { withNotDone } from './draft.js';
import { NotDoneForm, notDoneText } from './NotDoneForm.js';
import { nextHref } from './nextHref.js';
import { standingOf } from './standing.js';
import { useCameFrom } from './useCameFrom.js';
import type { Round } from './useRound.js';

/** The reasons for which a count can be left out: no barred arm keeps anybody from watching a chest. */
export function reasonsOf(sign: CountOf): readonly NotDoneReason[] {
  return sign === 'breaths' ? NOT_DONE_REASONS.filter((one) => one !== 'arm-barred') : NOT_DONE_REASONS;
}

type NotDoneHereProps = { readonly round: Round; readonly sign: CountOf; readonly person: string };

/** On the page that takes a sign: it is not done, and why; then on to what comes next. */
export function NotDoneHere({ round, sign, person }: NotDoneHereProps) {
  const { words, program } = useApp();
  const [, go] = useLocation();
  const cameFrom = useCameFrom(person);
  const [isAsking, setAsking] = useState(false);
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
      onKeep={(kept) => {
        const next = withNotDone(round.draft, sign, kept);
        round.change((draft) => withNotDone(draft, sign, kept));
        const { step } = standingOf(next, { ...round, program }).next;
        go(cameFrom?.href ?? nextHref(person, step), { replace: true });
      }}
      onCancel={() => setAsking(false)}
    />
  );
}
