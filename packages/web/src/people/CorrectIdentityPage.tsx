import type { Identity } from '@evenfall/record';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Asking } from '../parts/Asking.js';
import { Page } from '../parts/Page.js';
import { Refused } from '../parts/Refused.js';
import { localDate } from '../ports/stampAt.js';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { useRecord } from '../round/useRound.js';
import { BOOK, reloadRecord } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { IdentityFields } from './IdentityFields.js';
import { changedParts, type IdentityWrong, readIdentity } from './identityForm.js';
import { WhoMeasures } from './WhoMeasures.js';

/** Puts an identity right. Who did it is kept; the old identifiers are not. */
export function CorrectIdentityPage({ person }: { readonly person: string }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  return (
    <Page
      title={words.sentence('person.correctTitle')}
      back={{ href: `/people/${person}`, text: words.sentence('chart.title') }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')}>
        {({ identity }) =>
          identity === null ? (
            <p className="notice">{words.sentence('person.erased')}</p>
          ) : (
            <CorrectForm person={person} was={identity} />
          )
        }
      </Asking>
    </Page>
  );
}

function CorrectForm({ person, was }: { readonly person: string; readonly was: Identity }) {
  const app = useApp();
  const { words, clock, server, store } = app;
  const { name, birthDate, number } = was;
  const form = useForm(`identity ${person}`, { name, birthDate: birthDate ?? '', number: number ?? '' });
  const agent = useMeasuring();
  const [, go] = useLocation();
  const [wrong, setWrong] = useState<IdentityWrong>({});
  const [refused, setRefused] = useState<string | null>(null);
  const correct = async () => {
    const typed = { name: form.text('name'), birthDate: form.text('birthDate'), number: form.text('number') };
    const { identity, wrong: found } = readIdentity(typed, localDate(clock.stamp()));
    setWrong(found);
    setRefused(null);
    if (identity === null) return;
    const changed = changedParts(was, identity);
    if (changed.length === 0) return setRefused(words.sentence('person.nothingChanged'));
    if (agent === null) return setRefused(words.sentence('review.needsAgent'));
    const entry = {
      ...form.entry(),
      book: BOOK,
      kind: 'identity-corrected' as const,
      schema: WRITTEN_SCHEMA,
      person,
      round: null,
      agent,
      role: 'observer' as const,
      device: store.get().kept.device,
      amends: null,
      content: { changed },
    };
    const answer = await server.call('correctIdentity', {
      params: { book: BOOK, person },
      body: { identity, entry },
    });
    if (answer.ok) {
      await reloadRecord(app, person);
      form.done();
      go(`/people/${person}`, { replace: true });
    } else if (answer.offline) setRefused(words.sentence('app.unreachable'));
    else setRefused(words.sentence('app.refusedBy', { text: refusedBecause(answer, words) }));
  };
  return (
    <form
      className="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void correct();
      }}
    >
      <p>{words.sentence('person.correctLead')}</p>
      <IdentityFields
        form={form}
        wrong={wrong}
        onMend={(part) => setWrong(({ [part]: _mended, ...rest }) => rest)}
      />
      <WhoMeasures />
      <Refused text={refused} />
      <button type="submit" className="button button-first button-large">
        {words.sentence('person.correct')}
      </button>
    </form>
  );
}
