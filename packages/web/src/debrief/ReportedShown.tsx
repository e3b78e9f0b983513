import { type Exercise, type Judged, reportedOf } from '@evenfall/practice';
import { useApp } from '../app/context.js';

type ReportedShownProps = {
  readonly exercise: Exercise;
  /** Each of its readings. */
  readonly judged: readonly Judged[];
};

/** What a good observer reports of this person, each beside whether it was reported. */
export function ReportedShown({ exercise, judged }: ReportedShownProps) {
  const { words } = useApp();
  const all = reportedOf(exercise, judged);
  if (all.length === 0) return null;
  return (
    <section aria-labelledby="debrief-reported">
      <h2 id="debrief-reported">{words.sentence('counts.reported')}</h2>
      <ul className="debrief-reported">
        {all.map(({ code, is }) => (
          <li key={code}>
            <span>{words.sentence(`counts.report-${code}`)}</span>
            <span className={is === 'reported' ? 'ticked' : is === 'not-here' ? 'soft' : 'debrief-unsaid'}>
              {words.sentence(`counts.is-${is}`)}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
