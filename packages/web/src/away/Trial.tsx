import type { ChartedSeries, SeriesDecision, SeriesValueKept } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { useSendEntry } from '../app/useSendEntry.js';
import { Refused } from '../parts/Refused.js';
import { TextLine } from '../parts/TextLine.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { loadRecord } from '../server/load.js';
import { movedText } from './readingText.js';

/** What a hand tries out of single readings, by their place in the series. */
export type TrialOf = ReadonlyMap<number, SeriesDecision>;

type TrialProps = {
  readonly person: string;
  readonly series: ChartedSeries;
  /** With what is tried out. */
  readonly value: SeriesValueKept;
  readonly trial: TrialOf;
  readonly onUndo: () => void;
};

const DECISIONS: readonly SeriesDecision[] = ['out', 'in', 'by-rule'];

/** How the mean moves by what is tried out, and the reason with which it is kept. */
export function Trial({ person, series, value, trial, onUndo }: TrialProps) {
  const app = useApp();
  const { words } = app;
  const form = useForm(`series-decided ${series.id}`);
  const { send, refused } = useSendEntry(form, person, () => loadRecord(app, person));
  const [isMissing, setMissing] = useState(false);
  const keep = async () => {
    const reason = form.text('reason').trim();
    if (reason === '') {
      setMissing(true);
      return;
    }
    for (const decision of DECISIONS) {
      const indexes = [...trial].flatMap(([index, made]) => (made === decision ? [index] : []));
      if (indexes.length === 0) continue;
      const content = { series: series.id, decision, indexes, reason };
      if (!(await send({ kind: 'series-decided', content }))) return;
    }
    onUndo();
  };
  return (
    <div className="not-printed">
      <p className="soft">{words.sentence('away.byHandHint')}</p>
      <div role="status">
        {trial.size === 0 ? null : (
          <p className="away-moves">
            {words.sentence('away.moves', {
              ...movedText(series.value.mean, value.mean, words),
              used: value.used,
            })}
          </p>
        )}
      </div>
      {trial.size === 0 ? null : (
        <form
          className="form away-trial"
          onSubmit={(event) => {
            event.preventDefault();
            void keep();
          }}
        >
          <TextLine
            label={words.sentence('away.reason')}
            wrong={isMissing ? words.sentence('away.reasonMissing') : null}
            value={form.text('reason')}
            onType={(text) => {
              setMissing(false);
              form.set('reason', text);
            }}
          />
          <WhoMeasures />
          <Refused text={refused} />
          <div className="buttons">
            <button type="submit" className="button button-first">
              {words.sentence('away.keepDecision', { readings: trial.size })}
            </button>
            <button type="button" className="button" onClick={onUndo}>
              {words.sentence('away.undo')}
            </button>
          </div>
        </form>
      )}
    </div>
  );
}
