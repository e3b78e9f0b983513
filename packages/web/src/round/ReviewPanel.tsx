import type { CountOf } from '@evenfall/clinical';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { Flags } from '../parts/Flags.js';
import { faceFlags } from '../parts/faceFlags.js';
import { RemoveButton } from '../parts/RemoveButton.js';
import { EvidenceStrip, RangeLine, Rate } from '../parts/ValueFigures.js';
import { PressureReview } from '../pressure/PressureReview.js';
import { MeasuresReview } from '../signs/MeasuresReview.js';
import { shownContent } from './content.js';
import { type DraftValue, isVoidValue, withMeasuring, withNotDone, withNumberReopened } from './draft.js';
import { READY, SIGNS_IN_ORDER } from './measuring.js';
import { NotDoneForm, notDoneText } from './NotDoneForm.js';
import { reasonsOf } from './notDoneReasons.js';
import { ResultBlock } from './ResultBlock.js';
import { ActNowPanel, AskPanel } from './ResultPanels.js';
import { BegunLine, NextLine, PreparedLine, UnwellTick } from './ReviewLines.js';
import { discardRound } from './rounds.js';
import { SignForm } from './SignForm.js';
import { valueRemoved } from './slip.js';
import { standingOf } from './standing.js';
import { useReturnedTo, valueId } from './useComeBack.js';
import type { Round } from './useRound.js';

type ReviewProps = { readonly round: Round; readonly person: string };

/** Every value of the round with its evidence, what is missing, and the signature. */
export function ReviewPanel({ round, person }: ReviewProps) {
  const { words, program } = useApp();
  const standing = standingOf(round.draft, { ...round, program });
  useReturnedTo();
  return (
    <div className="review">
      <BegunLine round={round} />
      <p className="soft">{words.sentence('review.lead')}</p>
      <ActNowPanel standing={standing} />
      <AskPanel round={round} standing={standing} />
      <PreparedLine round={round} person={person} />
      {SIGNS_IN_ORDER.map((sign) => (
        <SignReview key={sign} round={round} sign={sign} person={person} />
      ))}
      <PressureReview round={round} person={person} />
      <MeasuresReview round={round} person={person} />
      {standing.content.value === null ? null : <ResultBlock value={standing.content.value} isLandmark />}
      <UnwellTick round={round} />
      <NextLine standing={standing} person={person} />
      <SignForm round={round} person={person} />
      <Discard person={person} />
    </div>
  );
}

function SignReview({ round, sign, person }: ReviewProps & { readonly sign: CountOf }) {
  const { words } = useApp();
  const { values, notDone } = round.draft[sign];
  const [isAsking, setAsking] = useState(false);
  const take = () => round.change((draft) => withMeasuring(draft, sign, READY));
  const hasValue = values.some((value) => !isVoidValue(value));
  const href = `/people/${person}/round/${sign}`;
  return (
    <section className="sign-review" aria-label={signText(sign, words)}>
      <h2>{signText(sign, words)}</h2>
      {values.map((value) => (
        <ValueReview key={value.entry} round={round} sign={sign} value={value} href={href} />
      ))}
      {notDone === null ? (
        <div className="buttons">
          <Link
            href={href}
            className={hasValue ? 'button button-quiet' : 'button'}
            onClick={hasValue ? take : undefined}
          >
            {words.sentence(hasValue ? 'review.takeAnother' : 'review.take')}
          </Link>
          {hasValue || isAsking ? null : (
            <button type="button" className="button button-quiet" onClick={() => setAsking(true)}>
              {words.sentence('review.notDone')}
            </button>
          )}
        </div>
      ) : (
        <div className="buttons">
          <p>{words.sentence('review.notDoneIs', { text: notDoneText(notDone, words) })}</p>
          <button
            type="button"
            className="button button-quiet"
            onClick={() => round.change((draft) => withNotDone(draft, sign, null))}
          >
            {words.sentence('review.notDoneUndo')}
          </button>
        </div>
      )}
      {isAsking && notDone === null && !hasValue ? (
        <NotDoneForm
          reasons={reasonsOf(sign)}
          onKeep={(kept) => {
            round.change((draft) => withNotDone(draft, sign, kept));
            setAsking(false);
          }}
          onCancel={() => setAsking(false)}
        />
      ) : null}
    </section>
  );
}

type ValueReviewProps = {
  readonly round: Round;
  readonly sign: CountOf;
  readonly value: DraftValue;
  /** The page on which the sign is taken. */
  readonly href: string;
};

function ValueReview({ round, sign, value, href }: ValueReviewProps) {
  const { program, words } = useApp();
  const { entry } = value;
  const given = shownContent(round.draft, sign, value, { ...round, program });
  return (
    <div className="value-review">
      {isVoidValue(value) ? null : (
        <div className="value-line" id={valueId(entry)} tabIndex={-1}>
          <Rate given={given} />
          <RangeLine given={given} />
        </div>
      )}
      <EvidenceStrip given={given} />
      {isVoidValue(value) ? null : <Flags flags={faceFlags(given)} />}
      {value.kind === 'taps' ? <p className="soft small">{words.sentence('review.tapsStand')}</p> : null}
      <div className="buttons">
        {isVoidValue(value) ? null : (
          <>
            {value.kind === 'count' ? (
              <Link
                href={href}
                className="button button-quiet"
                onClick={() =>
                  round.change((draft) => withNumberReopened(draft, sign, { entry, from: 'review' }))
                }
              >
                {words.sentence('count.changeNumber')}
              </Link>
            ) : null}
            <Link
              href={href}
              className="button button-quiet"
              onClick={() => round.measure(sign, { at: 'shown', entry })}
            >
              {words.sentence('count.alsoNoticed')}
            </Link>
          </>
        )}
        <RemoveButton onRemove={() => round.change((draft) => valueRemoved(draft, sign, entry))} />
      </div>
    </div>
  );
}

function Discard({ person }: { readonly person: string }) {
  const app = useApp();
  const { words } = app;
  const [isAsking, setAsking] = useState(false);
  const [, go] = useLocation();
  if (!isAsking) {
    return (
      <button type="button" className="button button-quiet" onClick={() => setAsking(true)}>
        {words.sentence('review.discard')}
      </button>
    );
  }
  return (
    <div className="notice" role="alert">
      <p>{words.sentence('review.discardSure')}</p>
      <div className="buttons">
        <button
          type="button"
          className="button"
          onClick={() => {
            discardRound(app, person);
            go(`/people/${person}`, { replace: true });
          }}
        >
          {words.sentence('review.discardNow')}
        </button>
        <button type="button" className="button button-quiet" onClick={() => setAsking(false)}>
          {words.sentence('app.cancel')}
        </button>
      </div>
    </div>
  );
}
