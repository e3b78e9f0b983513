import { useState } from 'react';
import { useLocation } from 'wouter';
import { useBook } from '../app/book.js';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { SignAs, useSigner } from './SignAs.js';
import { sign } from './sign.js';
import { standingOf } from './standing.js';
import { UnkeptLine } from './UnkeptLine.js';
import type { Round } from './useRound.js';

/** Who signs, in what role. It says what is missing rather than being dead. */
export function SignForm({ round, person }: { readonly round: Round; readonly person: string }) {
  const app = useApp();
  const { words } = app;
  const signer = useSigner();
  const { agent } = signer;
  const { book } = useBook();
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
    sign(app, round, { ...signer, agent });
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
      <UnkeptLine round={round} person={person} />
      <SignAs signer={signer} />
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
