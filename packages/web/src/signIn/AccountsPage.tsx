import type { AccountRow } from '@evenfall/api';
import { ACCOUNT_ROLES, type AccountRole, SIGN_IN_LIMITS } from '@evenfall/record';
import { useCallback, useEffect, useState } from 'react';
import { useApp } from '../app/context.js';
import { dayText } from '../app/times.js';
import { Asking } from '../parts/Asking.js';
import { Page } from '../parts/Page.js';
import { Refused } from '../parts/Refused.js';
import { afterAsking } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { ASKED, type Asked } from '../store/known.js';
import { AddAccount } from './AddAccount.js';
import { RoleTicks } from './RoleTicks.js';
import { refusedSecret } from './refusedSecret.js';
import { SecretField } from './SecretField.js';
import { useSignedIn } from './useAccess.js';

/** Everybody who signs in here, for an owner: made, given roles, closed, given a first pass phrase again. */
export function AccountsPage() {
  const { words, server } = useApp();
  const [asked, setAsked] = useState<Asked<readonly AccountRow[]>>(ASKED);
  const load = useCallback(async () => {
    const answer = await server.call('listAccounts', {});
    const rows = answer.ok ? { ...answer, value: answer.value.accounts } : answer;
    setAsked((was) => afterAsking(was, rows));
  }, [server]);
  const isSignedIn = useSignedIn() !== null;
  useEffect(() => void (isSignedIn && load()), [isSignedIn, load]);
  const back = { href: '/account', text: words.sentence('signIn.account') };
  if (!isSignedIn) {
    return (
      <Page title={words.sentence('signIn.accounts')} back={back}>
        <p>{words.sentence('signIn.noAccounts')}</p>
        <p>{words.sentence('signIn.firstAccount')}</p>
        <p>
          <code className="typed-line">{FIRST_ACCOUNT}</code>
        </p>
        <p className="small soft">{words.sentence('signIn.firstAccountOf')}</p>
      </Page>
    );
  }
  return (
    <Page title={words.sentence('signIn.accounts')} back={back}>
      <p>{words.sentence('signIn.lead')}</p>
      <Asking asked={asked} again={load}>
        {(rows) => (
          <>
            <ul className="accounts">
              {rows.map((row) => (
                <AccountLine key={row.id} row={row} onChanged={load} />
              ))}
            </ul>
            <AddAccount rows={rows} onAdded={load} />
          </>
        )}
      </Asking>
    </Page>
  );
}

/** What makes the first account, as it is typed. */
const FIRST_ACCOUNT =
  'npx evenfall account add --name "Ada Thorn" --sign-in ada --role owner,clinician,supervisor';

type LineProps = { readonly row: AccountRow; readonly onChanged: () => Promise<void> };

function AccountLine({ row, onChanged }: LineProps) {
  const { words } = useApp();
  const who = useSignedIn();
  const [isOpen, setOpen] = useState(false);
  const notes = [
    words.sentence('signIn.signsAs', { signIn: row.signIn }),
    row.roles.map((role) => words.title('accountRole', role)).join(', '),
    ...(row.closedAt === null
      ? row.isOwnPhrase
        ? []
        : [words.sentence('signIn.notYet')]
      : [words.sentence('signIn.closedSince', { day: dayText(row.closedAt.slice(0, 10), words) })]),
  ];
  return (
    <li className={row.closedAt === null ? 'account' : 'account account-closed'}>
      <div>
        <p className="account-name">
          {row.agent.name}
          {row.id === who?.account ? <span className="soft"> ({words.sentence('signIn.isYou')})</span> : null}
        </p>
        <p className="small soft">{notes.join(' · ')}</p>
      </div>
      {isOpen ? (
        <ChangeAccount row={row} onChanged={onChanged} onDone={() => setOpen(false)} />
      ) : (
        <button
          type="button"
          className="button button-quiet"
          aria-label={`${words.sentence('signIn.change')}: ${row.agent.name}`}
          onClick={() => setOpen(true)}
        >
          {words.sentence('signIn.change')}
        </button>
      )}
    </li>
  );
}

function ChangeAccount({ row, onChanged, onDone }: LineProps & { readonly onDone: () => void }) {
  const { words, server } = useApp();
  const [roles, setRoles] = useState<readonly AccountRole[]>(row.roles);
  const [phrase, setPhrase] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const [phraseWrong, setPhraseWrong] = useState<string | null>(null);
  const change = async (what: { roles?: AccountRole[]; isClosed?: boolean; passPhrase?: string }) => {
    setWrong(null);
    setPhraseWrong(null);
    const answer = await server.call('changeAccount', { params: { account: row.id }, body: what });
    if (answer.ok) {
      await onChanged();
      return onDone();
    }
    if (what.passPhrase !== undefined) return setPhraseWrong(refusedSecret(answer, words));
    if (answer.offline) return setWrong(words.sentence('app.unreachable'));
    setWrong(refusedBecause(answer, words));
  };
  const isSame = roles.length === row.roles.length && roles.every((role) => row.roles.includes(role));
  return (
    <div className="account-change">
      <Refused text={wrong} />
      <RoleTicks roles={roles} onChange={setRoles} wrong={null} />
      <div className="buttons">
        <button
          type="button"
          className="button"
          disabled={isSame || roles.length === 0}
          onClick={() => void change({ roles: ACCOUNT_ROLES.filter((role) => roles.includes(role)) })}
        >
          {words.sentence('signIn.change')}
        </button>
        <button
          type="button"
          className="button"
          onClick={() => void change({ isClosed: row.closedAt === null })}
        >
          {words.sentence(row.closedAt === null ? 'signIn.close' : 'signIn.reopen')}
        </button>
        <button type="button" className="button button-quiet" onClick={onDone}>
          {words.sentence('signIn.cancel')}
        </button>
      </div>
      {row.closedAt !== null ? null : (
        <form
          className="sign-in"
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            if (phrase === '') return setPhraseWrong(words.sentence('signIn.phraseMissing'));
            void change({ passPhrase: phrase });
          }}
        >
          <SecretField
            label={words.sentence('signIn.anotherFirst')}
            hint={words.sentence('signIn.phraseHint', SIGN_IN_LIMITS)}
            kind="new-password"
            value={phrase}
            wrong={phraseWrong}
            onChange={setPhrase}
          />
          <button type="submit" className="button">
            {words.sentence('signIn.newFirst')}
          </button>
        </form>
      )}
    </div>
  );
}
