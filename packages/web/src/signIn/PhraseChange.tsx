import type { SignInState } from '@evenfall/api';
import { SIGN_IN_LIMITS } from '@evenfall/record';
import { type FormEvent, useState } from 'react';
import { useApp } from '../app/context.js';
import { refusedSecret } from './refusedSecret.js';
import { SecretField } from './SecretField.js';

type PhraseChangeProps = { readonly oldLabel: string; readonly onKept: (state: SignInState) => void };

/** A pass phrase of one's own in the place of the one before, typed twice. */
export function PhraseChange({ oldLabel, onKept }: PhraseChangeProps) {
  const { words, server } = useApp();
  const [typed, setTyped] = useState({ old: '', next: '', again: '' });
  const [wrong, setWrong] = useState<{ readonly at: 'old' | 'next' | 'again'; readonly says: string } | null>(
    null,
  );
  const set = (part: keyof typeof typed) => (text: string) => {
    setTyped({ ...typed, [part]: text });
    setWrong(null);
  };
  const says = (at: keyof typeof typed) => (wrong?.at === at ? wrong.says : null);
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    if (typed.old === '') return setWrong({ at: 'old', says: words.sentence('signIn.phraseMissing') });
    if (typed.next === '') return setWrong({ at: 'next', says: words.sentence('signIn.phraseMissing') });
    if (typed.next !== typed.again) return setWrong({ at: 'again', says: words.sentence('signIn.notSame') });
    const body = { old: typed.old, passPhrase: typed.next };
    const answer = await server.call('choosePassPhrase', { body });
    if (answer.ok) {
      setTyped({ old: '', next: '', again: '' });
      return onKept(answer.value);
    }
    setWrong({ at: answer.status === 422 ? 'next' : 'old', says: refusedSecret(answer, words) });
  };
  return (
    <form className="sign-in" noValidate onSubmit={(event) => void keep(event)}>
      <SecretField
        label={oldLabel}
        kind="current-password"
        value={typed.old}
        wrong={says('old')}
        onChange={set('old')}
      />
      <SecretField
        label={words.sentence('signIn.newPhrase')}
        hint={words.sentence('signIn.phraseHint', SIGN_IN_LIMITS)}
        kind="new-password"
        value={typed.next}
        wrong={says('next')}
        onChange={set('next')}
      />
      <SecretField
        label={words.sentence('signIn.again')}
        kind="new-password"
        value={typed.again}
        wrong={says('again')}
        onChange={set('again')}
      />
      <button type="submit" className="button button-first">
        {words.sentence('signIn.keepPhrase')}
      </button>
    </form>
  );
}
