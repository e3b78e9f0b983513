import type { SignedInHere } from '@evenfall/api';
import { useApp } from '../app/context.js';
import { CoverFrame } from './CoverFrame.js';
import { PhraseChange } from './PhraseChange.js';

/** Whoever signs in with a first pass phrase, which somebody else knows, chooses one of their own. */
export function OwnPhrasePage({ who }: { readonly who: SignedInHere }) {
  const { words, signIn } = useApp();
  return (
    <CoverFrame title={words.sentence('signIn.ownTitle')}>
      <p>{words.sentence('signIn.ownWhy', { name: who.agent.name })}</p>
      <PhraseChange oldLabel={words.sentence('signIn.firstPhrase')} onKept={signIn.heard} />
      <button type="button" className="button button-quiet" onClick={() => void signIn.signOut()}>
        {words.sentence('signIn.signOut')}
      </button>
    </CoverFrame>
  );
}
