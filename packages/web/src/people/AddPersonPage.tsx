import { identifiersOf } from '@evenfall/record';
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Page } from '../parts/Page.js';
import { Refused } from '../parts/Refused.js';
import { localDate } from '../ports/stampAt.js';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { BOOK, loadPeople } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { useMeasuring } from '../signIn/useAccess.js';
import type { EntryStart } from '../store/kept.js';
import { DoubtsNotice } from './DoubtsNotice.js';
import { type Doubts, doubtsAbout, hasDoubts } from './doubts.js';
import { IdentityFields } from './IdentityFields.js';
import { ADD_PERSON, type IdentityWrong, readIdentity } from './identityForm.js';
import { WhoMeasures } from './WhoMeasures.js';

/** Adds a person with two identifiers at least. What was typed outlives a refusal and a reload. */
export function AddPersonPage() {
  const app = useApp();
  const { clock, words } = app;
  const form = useForm(ADD_PERSON);
  const agent = useMeasuring();
  const device = useKept(({ kept }) => kept.device);
  const [, go] = useLocation();
  const [wrong, setWrong] = useState<IdentityWrong>({});
  const [refused, setRefused] = useState<string | null>(null);
  /** What was asked of this identity; adding it once more is the answer. */
  const [doubts, setDoubts] = useState<Doubts | null>(null);
  useEffect(() => void loadPeople(app), [app]);

  const add = async () => {
    const typed = { name: form.text('name'), birthDate: form.text('birthDate'), number: form.text('number') };
    const { identity, wrong: amiss } = readIdentity(typed, localDate(clock.stamp()));
    setWrong(amiss);
    setRefused(null);
    if (identity === null) return;
    if (agent === null) return setRefused(words.sentence('person.measuringFirst'));
    const person = form.adds();
    // Themselves they may be in the list already, from a sending whose answer was lost.
    const others = (app.store.get().known.people.value ?? []).filter(({ id }) => id !== person);
    const found = doubtsAbout(identity, others);
    if (doubts === null && hasDoubts(found)) return setDoubts(found);
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
    else setRefused(words.sentence('app.refusedBy', { text: refusedBecause(answer, words) }));
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
          onMend={(name) => {
            setDoubts(null);
            setWrong(({ [name]: _mended, ...rest }) => rest);
          }}
        />
        {doubts === null ? null : <DoubtsNotice doubts={doubts} />}
        <Refused text={refused} />
        <button type="submit" className="button button-first button-large">
          {words.sentence(doubts === null ? 'person.add' : 'person.addAllTheSame')}
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
