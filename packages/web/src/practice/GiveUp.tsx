import { useState } from 'react';
import { useApp } from '../app/context.js';

/** Gives the visit under way up, once that was said twice: nothing of it can be had back. */
export function GiveUp({ onGiveUp }: { readonly onGiveUp: () => void }) {
  const { words } = useApp();
  const [isAsked, setAsked] = useState(false);
  if (!isAsked)
    return (
      <button type="button" className="button button-quiet" onClick={() => setAsked(true)}>
        {words.sentence('practice.giveUp')}
      </button>
    );
  return (
    <div className="give-up" role="alert">
      <p>{words.sentence('practice.giveUpSure')}</p>
      <div className="buttons">
        <button type="button" className="button" onClick={onGiveUp}>
          {words.sentence('practice.giveUpYes')}
        </button>
        <button type="button" className="button button-first" onClick={() => setAsked(false)}>
          {words.sentence('practice.giveUpNo')}
        </button>
      </div>
    </div>
  );
}
