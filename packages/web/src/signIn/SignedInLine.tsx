import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { useSignedIn } from './useAccess.js';

/** Who is signed in, and the ways to hand the device over; nothing where nobody signs in. */
export function SignedInLine({ isStart }: { readonly isStart: boolean }) {
  const { words, signIn, store } = useApp();
  const who = useSignedIn();
  const [wrong, setWrong] = useState(false);
  const mine = who?.agent.id ?? null;
  const measuring = useKept(({ kept }) => kept.agent);
  useEffect(() => {
    // On a device that was passed round a class somebody else may have been chosen; here nobody charts for another.
    if (mine !== null && measuring !== mine)
      store.change((state) => ({ ...state, kept: { ...state.kept, agent: mine } }));
  }, [mine, measuring, store]);
  if (who === null) return null;
  const leave = async (by: () => Promise<boolean>) => setWrong(!(await by()));
  return (
    <div className="who-is">
      <span>
        <span className="soft">{words.sentence('people.measuring')}</span> {who.agent.name}
      </span>
      {isStart ? (
        <span className="who-ways">
          <button type="button" className="button button-quiet" onClick={() => void leave(signIn.lock)}>
            {words.sentence('signIn.handOver')}
          </button>
          <button type="button" className="button button-quiet" onClick={() => void leave(signIn.signOut)}>
            {words.sentence('signIn.signOut')}
          </button>
          <Link href="/account" className="button button-quiet">
            {words.sentence('signIn.account')}
          </Link>
        </span>
      ) : null}
      {wrong ? (
        <p className="field-wrong" role="alert">
          {words.sentence('signIn.unreachable')}
        </p>
      ) : null}
      {isStart && !who.hasPin ? (
        <p className="small soft who-note">{words.sentence('signIn.noPinYet')}</p>
      ) : null}
    </div>
  );
}
