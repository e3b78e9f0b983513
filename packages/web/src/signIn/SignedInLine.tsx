import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { setsText, unsignedSets } from '../people/unsignedSets.js';
import { useSignedIn } from './useAccess.js';

/** Who is signed in, and the ways to hand the device over; nothing where nobody signs in. */
export function SignedInLine({ isStart }: { readonly isStart: boolean }) {
  const { words, signIn, store } = useApp();
  const who = useSignedIn();
  const [wrong, setWrong] = useState(false);
  const [asked, setAsked] = useState<{ readonly by: () => Promise<boolean> } | null>(null);
  const mine = who?.agent.id ?? null;
  const measuring = useKept(({ kept }) => kept.agent);
  useEffect(() => {
    // On a device that was passed round a class somebody else may have been chosen; here nobody charts for another.
    if (mine !== null && measuring !== mine)
      store.change((state) => ({ ...state, kept: { ...state.kept, agent: mine } }));
  }, [mine, measuring, store]);
  if (who === null) return null;
  const go = async (by: () => Promise<boolean>) => {
    setAsked(null);
    setWrong(!(await by()));
  };
  /** What was typed and not signed waits for whoever typed it alone, which is said first. */
  const leave = (by: () => Promise<boolean>) =>
    unsignedSets(store.get().kept).length === 0 ? void go(by) : setAsked({ by });
  return (
    <div className="who-is">
      <span>
        <span className="soft">{words.sentence('people.measuring')}</span> {who.agent.name}
      </span>
      {isStart ? (
        <span className="who-ways">
          <button type="button" className="button button-quiet" onClick={() => leave(signIn.lock)}>
            {words.sentence('signIn.handOver')}
          </button>
          <button type="button" className="button button-quiet" onClick={() => leave(signIn.signOut)}>
            {words.sentence('signIn.signOut')}
          </button>
          <Link href="/account" className="button button-quiet">
            {words.sentence('signIn.account')}
          </Link>
        </span>
      ) : null}
      {asked === null ? null : (
        <div className="notice" role="alert">
          <p>{words.sentence('people.setsWait', { text: setsText(store.get()) })}</p>
          <div className="buttons">
            <button type="button" className="button" onClick={() => void go(asked.by)}>
              {words.sentence('people.letWait')}
            </button>
            <button type="button" className="button button-quiet" onClick={() => setAsked(null)}>
              {words.sentence('app.cancel')}
            </button>
          </div>
        </div>
      )}
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
