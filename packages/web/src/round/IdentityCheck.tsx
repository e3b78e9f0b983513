import {
  type Beginning,
  CHAPERONES,
  type Chaperone,
  CONSENTS,
  type Consent,
  type Identity,
  INTERPRETERS,
  type Interpreter,
} from '@evenfall/record';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { dayText } from '../app/times.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { usualBeginning, withBeginning } from './beginning.js';
import { nextHref } from './nextHref.js';
import { discardRound } from './rounds.js';
import { useNextStep } from './useNextStep.js';
import type { Round } from './useRound.js';

type CheckProps = { readonly round: Round; readonly identity: Identity };

/**
 * Two identifiers, said by the person, and whether they agree: one touch for the usual. Source: bedside handbook 3.18
 * and 7.1.
 */
export function IdentityCheck({ round, identity }: CheckProps) {
  const app = useApp();
  const { words } = app;
  const [, go] = useLocation();
  const { person } = round.draft;
  const nextStep = useNextStep();
  const begin = (begun: Beginning) =>
    nextStep(round.draft, round, ({ state, step }) => {
      round.change((draft) => withBeginning(draft, begun, state, round.inForce));
      go(nextHref(person, begun.consent === 'declined' ? 'review' : step), { replace: true });
    });
  return (
    <section className="identity-check">
      <p>{words.sentence('review.askThem')}</p>
      <dl>
        <dt>{words.sentence('person.name')}</dt>
        <dd>{identity.name}</dd>
        {identity.birthDate === null ? null : (
          <>
            <dt>{words.sentence('person.birthDate')}</dt>
            <dd>{dayText(identity.birthDate, words)}</dd>
          </>
        )}
        {identity.number === null ? null : (
          <>
            <dt>{words.sentence('person.number')}</dt>
            <dd>{identity.number}</dd>
          </>
        )}
      </dl>
      <div className="buttons-stacked">
        <button
          type="button"
          className="button button-first button-large"
          onClick={() => begin(usualBeginning(identity))}
        >
          {words.sentence('begun.matchesAndAgrees')}
        </button>
        <button
          type="button"
          className="button button-large"
          onClick={() => {
            discardRound(app, person);
            go('/', { replace: true });
          }}
        >
          {words.sentence('review.doesNotMatch')}
        </button>
      </div>
      <NotUsual was={round.draft.begun ?? usualBeginning(identity)} onBegin={begin} />
      <p className="soft small">{words.sentence('review.doesNotMatchSays')}</p>
    </section>
  );
}

type NotUsualProps = { readonly was: Beginning; readonly onBegin: (begun: Beginning) => void };

/** What else there is to note before anything is taken: in one line of the chart. */
function NotUsual({ was, onBegin }: NotUsualProps) {
  const { words } = useApp();
  const [begun, setBegun] = useState(was);
  const set = (more: Partial<Beginning>) => setBegun({ ...begun, ...more });
  return (
    <details className="more">
      <summary>{words.sentence('begun.notUsual')}</summary>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          const who = (begun.who ?? '').trim();
          onBegin({ ...begun, who: who === '' ? null : who });
        }}
      >
        <Choices<Consent>
          legend={words.sentence('begun.consent')}
          choices={CONSENTS.map((id) => ({ id, text: words.sentence(`begun.${id}`) }))}
          chosen={begun.consent}
          onChoose={(consent) => set({ consent })}
        />
        {begun.consent === 'declined' ? (
          <p className="small">{words.sentence('begun.declinedSays')}</p>
        ) : null}
        <Choices<Chaperone>
          legend={words.sentence('begun.chaperone')}
          choices={CHAPERONES.map((id) => ({ id, text: words.sentence(`begun.chaperone-${id}`) }))}
          chosen={begun.chaperone}
          onChoose={(chaperone) => set({ chaperone })}
        />
        <Choices<Interpreter>
          legend={words.sentence('begun.interpreter')}
          choices={INTERPRETERS.map((id) => ({ id, text: words.sentence(`begun.interpreter-${id}`) }))}
          chosen={begun.interpreter}
          onChoose={(interpreter) => set({ interpreter })}
        />
        <Field label={words.sentence('begun.who')}>
          {(control) => (
            <input
              {...control}
              type="text"
              autoComplete="off"
              maxLength={200}
              value={begun.who ?? ''}
              onChange={(event) => set({ who: event.target.value })}
            />
          )}
        </Field>
        <button type="submit" className="button button-large">
          {words.sentence('begun.keep')}
        </button>
      </form>
    </details>
  );
}
