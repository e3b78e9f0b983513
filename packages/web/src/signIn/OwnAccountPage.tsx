import { SIGN_IN_LIMITS } from '@evenfall/record';
import { type FormEvent, useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { Page } from '../parts/Page.js';
import { PhraseChange } from './PhraseChange.js';
import { refusedSecret } from './refusedSecret.js';
import { SecretField } from './SecretField.js';
import { useSignedIn } from './useAccess.js';

/** One's own account: a PIN for this and other devices, another pass phrase, the way out. */
export function OwnAccountPage() {
  const { words, signIn } = useApp();
  const who = useSignedIn();
  const [isChanged, setChanged] = useState(false);
  const back = { href: '/', text: words.sentence('people.title') };
  if (who === null) {
    return (
      <Page title={words.sentence('signIn.account')} back={back}>
        <p>{words.sentence('signIn.noAccounts')}</p>
        <Link href="/accounts" className="button">
          {words.sentence('signIn.accounts')}
        </Link>
      </Page>
    );
  }
  return (
    <Page title={words.sentence('signIn.account')} back={back} under={<p>{who.agent.name}</p>}>
      <p>
        {words.sentence('signIn.roles', {
          roles: who.roles.map((role) => words.title('accountRole', role)).join(', '),
        })}
      </p>
      {who.roles.includes('owner') ? (
        <Link href="/accounts" className="button">
          {words.sentence('signIn.accounts')}
        </Link>
      ) : null}
      <section className="account-part" aria-labelledby="pin-title">
        <h2 id="pin-title">{words.sentence('signIn.pinTitle')}</h2>
        <p>
          {who.hasPin ? words.sentence('signIn.pinHas') : words.sentence('signIn.pinWhy', SIGN_IN_LIMITS)}
        </p>
        <PinChange />
      </section>
      <section className="account-part" aria-labelledby="phrase-title">
        <h2 id="phrase-title">{words.sentence('signIn.phraseTitle')}</h2>
        {isChanged ? (
          <p className="notice" role="status">
            {words.sentence('signIn.phraseKept')}
          </p>
        ) : null}
        <PhraseChange
          oldLabel={words.sentence('signIn.phrase')}
          onKept={(state) => {
            setChanged(true);
            signIn.heard(state);
          }}
        />
      </section>
    </Page>
  );
}

function PinChange() {
  const { words, server, signIn } = useApp();
  const [phrase, setPhrase] = useState('');
  const [pin, setPin] = useState('');
  const [said, setSaid] = useState(false);
  const [wrong, setWrong] = useState<{ readonly at: 'phrase' | 'pin'; readonly says: string } | null>(null);
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setSaid(false);
    if (pin === '') return setWrong({ at: 'pin', says: words.sentence('signIn.pinMissing') });
    if (phrase === '') return setWrong({ at: 'phrase', says: words.sentence('signIn.phraseMissing') });
    const answer = await server.call('choosePin', { body: { passPhrase: phrase, pin } });
    if (!answer.ok)
      return setWrong({ at: answer.status === 422 ? 'pin' : 'phrase', says: refusedSecret(answer, words) });
    setPhrase('');
    setPin('');
    setSaid(true);
    signIn.heard(answer.value);
  };
  return (
    <form className="sign-in" noValidate onSubmit={(event) => void keep(event)}>
      {said ? (
        <p className="notice" role="status">
          {words.sentence('signIn.pinKept')}
        </p>
      ) : null}
      <SecretField
        label={words.sentence('signIn.newPin')}
        hint={words.sentence('signIn.pinHint', SIGN_IN_LIMITS)}
        kind="pin"
        value={pin}
        wrong={wrong?.at === 'pin' ? wrong.says : null}
        onChange={(typed) => {
          setPin(typed);
          setWrong(null);
        }}
      />
      <SecretField
        label={words.sentence('signIn.phrase')}
        kind="current-password"
        value={phrase}
        wrong={wrong?.at === 'phrase' ? wrong.says : null}
        onChange={(typed) => {
          setPhrase(typed);
          setWrong(null);
        }}
      />
      <button type="submit" className="button button-first">
        {words.sentence('signIn.keepPin')}
      </button>
    </form>
  );
}
