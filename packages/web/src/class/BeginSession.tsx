import { useState } from 'react';
import { useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { localDate } from '../ports/stampAt.js';
import { useAnswering } from '../signIn/useAccess.js';
import { classEntry } from './classEntry.js';
import { refusedText } from './refused.js';
import { endOfDay, readSession, type SessionWrong } from './sessionForm.js';

/** Begins a session. What was typed outlives a refusal and a reload. */
export function BeginSession() {
  const { words, clock, server, store } = useApp();
  const now = clock.stamp();
  const form = useForm('begin-class', { endsBy: endOfDay(localDate(now)) });
  const agent = useAnswering();
  const [wrong, setWrong] = useState<SessionWrong>({});
  const [refused, setRefused] = useState<string | null>(null);
  const [, go] = useLocation();

  const begin = async () => {
    const typed = { title: form.text('title'), endsBy: form.text('endsBy') };
    const { session: content, wrong: found } = readSession(typed, {
      now: clock.stamp(),
      stampOf: clock.stampOf,
    });
    setWrong(found);
    setRefused(null);
    if (content === null) return;
    if (agent === null) return setRefused(words.sentence('class.teacherFirst'));
    const start = form.entry();
    const { device } = store.get().kept;
    const about = { session: start.id, person: null, agent, device, role: 'teacher' as const };
    const answer = await server.call('beginClassSession', {
      body: { entry: classEntry('class-session', start, about, content) },
    });
    if (!answer.ok) return setRefused(refusedText(answer, words));
    form.done();
    go(`/class/${start.id}`);
  };
  const wrongText = (code: SessionWrong[keyof SessionWrong]) =>
    code === undefined ? null : words.sentence(`class.${code}`);
  return (
    <section className="people not-printed" aria-label={words.sentence('class.begin')}>
      <h2>{words.sentence('class.begin')}</h2>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void begin();
        }}
      >
        <Field
          label={words.sentence('class.name')}
          hint={words.sentence('class.nameHint')}
          wrong={wrongText(wrong.title)}
        >
          {(control) => (
            <input
              {...control}
              type="text"
              autoComplete="off"
              value={form.text('title')}
              onChange={(event) => form.set('title', event.target.value)}
            />
          )}
        </Field>
        <Field
          label={words.sentence('class.endsBy')}
          hint={words.sentence('class.endsByHint')}
          wrong={wrongText(wrong.endsBy)}
        >
          {(control) => (
            <input
              {...control}
              type="datetime-local"
              value={form.text('endsBy')}
              onChange={(event) => form.set('endsBy', event.target.value)}
            />
          )}
        </Field>
        <Refused text={refused} />
        <button type="submit" className="button button-first button-large">
          {words.sentence('class.beginNow')}
        </button>
      </form>
    </section>
  );
}
