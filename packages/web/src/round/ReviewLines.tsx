import { areCuffPointsKnown, exceptionsWithRest, isRestKnown } from '@evenfall/clinical';
import { beginningText, restText } from '@evenfall/words';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { restOf } from './restDraft.js';
import type { Round } from './useRound.js';

type PersonProps = { readonly round: Round; readonly person: string };

/** Whether the person was made ready, and what was not as it should be. */
export function PreparedLine({ round, person }: PersonProps) {
  const { words } = useApp();
  const rest = restOf(round.draft.rest);
  const exceptions = exceptionsWithRest(round.draft.exceptions, rest);
  // A rest that still goes on is known to be one.
  const isKnown = round.draft.rest !== null || isRestKnown(exceptions, rest);
  const isCuff = areCuffPointsKnown(exceptions, round.draft.pressure.isCuffAsked === true);
  const none = isKnown ? (isCuff ? 'prepare.none' : 'prepare.noneSoFar') : 'prepare.noneElse';
  const text =
    exceptions === null
      ? words.sentence('prepare.notLooked')
      : exceptions.length === 0
        ? words.sentence(none)
        : words.sentence('prepare.some', {
            text: exceptions.map((one) => words.sentence(`prepare.${one}`)).join(', '),
          });
  return (
    <section className="sign-review" aria-label={words.sentence('prepare.title')}>
      <div className="review-line small">
        <h2>{words.sentence('prepare.title')}</h2>
        <Link href={`/people/${person}/round/prepare`} className="button button-quiet">
          {words.sentence(exceptions === null ? 'prepare.look' : 'prepare.change')}
        </Link>
      </div>
      <p className="small">
        {text}
        {rest === null ? null : ` ${restText(rest, words)}`}
      </p>
      {isKnown && isCuff ? null : (
        <ul className="flags">
          {isKnown ? null : <li>{words.sentence('rest.notKnown')}</li>}
          {isCuff ? null : <li>{words.sentence('prepare.cuffNotYet')}</li>}
        </ul>
      )}
    </section>
  );
}

/** By what the person was known, whether they agreed, and who else was there. */
export function BegunLine({ round }: { readonly round: Round }) {
  const { words } = useApp();
  const { begun, book } = round.draft;
  if (book === 'class') return null;
  return (
    <p className="review-line small">
      <span>{begun === null ? words.sentence('begun.notNoted') : beginningText(begun, words)}</span>
      <button
        type="button"
        className="button button-quiet"
        onClick={() => round.change((draft) => ({ ...draft, isIdentityChecked: false }))}
      >
        {words.sentence('begun.change')}
      </button>
    </p>
  );
}

/** How the person looks comes before any number: unwell asks for a repeat at once. */
export function UnwellTick({ round }: { readonly round: Round }) {
  const { words } = useApp();
  const isUnwell = round.draft.unwell === true;
  return (
    <div>
      <label className="tick">
        <input
          type="checkbox"
          checked={isUnwell}
          onChange={(event) => {
            const unwell = event.target.checked ? true : null;
            round.change((draft) => ({ ...draft, unwell }));
          }}
        />
        <span>{words.sentence('result.unwell')}</span>
      </label>
      {isUnwell && round.draft.wanted.includes('lying-and-standing') ? (
        <p className="small">{words.sentence('postures.notUpUnwell')}</p>
      ) : null}
    </div>
  );
}
