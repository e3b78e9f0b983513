import { useState } from 'react';
import { useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { deviceShelf, keepPractice, readPractice } from '../practice/keptPractice.js';
import { practisedOf } from '../practice/waitingExercise.js';
import { nextHref } from '../round/nextHref.js';
import {
  bookOfWaiting,
  closingGivenUp,
  exerciseGivenUp,
  takenBack,
  type UnsentCounts,
  unsentOf,
  whatWaits,
} from '../round/waiting.js';
import { useAnswering } from '../signIn/useAccess.js';
import type { WaitingRound } from '../store/kept.js';

const REFUSED = {
  round: 'app.waitingRefused',
  series: 'app.waitingSeriesRefused',
  closing: 'app.closedRefused',
  exercise: 'app.exerciseRefused',
} as const;

type NoticeProps = {
  /** One line, with the rest behind it: where every line of the screen is needed. */
  readonly isShort?: boolean;
};

/** Says which signed rounds are still only on this device, and lets a hand send them or take one back. */
export function WaitingNotice({ isShort = false }: NoticeProps) {
  const { words, sending } = useApp();
  const waiting = useKept(({ kept }) => kept.waiting);
  const [isSending, setSending] = useState(false);
  if (waiting.length === 0) return null;
  const refused = waiting.filter((one) => one.refused !== null);
  const unsent = unsentOf(waiting);

  const send = async () => {
    setSending(true);
    await sending.now();
    setSending(false);
  };
  const again = (
    <>
      <p className="soft small">{words.sentence('app.waitingAgain')}</p>
      <button type="button" className="button" onClick={() => void send()} aria-disabled={isSending}>
        {words.sentence(isSending ? 'app.sending' : 'app.sendNow')}
      </button>
    </>
  );
  return (
    <div className="notices not-printed" role="status">
      {unsent === null ? null : isShort ? (
        <details className="notice-line">
          <summary>{words.sentence('app.waitingShort', unsent)}</summary>
          <div className="notice">
            <WhatIsUnsent unsent={unsent} />
            {again}
          </div>
        </details>
      ) : (
        <div className="notice">
          <WhatIsUnsent unsent={unsent} />
          {again}
        </div>
      )}
      {refused.map((one) => (
        <RefusedOne key={one.round} one={one} />
      ))}
    </div>
  );
}

/** What the server refused, and the way to put it right; where its place is taken by another one, that is said. */
function RefusedOne({ one }: { readonly one: WaitingRound }) {
  return one.person === null ? <RefusedExercise one={one} /> : <RefusedRound one={one} />;
}

/** An exercise goes back to the practice room, unless another one is under way there; or it is given up. */
function RefusedExercise({ one }: { readonly one: WaitingRound }) {
  const { store, words } = useApp();
  const agent = useAnswering();
  const shelf = deviceShelf();
  const practised = practisedOf(one);
  const there = readPractice(shelf, agent);
  const isFree = practised !== null && (there === null || there.exercise === one.round);
  const forget = () => store.change((state) => ({ ...state, kept: exerciseGivenUp(state.kept, one.round) }));
  return (
    <div className="notice">
      <p>
        {words.sentence('app.exerciseRefused')} {one.refused}
      </p>
      <div className="buttons">
        {isFree ? (
          <button
            type="button"
            className="button"
            onClick={() => {
              if (keepPractice(shelf, agent, practised)) forget();
            }}
          >
            {words.sentence('app.exerciseBack')}
          </button>
        ) : null}
        <button type="button" className="button button-quiet" onClick={forget}>
          {words.sentence('app.exerciseGiveUp')}
        </button>
      </div>
    </div>
  );
}

function RefusedRound({ one }: { readonly one: WaitingRound }) {
  const { store, words } = useApp();
  const [, go] = useLocation();
  const what = whatWaits(one);
  const { book } = bookOfWaiting(one);
  const isClosing = what === 'closing';
  const isPlaceTaken = useKept(({ kept }) => !isClosing && takenBack(kept, one.round) === kept);
  return (
    <div className="notice">
      <p>
        {words.sentence(REFUSED[what])} {one.refused}
      </p>
      {isPlaceTaken ? (
        <p>{words.sentence('app.takeBackLater')}</p>
      ) : (
        <button
          type="button"
          className="button"
          onClick={() => {
            store.change((state) => ({
              ...state,
              kept: isClosing ? closingGivenUp(state.kept, one.round) : takenBack(state.kept, one.round),
            }));
            // What is to be changed stands in the review.
            if (what === 'round' && one.person !== null && book === 'care')
              go(nextHref(one.person, 'review'));
          }}
        >
          {words.sentence(isClosing ? 'app.closeAnew' : 'app.takeBack')}
        </button>
      )}
    </div>
  );
}

function WhatIsUnsent({
  unsent: { rounds, series, closings, exercises },
}: {
  readonly unsent: UnsentCounts;
}) {
  const { words } = useApp();
  return (
    <>
      {rounds === 0 ? null : <p>{words.sentence('app.waiting', { rounds })}</p>}
      {series === 0 ? null : <p>{words.sentence('app.waitingSeries', { series })}</p>}
      {closings === 0 ? null : <p>{words.sentence('app.waitingClosed')}</p>}
      {exercises === 0 ? null : <p>{words.sentence('app.waitingExercises', { exercises })}</p>}
    </>
  );
}
