import type { SignInState } from '@evenfall/api';
import { type FormEvent, useState } from 'react';
import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { ClosedWaiting } from './ClosedWaiting.js';
import { CoverFrame } from './CoverFrame.js';
import { refusedSecret } from './refusedSecret.js';
import { SecretField } from './SecretField.js';

type Here = SignInState['here'];

type SignInPageProps = { readonly here: Here; readonly isUntold: boolean };

/** Who goes on: somebody who signed in on this device, by PIN; anybody else with name and pass phrase. */
export function SignInPage({ here, isUntold }: SignInPageProps) {
  const { words } = useApp();
  const byPin = here.filter(({ hasPin }) => hasPin);
  const [isAnother, setAnother] = useState(false);
  const [chosen, setChosen] = useState<Here[number] | null>(null);
  const [isEnded, setEnded] = useState(false);
  const one = chosen ?? (byPin.length === 1 ? (byPin[0] ?? null) : null);
  if (byPin.length === 0 || isAnother) {
    return (
      <CoverFrame title={words.sentence('signIn.title')}>
        {isUntold ? <LockedAlone /> : null}
        {isEnded ? (
          <p className="notice" role="alert">
            {words.sentence('signIn.pinEnded')}
          </p>
        ) : null}
        <PhraseForm />
        <ClosedWaiting />
        {byPin.length === 0 ? null : (
          <button type="button" className="button button-quiet" onClick={() => setAnother(false)}>
            {words.sentence('signIn.backToPin')}
          </button>
        )}
      </CoverFrame>
    );
  }
  return (
    <CoverFrame title={words.sentence('signIn.goOn')}>
      {isUntold ? <LockedAlone /> : null}
      {one === null ? (
        <ul className="who-list">
          {byPin.map((row) => (
            <li key={row.account}>
              <button type="button" className="button button-large" onClick={() => setChosen(row)}>
                {row.agent.name}
              </button>
            </li>
          ))}
        </ul>
      ) : (
        <PinForm key={one.account} one={one} onEnded={() => setEnded(true)} />
      )}
      <div className="buttons">
        {byPin.length > 1 && chosen !== null ? (
          <button type="button" className="button button-quiet" onClick={() => setChosen(null)}>
            {words.sentence('signIn.otherName')}
          </button>
        ) : null}
        <button type="button" className="button button-quiet" onClick={() => setAnother(true)}>
          {words.sentence('signIn.another')}
        </button>
      </div>
    </CoverFrame>
  );
}

/** Why nobody gets in just now: the device locked itself, and the server, which checks a secret, has not answered yet. */
function LockedAlone() {
  const { words } = useApp();
  return (
    <p className="notice" role="status">
      {words.sentence('signIn.lockedAlone')}
    </p>
  );
}

type PinFormProps = { readonly one: Here[number]; readonly onEnded: () => void };

function PinForm({ one, onEnded }: PinFormProps) {
  const { words, server, signIn } = useApp();
  const [pin, setPin] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const goOn = async (event: FormEvent) => {
    event.preventDefault();
    if (pin === '') return setWrong(words.sentence('signIn.pinMissing'));
    const answer = await server.call('takeOver', { body: { account: one.account, pin } });
    setPin('');
    if (answer.ok) return signIn.heard(answer.value);
    setWrong(refusedSecret(answer, words));
    // Too many wrong ones end the sign-in: then there is no PIN to type any more.
    if (answer.status !== 401) return;
    await signIn.ask();
    const after = signIn.get();
    if (after.is === 'out' && !after.here.some(({ account }) => account === one.account)) onEnded();
  };
  return (
    <form className="sign-in" noValidate onSubmit={(event) => void goOn(event)}>
      <p className="sign-in-name">{one.agent.name}</p>
      <SecretField
        label={words.sentence('signIn.pin')}
        kind="pin"
        isFirst
        value={pin}
        wrong={wrong}
        onChange={(typed) => {
          setPin(typed);
          setWrong(null);
        }}
      />
      <button type="submit" className="button button-first button-large">
        {words.sentence('signIn.open')}
      </button>
    </form>
  );
}

function PhraseForm() {
  const { words, server, signIn } = useApp();
  const [name, setName] = useState('');
  const [phrase, setPhrase] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const enter = async (event: FormEvent) => {
    event.preventDefault();
    if (name.trim() === '' || phrase === '') return setWrong(words.sentence('signIn.bothMissing'));
    setBusy(true);
    const answer = await server.call('signIn', { body: { signIn: name.trim(), passPhrase: phrase } });
    setBusy(false);
    if (answer.ok) return signIn.heard(answer.value);
    setWrong(refusedSecret(answer, words));
  };
  return (
    <form className="sign-in" noValidate onSubmit={(event) => void enter(event)}>
      <Field label={words.sentence('signIn.name')}>
        {(control) => (
          <input
            {...control}
            type="text"
            autoComplete="username"
            autoCapitalize="none"
            spellCheck={false}
            maxLength={64}
            value={name}
            onChange={({ target }) => {
              setName(target.value);
              setWrong(null);
            }}
          />
        )}
      </Field>
      <SecretField
        label={words.sentence('signIn.phrase')}
        kind="current-password"
        value={phrase}
        wrong={wrong}
        onChange={(typed) => {
          setPhrase(typed);
          setWrong(null);
        }}
      />
      <button type="submit" className="button button-first button-large" disabled={isBusy}>
        {words.sentence(isBusy ? 'signIn.checking' : 'signIn.enter')}
      </button>
      <p className="soft small">{words.sentence('signIn.forgotten')}</p>
    </form>
  );
}
