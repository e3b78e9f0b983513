import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { Flags } from '../parts/Flags.js';
import { withMeasureNotDone, withoutMeasure } from '../round/draft.js';
import { signContentOf } from '../round/entries.js';
import { notDoneText } from '../round/NotDoneForm.js';
import type { Round } from '../round/useRound.js';
import { measureText } from './measureText.js';

type MeasuresReviewProps = { readonly round: Round; readonly person: string };

/** The other signs of the round, and which were not done. */
export function MeasuresReview({ round, person }: MeasuresReviewProps) {
  const { words, program } = useApp();
  const { measures, measuresNotDone } = round.draft;
  return (
    <section className="sign-review" aria-label={words.sentence('result.other')}>
      <h2>{words.sentence('result.other')}</h2>
      {measures.map((measure) => (
        <div key={measure.entry} className="value-review">
          <p>
            <span className="soft">{signText(measure.sign.of, words)}</span>{' '}
            <strong>{measureText(measure.sign, words)}</strong>
          </p>
          <Flags flags={signContentOf(round.draft, measure, { ...round, program }).value.flags} />
          <button
            type="button"
            className="button button-quiet"
            onClick={() => round.change((draft) => withoutMeasure(draft, measure.entry))}
          >
            {words.sentence('count.takeOut')}
          </button>
        </div>
      ))}
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
        <Link href={`/people/${person}/round/signs`} className="button button-quiet">
          {words.sentence(measures.length === 0 ? 'review.take' : 'review.takeAnother')}
        </Link>
      </div>
    </section>
  );
}
