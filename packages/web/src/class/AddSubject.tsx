import type { PersonRow } from '@evenfall/api';
import { CLASS_IDENTIFIERS } from '@evenfall/record';
import { useState } from 'react';
import { formIn, useBook } from '../app/book.js';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { loadClass } from '../server/loadClass.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { classEntry } from './classEntry.js';
import { refusedText } from './refused.js';
import { readSubject, type SubjectWrong, suggestPseudonym } from './subjectForm.js';

type AddSubjectProps = { readonly session: string; readonly rows: readonly PersonRow[] };

/** Adds somebody under a pseudonym: one is suggested. */
export function AddSubject({ session, rows }: AddSubjectProps) {
  const app = useApp();
  const { words, server, store } = app;
  const taken = rows.flatMap(({ classIdentity }) => classIdentity?.pseudonym ?? []);
  const birds = words.sentence('class.birds').split(', ');
  const form = useForm(formIn(useBook(), 'add-subject'), {
    pseudonym: suggestPseudonym(birds, session, taken),
  });
  const agent = useMeasuring();
  const [wrong, setWrong] = useState<SubjectWrong>({});
  const [refused, setRefused] = useState<string | null>(null);

  const add = async () => {
    const typed = { pseudonym: form.text('pseudonym'), ageYears: form.text('ageYears') };
    const { identity, wrong: found } = readSubject(typed, taken);
    setWrong(found);
    setRefused(null);
    if (identity === null) return;
    if (agent === null) return setRefused(words.sentence('person.measuringFirst'));
    const { device } = store.get().kept;
    const about = { session, person: form.adds(), agent, device, role: 'observer' as const };
    const entry = classEntry('person', form.entry(), about, { identifiers: [...CLASS_IDENTIFIERS] });
    const answer = await server.call('addClassPerson', { params: { session }, body: { identity, entry } });
    if (!answer.ok) return setRefused(refusedText(answer, words));
    await loadClass(app, session);
    form.done();
  };
  const wrongText = (code: SubjectWrong[keyof SubjectWrong]) =>
    code === undefined ? null : words.sentence(`class.${code}`);
  return (
    <section className="people not-printed" aria-label={words.sentence('class.add')}>
      <h2>{words.sentence('class.add')}</h2>
      <p>{words.sentence('class.refusing')}</p>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void add();
        }}
      >
        <Field
          label={words.sentence('class.pseudonym')}
          hint={words.sentence('class.pseudonymHint')}
          wrong={wrongText(wrong.pseudonym)}
        >
          {(control) => (
            <input
              {...control}
              type="text"
              autoComplete="off"
              value={form.text('pseudonym')}
              onChange={(event) => form.set('pseudonym', event.target.value)}
            />
          )}
        </Field>
        <Field
          label={words.sentence('class.age')}
          hint={words.sentence('class.ageHint')}
          wrong={wrongText(wrong.ageYears)}
        >
          {(control) => (
            <input
              {...control}
              type="text"
              inputMode="numeric"
              autoComplete="off"
              value={form.text('ageYears')}
              onChange={(event) => form.set('ageYears', event.target.value)}
            />
          )}
        </Field>
        <Refused text={refused} />
        <button type="submit" className="button button-first">
          {words.sentence('class.addNow')}
        </button>
      </form>
    </section>
  );
}
