import { useEffect, useState } from 'react';
import { useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Field } from '../parts/Field.js';
import { nameIn } from '../parts/Identity.js';
import { loadAgents } from '../server/load.js';
import { SignedInLine } from '../signIn/SignedInLine.js';
import { useMay, useSignedIn } from '../signIn/useAccess.js';
import { recordKey } from '../store/known.js';
import { leftBehind, setsText, withAgent } from './unsignedSets.js';

const ADD_AGENT = 'add-agent';

/** Who is measuring: whoever is signed in; where nobody has to, chosen once on this device and changed by one touch. */
export function WhoMeasures({ isStart = false }: { readonly isStart?: boolean }) {
  const who = useSignedIn();
  const { book } = useBook();
  // In a class learners without accounts share a device.
  return who === null || book === 'class' ? <ChosenMeasures /> : <SignedInLine isStart={isStart} />;
}

function ChosenMeasures() {
  const app = useApp();
  const { store, words } = app;
  const agents = useKept(({ known }) => known.agents.value);
  const chosen = useKept(({ kept }) => kept.agent);
  // Once open it stays open, so that arrow keys can go on through the names.
  const [isOpen, setOpen] = useState(chosen === null);
  const [isAdding, setAdding] = useState(false);
  const [asked, setAsked] = useState<{ readonly agent: string | null } | null>(null);
  // Where somebody signs in this is a class, and what is beside a bed is the account's.
  const book = useSignedIn() === null ? null : 'class';
  const mayAdd = useMay('owner', 'supervisor');
  useEffect(() => void loadAgents(app), [app]);

  if (agents === null) return null;
  const becomes = (agent: string | null) => {
    setAsked(null);
    store.change((state) => ({ ...state, kept: withAgent(state.kept, agent, book) }));
  };
  /** What was typed and not signed goes with whoever typed it, and what was measured stays theirs, which is said first. */
  const choose = (agent: string | null) => {
    const { sets, rounds } = leftBehind(store.get().kept, agent, book);
    return sets.length + rounds.length === 0 ? becomes(agent) : setAsked({ agent });
  };
  const name = agents.find(({ id }) => id === chosen)?.name;
  if (name !== undefined && !isOpen) {
    return (
      <p className="who-is">
        <span>
          <span className="soft">{words.sentence('people.measuring')}</span> {name}
        </span>
        <button type="button" className="button button-quiet" onClick={() => setOpen(true)}>
          {words.sentence('people.change')}
        </button>
      </p>
    );
  }
  return (
    <div className="who">
      {agents.length === 0 ? null : (
        <Field label={words.sentence('people.whoMeasures')} hint={words.sentence('people.agentHint')}>
          {(control) => (
            <select
              {...control}
              value={name === undefined ? '' : (chosen ?? '')}
              onChange={(event) => choose(event.target.value === '' ? null : event.target.value)}
            >
              <option value="">{words.sentence('people.choose')}</option>
              {agents.map((agent) => (
                <option key={agent.id} value={agent.id}>
                  {agent.name}
                </option>
              ))}
            </select>
          )}
        </Field>
      )}
      {asked === null ? null : (
        <div className="notice" role="alert">
          {leftTexts(asked.agent).map((text) => (
            <p key={text}>{text}</p>
          ))}
          <div className="buttons">
            <button type="button" className="button" onClick={() => becomes(asked.agent)}>
              {words.sentence(isLost(asked.agent) ? 'people.loseSets' : 'people.change')}
            </button>
            <button type="button" className="button button-quiet" onClick={() => setAsked(null)}>
              {words.sentence('app.cancel')}
            </button>
          </div>
        </div>
      )}
      {!mayAdd ? null : isAdding || agents.length === 0 ? (
        <AddAgent
          onAdded={(agent) => {
            choose(agent);
            setAdding(false);
            setOpen(false);
          }}
        />
      ) : (
        <button type="button" className="button button-quiet" onClick={() => setAdding(true)}>
          {words.sentence('people.addAgent')}
        </button>
      )}
    </div>
  );

  function isLost(agent: string | null): boolean {
    return leftBehind(store.get().kept, agent, book).sets.length > 0;
  }

  function leftTexts(agent: string | null): readonly string[] {
    const state = store.get();
    const { sets, rounds } = leftBehind(state.kept, agent, book);
    const { people, records } = state.known;
    const nameOf = (person: string) =>
      nameIn(
        people.value?.find(({ id }) => id === person) ??
          records[recordKey(book ?? 'care', person)]?.value ??
          null,
      );
    const begun = rounds.flatMap((person) => nameOf(person) ?? []);
    return [
      ...(sets.length === 0 ? [] : [words.sentence('people.setsLost', { text: setsText(state, sets) })]),
      ...(rounds.length === 0
        ? []
        : [
            words.sentence('people.roundsStay', {
              rounds: rounds.length,
              names: words.say.allOf(begun),
              text: name ?? words.sentence('people.somebodyElse'),
            }),
          ]),
    ];
  }
}

function AddAgent({ onAdded }: { readonly onAdded: (agent: string) => void }) {
  const app = useApp();
  const { server, words } = app;
  const form = useForm(ADD_AGENT);
  const [wrong, setWrong] = useState<string | null>(null);

  const add = async () => {
    const name = form.text('name').trim();
    if (name === '') return setWrong(words.sentence('person.nameMissing'));
    const agent = form.adds();
    const answer = await server.call('addAgent', { body: { id: agent, name } });
    if (!answer.ok) {
      return setWrong(words.sentence(answer.offline ? 'app.unreachable' : 'app.failed'));
    }
    await loadAgents(app);
    form.done();
    onAdded(agent);
  };
  return (
    // No form of its own: it stands inside others (signing, amending), and a form in a form goes nowhere.
    <div className="who-add">
      <Field label={words.sentence('people.agentName')} wrong={wrong}>
        {(control) => (
          <input
            {...control}
            type="text"
            autoComplete="off"
            maxLength={200}
            value={form.text('name')}
            onChange={(event) => {
              setWrong(null);
              form.set('name', event.target.value);
            }}
            onKeyDown={(event) => {
              if (event.key !== 'Enter') return;
              event.preventDefault();
              void add();
            }}
          />
        )}
      </Field>
      <button type="button" className="button" onClick={() => void add()}>
        {words.sentence('people.keepName')}
      </button>
    </div>
  );
}
