import { useState } from 'react';
import { useLocation } from 'wouter';
import { sessionHref, useBook } from '../app/book.js';
import { useApp } from '../app/context.js';
import { reloadRecord } from '../server/load.js';
import { withoutClassPerson } from './forget.js';
import { refusedText } from './refused.js';

type WithdrawProps = {
  readonly person: string;
  readonly session: string | null;
  readonly pseudonym: string;
};

/** Somebody takes back everything of theirs. Asked once, since it cannot be undone; for no reason. */
export function Withdraw({ person, session, pseudonym }: WithdrawProps) {
  const app = useApp();
  const { words, server, store } = app;
  const inBook = useBook();
  const [isAsking, setAsking] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const [, go] = useLocation();
  if (session === null) return null;
  if (!isAsking) {
    return (
      <div className="chart-ends">
        <button type="button" className="button button-quiet" onClick={() => setAsking(true)}>
          {words.sentence('class.withdraw')}
        </button>
      </div>
    );
  }
  const withdraw = async () => {
    setRefused(null);
    const answer = await server.call('withdrawClassPerson', {
      params: { session, person },
      body: { withdraws: true },
    });
    if (!answer.ok) return setRefused(refusedText(answer, words));
    store.change((state) => ({ ...state, kept: withoutClassPerson(state.kept, person) }));
    go(sessionHref(inBook.session), { replace: true });
    await reloadRecord(app, person, 'class');
  };
  return (
    <div className="notice" role="alert">
      <p>{words.sentence('class.withdrawSure', { text: pseudonym })}</p>
      {refused === null ? null : <p>{refused}</p>}
      <div className="buttons">
        <button type="button" className="button" onClick={() => void withdraw()}>
          {words.sentence('class.withdrawNow')}
        </button>
        <button type="button" className="button button-quiet" onClick={() => setAsking(false)}>
          {words.sentence('app.cancel')}
        </button>
      </div>
    </div>
  );
}
