import type { PersonRow } from '@evenfall/api';
import { useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { Refused } from '../parts/Refused.js';
import { forgetSession } from '../server/loadClass.js';
import { useAnswering } from '../signIn/useAccess.js';
import type { EntryStart } from '../store/kept.js';
import type { Ended } from './ClassPage.js';
import { agreedByBoth, classEntry } from './classEntry.js';
import { refusedText } from './refused.js';

type EndSessionProps = { readonly session: string; readonly rows: readonly PersonRow[] };
type Agreement = { readonly teacher: boolean; readonly subject: boolean };
const NOBODY_AGREES: Agreement = { teacher: false, subject: false };

/** Ends a session behind a dialog: everything is deleted but what both, teacher and person, agree to keep. */
export function EndSession({ session, rows }: EndSessionProps) {
  const app = useApp();
  const { words, server, store, clock, ids } = app;
  const dialog = useRef<HTMLDialogElement>(null);
  const agent = useAnswering();
  const unsent = useKept(({ kept }) => kept.waiting).filter(({ draft }) => draft?.session === session).length;
  const [agreements, setAgreements] = useState<Readonly<Record<string, Agreement>>>({});
  const [refused, setRefused] = useState<string | null>(null);
  const [, go] = useLocation();
  const keeps = agreedByBoth(agreements);

  const end = async () => {
    setRefused(null);
    if (agent === null) return setRefused(words.sentence('class.teacherFirst'));
    const { device, sequence } = store.get().kept;
    const measuredAt = clock.stamp();
    const start = (at: number): EntryStart => {
      return { id: ids(), sequence: sequence + at, measuredAt, writtenAt: measuredAt.at };
    };
    const about = { session, agent, device, role: 'teacher' as const };
    const keep = keeps.map((person, at) =>
      classEntry(
        'kept-by-agreement',
        start(at),
        { ...about, person },
        { teacherAgrees: true, subjectAgrees: true },
      ),
    );
    const entry = classEntry('class-session-ended', start(keep.length), { ...about, person: null }, {});
    store.change((state) => ({
      ...state,
      kept: { ...state.kept, sequence: state.kept.sequence + keep.length + 1 },
    }));
    const answer = await server.call('endClassSession', { params: { session }, body: { entry, keep } });
    // Not there any more: it was ended by an answer that was lost on its way, or by somebody else.
    if (!answer.ok && answer.status !== 404) return setRefused(refusedText(answer, words));
    dialog.current?.close();
    forgetSession(app, session);
    // What the server says it deleted: others may have come or gone since this list was read.
    const ended: Ended = answer.ok
      ? { gone: answer.value.deleted.persons, kept: answer.value.kept.persons }
      : 'before';
    go('~/class', { replace: true, state: { ended } });
  };
  return (
    <div className="chart-ends">
      <button type="button" className="button" onClick={() => dialog.current?.showModal()}>
        {words.sentence('class.end')}
      </button>
      <dialog ref={dialog} className="dialog" aria-labelledby="end-title">
        <form
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            void end();
          }}
        >
          <h2 id="end-title">{words.sentence('class.endTitle')}</h2>
          <p>{words.sentence('class.endWhat')}</p>
          {unsent === 0 ? null : <p>{words.sentence('class.unsent', { rounds: unsent })}</p>}
          {rows.length === 0 ? null : <p>{words.sentence('class.endKeep')}</p>}
          {rows.map(({ id, classIdentity }) => (
            <Agreeing
              key={id}
              pseudonym={classIdentity?.pseudonym ?? ''}
              agreement={agreements[id] ?? NOBODY_AGREES}
              onChange={(agreement) => setAgreements({ ...agreements, [id]: agreement })}
            />
          ))}
          <Refused text={refused} />
          <div className="buttons">
            <button type="submit" className="button button-first">
              {keeps.length === 0
                ? words.sentence('class.endNow')
                : words.sentence('class.endNowKeeping', { persons: keeps.length })}
            </button>
            <button type="button" className="button" onClick={() => dialog.current?.close()}>
              {words.sentence('app.cancel')}
            </button>
          </div>
        </form>
      </dialog>
    </div>
  );
}

type AgreeingProps = {
  readonly pseudonym: string;
  readonly agreement: Agreement;
  readonly onChange: (agreement: Agreement) => void;
};

/** Two ticks for one person: nothing is kept by one of them alone. */
function Agreeing({ pseudonym, agreement, onChange }: AgreeingProps) {
  const { words } = useApp();
  return (
    <fieldset className="ticks">
      <legend>{pseudonym}</legend>
      {(['teacher', 'subject'] as const).map((who) => (
        <label key={who} className="tick">
          <input
            type="checkbox"
            checked={agreement[who]}
            onChange={(event) => onChange({ ...agreement, [who]: event.target.checked })}
          />
          <span>{words.sentence(`class.${who}Agrees`)}</span>
        </label>
      ))}
      {agreement.teacher === agreement.subject ? null : (
        <p className="small" role="status">
          {words.sentence('class.oneAgrees')}
        </p>
      )}
    </fieldset>
  );
}
