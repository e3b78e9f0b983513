import type { ReactNode } from 'react';
import { Redirect } from 'wouter';
import { useApp } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { useIsWide } from '../parts/useIsWide.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { RestLine } from './RestLine.js';
import { SlipLine } from './SlipLine.js';
import type { SlipPage } from './slip.js';
import { useCameFrom } from './useCameFrom.js';
import type { Round } from './useRound.js';
import { useDraft, useInForce, useRecord, useRound } from './useRound.js';
import { isOfAnother } from './whose.js';

/** What a step of a round is shown with: the round, and the record of the person as the server gave it. */
export type InRound = {
  readonly round: Round;
  readonly record: { readonly entries: readonly unknown[] };
};

type FrameProps = {
  readonly person: string;
  /** The step, for the title and, where nothing else is given, beside the name. */
  readonly title: string;
  /** What stands beside the name; the round is null while it is not known yet. */
  readonly beside?: (round: Round | null) => ReactNode;
  /** Without the footer, where every line of the screen is needed. */
  readonly isBare?: boolean;
  /** Whether the page itself shows the rest before the pressure. */
  readonly showsRest?: (round: Round) => boolean;
  /** What else stands under the name. */
  readonly alsoUnder?: (round: Round) => ReactNode;
  /** Whether the rest changes no word, since somebody counts. */
  readonly isRestQuiet?: (round: Round) => boolean;
  /** Which page it is for what was taken out on it, if anything can be. */
  readonly slipPage?: SlipPage;
  /** What was taken so far, beside the step where there is room for it. */
  readonly soFar?: (round: Round) => ReactNode;
  readonly children: (shown: InRound) => ReactNode;
};

/**
 * The page of one step of a round. Without a round under way it leads to the chart, before the identity is checked to
 * the check, with somebody else's to whom it is of; the name of the person stands above whatever is measured.
 */
export function RoundFrame({
  person,
  title,
  beside,
  isBare = false,
  showsRest,
  alsoUnder,
  isRestQuiet,
  slipPage,
  soFar,
  children,
}: FrameProps) {
  const { words } = useApp();
  const cameFrom = useCameFrom(person);
  const isWide = useIsWide();
  const { asked, again } = useRecord(person);
  const rules = useInForce();
  const round = useRound(person);
  const hasDraft = useDraft(person) !== undefined;
  const agent = useMeasuring();
  if (!hasDraft) return <Redirect to={`/people/${person}`} replace />;
  if (round !== null && (!round.draft.isIdentityChecked || isOfAnother(round.draft, agent)))
    return <Redirect to={`/people/${person}/round`} replace />;
  return (
    <Page
      title={title}
      heading={
        <span className="measure-heading">
          <span>{nameIn(asked.value)}</span>
          <span className="measure-sign">{beside === undefined ? title : beside(round)}</span>
        </span>
      }
      under={
        <>
          <IdentityOf record={asked.value} />
          {round === null ? null : (
            <>
              <RestLine
                round={round}
                isElsewhere={showsRest?.(round) ?? false}
                isQuiet={isRestQuiet?.(round) ?? false}
              />
              {alsoUnder?.(round)}
              {slipPage === undefined ? null : <SlipLine round={round} page={slipPage} />}
            </>
          )}
        </>
      }
      back={cameFrom ?? { href: `/people/${person}/round`, text: words.sentence('review.round') }}
      isBare={isBare}
      isCoverable
      isWide
    >
      <Asking asked={asked} again={again} away="line">
        {(record) => (
          <Asking asked={rules.asked} again={rules.again} away="not">
            {() =>
              round === null ? null : (
                <div className="round-step">
                  {children({ round, record })}
                  {isWide ? soFar?.(round) : null}
                </div>
              )
            }
          </Asking>
        )}
      </Asking>
    </Page>
  );
}
