import type { CountOf } from '@evenfall/clinical';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { signText } from '../app/signText.js';
import { AskedFirst } from '../parts/AskedFirst.js';
import { Flags } from '../parts/Flags.js';
import { Folded } from '../parts/Folded.js';
import { faceFlags } from '../parts/faceFlags.js';
import { RemoveButton } from '../parts/RemoveButton.js';
import { EvidenceStrip, RangeLine, Rate } from '../parts/ValueFigures.js';
import { notesOf } from '../pressure/notesOf.js';
import { PressureReview } from '../pressure/PressureReview.js';
import { MeasuresReview } from '../signs/MeasuresReview.js';
import { signsForm } from '../signs/signsForm.js';
import { shownContent } from './content.js';
import { type DraftValue, isVoidValue, withNotDone, withNumberReopened } from './draft.js';
import { READY, SIGNS_IN_ORDER } from './measuring.js';
import { NotDoneForm, notDoneText } from './NotDoneForm.js';
import { reasonsOf } from './notDoneReasons.js';
import { ResultBlock } from './ResultBlock.js';
import { ActNowPanel, AskPanel } from './ResultPanels.js';
import { BegunLine, PreparedLine, UnwellTick } from './ReviewLines.js';
import { discardRound } from './rounds.js';
import { SignBar, SignForm, useSigning } from './SignForm.js';
import { valueRemoved } from './slip.js';
import { standingOf } from './standing.js';
import { UnkeptLine } from './UnkeptLine.js';
import { useReturnedTo, valueId } from './useComeBack.js';
import type { Round } from './useRound.js';

type ReviewProps = { readonly round: Round; readonly person: string };

/** Every value of the round with its evidence, what is missing, and the signature. */
export function ReviewPanel({ round, person }: ReviewProps) {
  const { program } = useApp();
  const { draft } = round;
  const standing = standingOf(draft, { ...round, program });
  const { step, why } = standing.next;
  // What is still asked for stands before any figure: the key that signs is in sight from the first.
  const said = step === 'review' ? [] : why;
  const signing = useSigning({ round, person, standing });
  const notes = notesOf(draft, { ...round, program });
  useReturnedTo();
  return (
    <>
      <div className="review">
        <div className="review-first">
          <ActNowPanel standing={standing} repeat={notes.repeat} />
          <AskPanel round={round} standing={standing} />
          <UnkeptLine round={round} person={person} />
        </div>
        <div className="review-comes-to">
          {said.length === 0 ? null : <Flags flags={said} />}
          {standing.content.value === null ? null : (
            <ResultBlock
              value={standing.content.value}
              notes={notes}
              isLandmark
              said={said}
              readAt={draft.pressure.values.at(-1)?.measuredAt.at ?? null}
            />
          )}
          <UnwellTick round={round} />
        </div>
        <div className="review-taken">
          <BegunLine round={round} />
          <PreparedLine round={round} person={person} />
          {SIGNS_IN_ORDER.map((sign) => (
            <SignReview key={sign} round={round} sign={sign} person={person} />
          ))}
          <PressureReview round={round} person={person} />
          <OtherSigns round={round} person={person} />
        </div>
        <div className="review-sign">
          <SignForm signing={signing} />
        </div>
        <SignBar signing={signing} standing={standing} person={person} />
      </div>
      <Discard person={person} />
    </>
  );
}

/** The other signs, where the round came to any: most come to none, and then only the way to them stands here. */
function OtherSigns({ round, person }: ReviewProps) {
  const { words } = useApp();
  const { measures, measuresNotDone } = round.draft;
  const isTyped = useKept(({ kept }) => kept.forms[signsForm(round.draft.round)] !== undefined);
  if (measures.length > 0 || Object.keys(measuresNotDone).length > 0 || isTyped)
    return <MeasuresReview round={round} person={person} />;
  return (
    <section className="sign-review" aria-label={words.sentence('result.other')}>
      <h2>{words.sentence('result.other')}</h2>
      <div className="buttons">
        <Link href={`/people/${person}/round/signs`} className="button">
          {words.sentence('review.take')}
        </Link>
      </div>
    </section>
  );
}

function SignReview({ round, sign, person }: ReviewProps & { readonly sign: CountOf }) {
  const { words } = useApp();
  const { values, notDone } = round.draft[sign];
  const [isAsking, setAsking] = useState(false);
  const hasValue = values.some((value) => !isVoidValue(value));
  const href = `/people/${person}/round/${sign}`;
  return (
    <section className="sign-review" aria-label={signText(sign, words)}>
      <h2>{signText(sign, words)}</h2>
      {values.map((value) => (
        <ValueReview key={value.entry} round={round} sign={sign} value={value} href={href} />
      ))}
      {hasValue && notDone === null ? null : notDone === null ? (
        <div className="buttons">
          <Link href={href} className="button">
            {words.sentence('review.take')}
          </Link>
          {isAsking ? null : (
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
  const isVoid = isVoidValue(value);
  return (
    <div className="value-review">
      {isVoid ? null : (
        <div className="value-line" id={valueId(entry)} tabIndex={-1}>
          <Rate given={given} />
        </div>
      )}
      <Folded
        summary={words.sentence(isVoid ? 'review.voidFolded' : 'review.folded')}
        of={signText(sign, words)}
      >
        <EvidenceStrip given={given} />
        {value.kind === 'taps' ? <p className="soft small">{words.sentence('review.tapsStand')}</p> : null}
        <div className="buttons">
          {isVoid ? null : (
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
          {isVoid ? null : (
            <Link href={href} className="button button-quiet" onClick={() => round.measure(sign, READY)}>
              {words.sentence('review.takeAnother')}
            </Link>
          )}
        </div>
      </Folded>
      {isVoid ? null : (
        <>
          <RangeLine given={given} />
          <Flags flags={faceFlags(given)} />
        </>
      )}
    </div>
  );
}

function Discard({ person }: { readonly person: string }) {
  const app = useApp();
  const { words } = app;
  const [, go] = useLocation();
  const discard = () => {
    discardRound(app, person);
    go(`/people/${person}`, { replace: true });
  };
  return (
    <AskedFirst
      does={words.sentence('review.discard')}
      asks={words.sentence('review.discardSure')}
      now={words.sentence('review.discardNow')}
      onSure={discard}
    />
  );
}
