import type { NotDoneReason } from '@evenfall/clinical';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import type { NotDone, RoundDraft } from './draft.js';
import { NotDoneForm, notDoneText } from './NotDoneForm.js';
import { useCameFrom } from './useCameFrom.js';
import type { Round } from './useRound.js';

type NotDoneHereProps = {
  readonly round: Round;
  readonly person: string;
  /** Why the sign was not done; null while nothing was said. */
  readonly notDone: NotDone | null;
  /** The reasons that can apply to it. */
  readonly reasons: readonly NotDoneReason[];
  /** The round with a reason, or with none once it is taken back. */
  readonly withReason: (draft: RoundDraft, notDone: NotDone | null) => RoundDraft;
  /** Where it goes on to what comes next; not asked where one came from somewhere to go back to. */
  readonly onGoOn: () => void;
};

/** On the page that takes a sign: it is not done, and why; what was said is confirmed there, and can be taken back. */
export function NotDoneHere({ round, person, notDone, reasons, withReason, onGoOn }: NotDoneHereProps) {
  const { words } = useApp();
  const [isAsking, setAsking] = useState(false);
  if (notDone !== null)
    return (
      <NotDoneSaid
        person={person}
        notDone={notDone}
        isNew={isAsking}
        onGoOn={onGoOn}
        onTakenBack={() => {
          setAsking(false);
          round.change((draft) => withReason(draft, null));
        }}
      />
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
      reasons={reasons}
      onKeep={(kept) => round.change((draft) => withReason(draft, kept))}
      onCancel={() => setAsking(false)}
    />
  );
}

type SaidProps = Pick<NotDoneHereProps, 'person' | 'onGoOn'> & {
  readonly notDone: NotDone;
  /** Whether it was said just now: then one stands before it. */
  readonly isNew: boolean;
  readonly onTakenBack: () => void;
};

/** Why it was not done, in words, with the way to take it back and the way on. */
function NotDoneSaid({ person, notDone, isNew, onTakenBack, onGoOn }: SaidProps) {
  const { words } = useApp();
  const said = useRef<HTMLParagraphElement>(null);
  const cameFrom = useCameFrom(person);
  useEffect(() => {
    if (!isNew) return;
    window.scrollTo(0, 0);
    said.current?.focus({ preventScroll: true });
  }, [isNew]);
  return (
    <div className="not-done-said">
      <p ref={said} tabIndex={-1} className="not-done-why">
        {words.sentence('review.notDoneIs', { text: notDoneText(notDone, words) })}
      </p>
      <button type="button" className="button button-quiet" onClick={onTakenBack}>
        {words.sentence('review.notDoneUndo')}
      </button>
      <div className="next-steps">
        {cameFrom === null ? (
          <button type="button" className="button button-first button-large" onClick={onGoOn}>
            {words.sentence('count.goOn')}
          </button>
        ) : (
          <Link href={cameFrom.href} className="button button-first button-large">
            {words.sentence('rest.back')}
          </Link>
        )}
      </div>
    </div>
  );
}
