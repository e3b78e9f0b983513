import type { Book, Role } from '@evenfall/record';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { signText } from '../app/signText.js';
import { Field } from '../parts/Field.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import type { Kept } from '../store/kept.js';
import { sign } from './sign.js';
import { standingOf } from './standing.js';
import type { Round } from './useRound.js';

/** The roles in which somebody signs what they measured; an importer's come from a file. */
const SIGNING_ROLES = {
  care: ['observer', 'supervisor'],
  class: ['observer', 'teacher', 'assessor'],
  simulated: ['observer', 'teacher', 'assessor'],
} as const satisfies Record<Book, readonly Role[]>;

/** Who signs, in what role. It says what is missing rather than being dead. */
export function SignForm({ round, person }: { readonly round: Round; readonly person: string }) {
  const app = useApp();
  const { store, words } = app;
  const agent = useKept(({ kept }) => kept.agent);
  // Learning belongs to whoever measures, not to the device or to the round: the next one is not taken for a learner.
  const isLearner = useKept(
    ({ kept }) => kept.agent !== null && kept.learners?.includes(kept.agent) === true,
  );
  const [chosen, setRole] = useState<{ readonly by: string | null; readonly role: Role } | null>(null);
  const { book } = useBook();
  const role = isLearner || chosen?.by !== agent ? 'observer' : (chosen?.role ?? 'observer');
  const [isAsked, setAsked] = useState(false);
  const [, go] = useLocation();
  const standing = standingOf(round.draft, { ...round, program: app.program });
  // A learner is not asked for a pregnancy in front of the class.
  const unasked = standing.unasked.filter((one) => one === 'features' || book !== 'class');
  const missing = [
    ...standing.missing.map((one) => words.sentence('review.needs', { text: signText(one, words) })),
    ...unasked.map((one) =>
      words.sentence(one === 'features' ? 'review.unaskedFeatures' : 'review.unaskedPregnancy'),
    ),
    ...(agent === null ? [words.sentence('review.needsAgent')] : []),
  ];

  const submit = () => {
    setAsked(true);
    if (missing.length > 0 || agent === null) return;
    sign(app, round, { agent, role, isPreliminary: isLearner });
    go(`/people/${person}`, { replace: true });
  };
  return (
    <form
      className="form sign-form"
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <h2>{words.sentence('review.sign')}</h2>
      <WhoMeasures />
      <label className="tick">
        <input
          type="checkbox"
          checked={isLearner}
          disabled={agent === null}
          onChange={({ target }) =>
            store.change((state) => ({ ...state, kept: withLearner(state.kept, agent, target.checked) }))
          }
        />
        <span>{words.sentence('review.asLearner')}</span>
      </label>
      {isLearner ? (
        <p className="notice">{words.sentence('review.preliminary')}</p>
      ) : (
        <Field label={words.sentence('review.signAs')}>
          {(control) => (
            <select
              {...control}
              value={role}
              onChange={({ target }) => {
                const found = SIGNING_ROLES[book].find((one) => one === target.value);
                setRole(found === undefined ? null : { by: agent, role: found });
              }}
            >
              {SIGNING_ROLES[book].map((one) => (
                <option key={one} value={one}>
                  {words.sentence(`roles.${one}`)}
                </option>
              ))}
            </select>
          )}
        </Field>
      )}
      {isAsked && missing.length > 0 ? (
        <div className="notice" role="alert">
          <p>{words.sentence('review.cannotYet')}</p>
          <ul className="flags">
            {missing.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </div>
      ) : null}
      <button type="submit" className="button button-first button-large">
        {words.sentence('review.sign')}
      </button>
      <p className="soft small">{words.sentence(book === 'class' ? 'class.signHint' : 'review.signHint')}</p>
    </form>
  );
}

/** Who measures said that they are learning, or that they are not. */
function withLearner(kept: Kept, agent: string | null, isLearner: boolean): Kept {
  const others = (kept.learners ?? []).filter((one) => one !== agent);
  return { ...kept, learners: isLearner && agent !== null ? [...others, agent] : others };
}
