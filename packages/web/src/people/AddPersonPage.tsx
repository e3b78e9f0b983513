import { identifiersOf } from '@evenfall/record';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Page } from '../parts/Page.js';
import { localDate } from '../ports/stampAt.js';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { BOOK } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import type { EntryStart } from '../store/kept.js';
import { IdentityFields } from './IdentityFields.js';
import { ADD_PERSON, type IdentityWrong, readIdentity } from './identityForm.js';
import { WhoMeasures } from './WhoMeasures.js';

/** Adds a person with two identifiers at least. What was typed outlives a refusal and a reload. */
export function AddPersonPage() {
  const app = useApp();
  const { clock, words } = app;
  const form = useForm(ADD_PERSON);
  const agent = useKept(({ kept }) => kept.agent);
  const device = useKept(({ kept }) => kept.device);
  const [, go] = useLocation();
  const [wrong, setWrong] = useState<IdentityWrong>({});
  const [refused, setRefused] = useState<string | null>(null);

  const add = async () => {
    const typed = { name: form.text('name'), birthDate: form.text('birthDate'), number: form.text('number') };
    const { identity, wrong: found } = readIdentity(typed, localDate(clock.stamp()));
    setWrong(found);
    setRefused(null);
    if (identity === null) return;
    if (agent === null) return setRefused(words.sentence('person.measuringFirst'));
    const person = form.adds();
    const entry = form.entry();
    const answer = await app.server.call('addPerson', {
      params: { book: BOOK },
      body: {
        identity,
        entry: personEntry({ person, entry, agent, device, identifiers: identifiersOf(identity) }),
      },
    });
    if (answer.ok) {
      form.done();
      go(`/people/${person}`, { replace: true });
    } else if (answer.offline) setRefused(words.sentence('app.unreachable'));
    else
      setRefused(
        words.sentence('app.refusedBy', { text: refusedBecause(answer) ?? words.sentence('app.failed') }),
      );
  };
  return (
    <Page
      title={words.sentence('person.addTitle')}
      back={{ href: '/', text: words.sentence('people.title') }}
    >
      <p>{words.sentence('person.lead')}</p>
      {agent === null ? <WhoMeasures /> : null}
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void add();
        }}
      >
        <IdentityFields
          form={form}
          wrong={wrong}
          onMend={(name) => setWrong(({ [name]: _mended, ...rest }) => rest)}
        />
        {refused === null ? null : (
          <p className="notice" role="alert">
            {refused}
          </p>
        )}
        <button type="submit" className="button button-first button-large">
          {words.sentence('person.add')}
        </button>
      </form>
    </Page>
  );
}

type NewPerson = {
  readonly person: string;
  readonly entry: EntryStart;
  readonly agent: string;
  readonly device: string;
  readonly identifiers: readonly string[];
};

/** The entry that says a person exists. */
function personEntry({ person, entry, agent, device, identifiers }: NewPerson) {
  return {
    ...entry,
    book: BOOK,
    kind: 'person' as const,
    schema: WRITTEN_SCHEMA,
    person,
    round: null,
    agent,
    role: 'observer' as const,
    device,
    amends: null,
    content: { identifiers },
  };
}
