import type { AccountRow } from '@evenfall/api';
import { ACCOUNT_ROLES, type AccountRole, SIGN_IN_LIMITS } from '@evenfall/record';
import { type FormEvent, useEffect, useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { loadAgents } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { RoleTicks } from './RoleTicks.js';
import { refusedSecret } from './refusedSecret.js';
import { SecretField } from './SecretField.js';

type AddAccountProps = { readonly rows: readonly AccountRow[]; readonly onAdded: () => Promise<void> };
type Wrong = { readonly [part in 'name' | 'signIn' | 'roles' | 'phrase']?: string };

/** A new account, for somebody whose name the charts have or for a new one. Its secret is kept in no draft. */
export function AddAccount({ rows, onAdded }: AddAccountProps) {
  const app = useApp();
  const { words, server, ids } = app;
  const agents = useKept(({ known }) => known.agents.value) ?? [];
  useEffect(() => void loadAgents(app), [app]);
  const free = agents.filter(({ id }) => !rows.some(({ agent }) => agent.id === id));
  const [made] = useState(() => ({ account: ids(), agent: ids() }));
  const [agent, setAgent] = useState('');
  const [name, setName] = useState('');
  const [signInName, setSignInName] = useState('');
  const [roles, setRoles] = useState<readonly AccountRole[]>(['clinician']);
  const [phrase, setPhrase] = useState('');
  const [wrong, setWrong] = useState<Wrong>({});
  const [refused, setRefused] = useState<string | null>(null);
  const [kept, setKept] = useState<string | null>(null);
  // Each account has ids of its own: the form is made anew for the next.
  if (kept !== null) {
    return (
      <div>
        <p className="notice" role="status">
          {words.sentence('signIn.kept', { name: kept })}
        </p>
        <AddAnother rows={rows} onAdded={onAdded} />
      </div>
    );
  }
  const chosen = free.find(({ id }) => id === agent);
  const add = async (event: FormEvent) => {
    event.preventDefault();
    setRefused(null);
    const called = chosen?.name ?? name.trim();
    const found: Wrong = {
      ...(called === '' ? { name: words.sentence('signIn.nameMissing') } : {}),
      ...(signInName.trim() === '' ? { signIn: words.sentence('signIn.signInMissing') } : {}),
      ...(roles.length === 0 ? { roles: words.sentence('signIn.roleMissing') } : {}),
      ...(phrase === '' ? { phrase: words.sentence('signIn.phraseMissing') } : {}),
    };
    setWrong(found);
    if (Object.keys(found).length > 0) return;
    const answer = await server.call('addAccount', {
      body: {
        id: made.account,
        agent: { id: chosen?.id ?? made.agent, name: called },
        signIn: signInName.trim(),
        roles: ACCOUNT_ROLES.filter((role) => roles.includes(role)),
        passPhrase: phrase,
      },
    });
    if (answer.ok) {
      setKept(called);
      return await onAdded();
    }
    const [first] = answer.problem?.problems ?? [];
    if (first?.field === '/passPhrase') return setWrong({ phrase: refusedSecret(answer, words) });
    if (first?.field === '/signIn') return setWrong({ signIn: words.sentProblem(first).message });
    if (first?.field?.startsWith('/agent') === true)
      return setWrong({ name: words.sentProblem(first).message });
    setRefused(answer.offline ? words.sentence('app.unreachable') : refusedBecause(answer, words));
  };
  return (
    <form className="sign-in account-add" noValidate onSubmit={(event) => void add(event)}>
      <h2>{words.sentence('signIn.add')}</h2>
      {free.length === 0 ? null : (
        <Field label={words.sentence('signIn.who')} hint={words.sentence('signIn.whoHint')}>
          {(control) => (
            <select {...control} value={agent} onChange={({ target }) => setAgent(target.value)}>
              <option value="">{words.sentence('signIn.newName')}</option>
              {free.map((one) => (
                <option key={one.id} value={one.id}>
                  {one.name}
                </option>
              ))}
            </select>
          )}
        </Field>
      )}
      {chosen !== undefined ? null : (
        <Field
          label={words.sentence(free.length === 0 ? 'signIn.who' : 'signIn.newName')}
          wrong={wrong.name ?? null}
        >
          {(control) => (
            <input
              {...control}
              type="text"
              autoComplete="off"
              maxLength={200}
              value={name}
              onChange={({ target }) => setName(target.value)}
            />
          )}
        </Field>
      )}
      <Field
        label={words.sentence('signIn.signInName')}
        hint={words.sentence('signIn.signInHint')}
        wrong={wrong.signIn ?? null}
      >
        {(control) => (
          <input
            {...control}
            type="text"
            autoComplete="off"
            autoCapitalize="none"
            spellCheck={false}
            maxLength={64}
            value={signInName}
            onChange={({ target }) => setSignInName(target.value)}
          />
        )}
      </Field>
      <RoleTicks roles={roles} onChange={setRoles} wrong={wrong.roles ?? null} />
      <SecretField
        label={words.sentence('signIn.firstPhrase')}
        hint={words.sentence('signIn.phraseHint', SIGN_IN_LIMITS)}
        kind="new-password"
        value={phrase}
        wrong={wrong.phrase ?? null}
        onChange={setPhrase}
      />
      <Refused text={refused} />
      <button type="submit" className="button button-first">
        {words.sentence('signIn.keep')}
      </button>
    </form>
  );
}

function AddAnother(props: AddAccountProps) {
  const { words } = useApp();
  const [isOpen, setOpen] = useState(false);
  if (isOpen) return <AddAccount {...props} />;
  return (
    <button type="button" className="button" onClick={() => setOpen(true)}>
      {words.sentence('signIn.add')}
    </button>
  );
}
