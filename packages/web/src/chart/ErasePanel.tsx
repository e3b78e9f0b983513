import { useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { TextLine } from '../parts/TextLine.js';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { discardRound } from '../round/rounds.js';
import { BOOK, reloadRecord } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { useMeasuring } from '../signIn/useAccess.js';

type ErasePanelProps = { readonly person: string; readonly name: string };

/** Erases who a person is, behind a dialog in which the name is typed. */
export function ErasePanel({ person, name }: ErasePanelProps) {
  const app = useApp();
  const { words, server, store } = app;
  const dialog = useRef<HTMLDialogElement>(null);
  const agent = useMeasuring();
  const form = useForm(`erase ${person}`);
  const [typed, setTyped] = useState('');
  const [isAsked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const reason = form.text('reason').trim();
  const isTyped = typed.trim() === name;

  const erase = async () => {
    setAsked(true);
    setRefused(null);
    if (reason === '' || !isTyped) return;
    if (agent === null) return setRefused(words.sentence('review.needsAgent'));
    const entry = {
      ...form.entry(),
      book: BOOK,
      kind: 'identity-erased' as const,
      schema: WRITTEN_SCHEMA,
      person,
      round: null,
      agent,
      role: 'observer' as const,
      device: store.get().kept.device,
      amends: null,
      content: { reason },
    };
    const answer = await server.call('eraseIdentity', { params: { book: BOOK, person }, body: { entry } });
    if (answer.ok) {
      form.done();
      discardRound(app, person);
      dialog.current?.close();
      await reloadRecord(app, person);
    } else if (answer.offline) setRefused(words.sentence('app.unreachable'));
    else setRefused(words.sentence('app.refusedBy', { text: refusedBecause(answer, words) }));
  };
  return (
    <>
      <button type="button" className="button button-quiet" onClick={() => dialog.current?.showModal()}>
        {words.sentence('person.erase')}
      </button>
      <dialog ref={dialog} className="dialog" aria-labelledby="erase-title">
        <form
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            void erase();
          }}
        >
          <h2 id="erase-title">{words.sentence('person.eraseTitle')}</h2>
          <p>{words.sentence('person.eraseWhat')}</p>
          <TextLine
            label={words.sentence('person.eraseReason')}
            wrong={isAsked && reason === '' ? words.sentence('person.eraseReasonMissing') : null}
            value={form.text('reason')}
            onType={(text) => form.set('reason', text)}
          />
          <Field
            label={words.sentence('person.eraseTyped', { text: name })}
            wrong={isAsked && !isTyped ? words.sentence('person.eraseTypedWrong') : null}
          >
            {(control) => (
              <input
                {...control}
                type="text"
                autoComplete="off"
                value={typed}
                onChange={(event) => setTyped(event.target.value)}
              />
            )}
          </Field>
          <Refused text={refused} />
          <div className="buttons">
            <button type="submit" className="button button-first">
              {words.sentence('person.eraseNow')}
            </button>
            <button type="button" className="button" onClick={() => dialog.current?.close()}>
              {words.sentence('app.cancel')}
            </button>
          </div>
        </form>
      </dialog>
    </>
  );
}
