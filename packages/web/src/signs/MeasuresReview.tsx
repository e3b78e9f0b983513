import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { signText } from '../app/signText.js';
import { withMeasureNotDone } from '../round/draft.js';
import { notDoneText } from '../round/NotDoneForm.js';
import type { Round } from '../round/useRound.js';
import { KeptMeasure } from './KeptMeasure.js';
import { signsForm } from './signsForm.js';
import { unkeptSigns } from './typedSign.js';

type MeasuresReviewProps = { readonly round: Round; readonly person: string };

/** The other signs of the round, and which were not done. */
export function MeasuresReview({ round, person }: MeasuresReviewProps) {
  const { words } = useApp();
  const { measures, measuresNotDone } = round.draft;
  const typed = useKept(({ kept }) => kept.forms[signsForm(round.draft.round)]?.fields);
  const unkept = unkeptSigns(typed ?? {});
  return (
    <section className="sign-review" aria-label={words.sentence('result.other')}>
      <h2>{words.sentence('result.other')}</h2>
      {measures.map((measure) => (
        <KeptMeasure
          key={measure.entry}
          round={round}
          measure={measure}
          label={signText(measure.sign.of, words)}
          change={{ href: `/people/${person}/round/signs`, from: 'review' }}
          isFolded
        />
      ))}
      {unkept.length === 0 ? null : (
        <p className="notice">
          {words.sentence('signs.unkept', { text: unkept.map((of) => signText(of, words)).join(', ') })}
        </p>
      )}
      {Object.entries(measuresNotDone).map(([of, notDone]) => (
        <div key={of} className="buttons">
          <p>
            {signText(of as keyof typeof measuresNotDone, words)}:{' '}
            {words.sentence('review.notDoneIs', { text: notDoneText(notDone, words) })}
          </p>
          <button
            type="button"
            className="button button-quiet"
            onClick={() =>
              round.change((draft) => withMeasureNotDone(draft, of as keyof typeof measuresNotDone, null))
            }
          >
            {words.sentence('review.notDoneUndo')}
          </button>
        </div>
      ))}
      <div className="buttons">
        <Link
          href={`/people/${person}/round/signs`}
          className={measures.length === 0 ? 'button' : 'button button-quiet'}
        >
          {words.sentence(measures.length === 0 ? 'review.take' : 'review.takeAnother')}
        </Link>
      </div>
    </section>
  );
}
