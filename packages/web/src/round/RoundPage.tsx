import { Redirect } from 'wouter';
import { useBook } from '../app/book.js';
import { useApp } from '../app/context.js';
import { FactsOfRound } from '../facts/FactsOfRound.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { ClassCheck } from './ClassCheck.js';
import { GoOn } from './GoOn.js';
import { goOnPages } from './goOnLater.js';
import { IdentityCheck } from './IdentityCheck.js';
import { OthersRound } from './OthersRound.js';
import { RestLine } from './RestLine.js';
import { restOf } from './restDraft.js';
import { SlipLine } from './SlipLine.js';
import { useDraft, useInForce, useRecord, useRound } from './useRound.js';
import { isOfAnother } from './whose.js';

/** A round from the identity check to the signature. */
export function RoundPage({ person }: { readonly person: string }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const rules = useInForce();
  const round = useRound(person);
  const isClass = useBook().book === 'class';
  const hasDraft = useDraft(person) !== undefined;
  const agent = useMeasuring();
  if (!hasDraft) return <Redirect to={`/people/${person}`} replace />;
  const isOthers = round !== null && isOfAnother(round.draft, agent);
  const isChecked = !isOthers && (round?.draft.isIdentityChecked ?? false);

  return (
    <Page
      title={isChecked ? words.sentence('review.title') : words.sentence('review.round')}
      heading={
        isChecked || isOthers ? (
          <span className="measure-heading">
            <span>{nameIn(asked.value)}</span>
            <span className="measure-sign">{words.sentence(isOthers ? 'review.round' : 'review.title')}</span>
          </span>
        ) : (
          words.sentence(isClass ? 'class.checkTitle' : 'review.identityTitle')
        )
      }
      under={
        isChecked && round !== null ? (
          <>
            <IdentityOf record={asked.value} />
            <RestLine round={round} isElsewhere={restOf(round.draft.rest) !== null} />
            <SlipLine round={round} page="review" />
          </>
        ) : null
      }
      isCoverable
      isWide={isChecked}
      back={{ href: `/people/${person}`, text: words.sentence(isClass ? 'class.rounds' : 'chart.title') }}
    >
      <Asking asked={asked} again={again} away="line">
        {(record) => (
          <Asking asked={rules.asked} again={rules.again} away="not">
            {() => {
              const { identity, classIdentity } = record;
              if (round === null || (identity ?? classIdentity) === null) return null;
              if (isOthers) return <OthersRound draft={round.draft} />;
              if (isChecked)
                return (
                  <>
                    <FactsOfRound record={record} round={round} />
                    <GoOn part={goOnPages}>
                      {({ ReviewPanel }) => <ReviewPanel round={round} person={person} />}
                    </GoOn>
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
