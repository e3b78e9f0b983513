import type { Identity } from '@evenfall/record';
import { Redirect, useLocation } from 'wouter';
import { useBook } from '../app/book.js';
import { useApp } from '../app/context.js';
import { dayText } from '../app/times.js';
import { FactsOfRound } from '../facts/FactsOfRound.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { ClassCheck } from './ClassCheck.js';
import { nextHref } from './nextHref.js';
import { ReviewPanel } from './ReviewPanel.js';
import { discardRound } from './rounds.js';
import { standingOf } from './standing.js';
import { type Round, useDraft, useInForce, useRecord, useRound } from './useRound.js';

/** A round from the identity check to the signature. */
export function RoundPage({ person }: { readonly person: string }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const rules = useInForce();
  const round = useRound(person);
  const isClass = useBook().book === 'class';
  const hasDraft = useDraft(person) !== undefined;
  if (!hasDraft) return <Redirect to={`/people/${person}`} replace />;
  const isChecked = round?.draft.isIdentityChecked ?? false;

  return (
    <Page
      title={isChecked ? words.sentence('review.title') : words.sentence('review.round')}
      heading={
        isChecked ? (
          <span className="measure-heading">
            <span>{nameIn(asked.value)}</span>
            <span className="measure-sign">{words.sentence('review.title')}</span>
          </span>
        ) : (
          words.sentence(isClass ? 'class.checkTitle' : 'review.identityTitle')
        )
      }
      under={isChecked ? <IdentityOf record={asked.value} /> : null}
      isCoverable
      back={{ href: `/people/${person}`, text: words.sentence(isClass ? 'class.rounds' : 'chart.title') }}
    >
      <Asking asked={asked} again={again}>
        {(record) => (
          <Asking asked={rules.asked} again={rules.again}>
            {() => {
              const { identity, classIdentity } = record;
              if (round === null || (identity ?? classIdentity) === null) return null;
              if (isChecked)
                return (
                  <>
                    <FactsOfRound record={record} round={round} />
                    <ReviewPanel round={round} person={person} />
                  </>
                );
              if (classIdentity !== null) return <ClassCheck round={round} identity={classIdentity} />;
              return identity === null ? null : <IdentityCheck round={round} identity={identity} />;
            }}
          </Asking>
        )}
      </Asking>
    </Page>
  );
}

type CheckProps = { readonly round: Round; readonly identity: Identity };

/** Two identifiers, said by the person. Source: bedside handbook 3.18 and 7.1. */
function IdentityCheck({ round, identity }: CheckProps) {
  const app = useApp();
  const { words, program } = app;
  const [, go] = useLocation();
  const { person } = round.draft;
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
          onClick={() => {
            round.change((draft) => ({ ...draft, isIdentityChecked: true }));
            go(nextHref(person, standingOf(round.draft, { ...round, program }).next.step), { replace: true });
          }}
        >
          {words.sentence('review.matches')}
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
      <p className="soft small">{words.sentence('review.doesNotMatchSays')}</p>
    </section>
  );
}
