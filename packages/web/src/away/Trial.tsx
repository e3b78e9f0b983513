import type { ChartedSeries, SeriesDecision, SeriesValueKept } from '@evenfall/record';
import { useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { useLeavingAsked } from '../app/leavingAsked.js';
import { useSendEntry } from '../app/useSendEntry.js';
import { Refused } from '../parts/Refused.js';
import { TextLine } from '../parts/TextLine.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { reloadRecord } from '../server/load.js';
import { movedText } from './readingText.js';

/** What a hand tries out of single readings, by their place in the series. */
export type TrialOf = ReadonlyMap<number, SeriesDecision>;

type TrialProps = {
  readonly person: string;
  readonly series: ChartedSeries;
  /** With what is tried out. */
  readonly value: SeriesValueKept;
  readonly trial: TrialOf;
  readonly last: LastTried;
  readonly onUndo: () => void;
};

/** The reading that was touched last, and whether that was by a key: then the focus goes on to the reason. */
export type LastTried = { readonly index: number; readonly isByKey: boolean };

const DECISIONS: readonly SeriesDecision[] = ['out', 'in', 'by-rule'];

/** How the mean moves by what is tried out, and the reason with which it is kept: right under the reading that was touched. */
export function Trial({ person, series, value, trial, last, onUndo }: TrialProps) {
  const app = useApp();
  const { words } = app;
  const form = useForm(`series-decided ${series.id}`);
  const { send, refused } = useSendEntry(form, person, () => reloadRecord(app, person));
  const [isMissing, setMissing] = useState(false);
  const box = useRef<HTMLFormElement>(null);
  useEffect(() => {
    box.current?.scrollIntoView({ block: 'nearest' });
    if (last.isByKey) box.current?.querySelector('input')?.focus();
  }, [last]);
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
    <>
      <form
        ref={box}
        className="form away-trial"
        aria-label={words.sentence('away.byHand')}
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <p className="away-moves" role="status">
          {words.sentence('away.moves', {
            ...movedText(series.value.mean, value.mean, words),
            used: value.used,
          })}
        </p>
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
      <LeavingAsked readings={trial.size} onStay={() => box.current?.scrollIntoView({ block: 'nearest' })} />
    </>
  );
}

/** Asks before the page is left while readings are tried out: nothing of that is kept. */
function LeavingAsked({ readings, onStay }: { readonly readings: number; readonly onStay: () => void }) {
  const { words } = useApp();
  const dialog = useRef<HTMLDialogElement>(null);
  const { way, stay, leave } = useLeavingAsked(readings > 0);
  // The way back may have scrolled the page: what is to be decided comes into view again.
  const goOn = () => {
    stay();
    onStay();
  };
  useEffect(() => {
    if (way === null) dialog.current?.close();
    else dialog.current?.showModal();
  }, [way]);
  return (
    <dialog ref={dialog} className="dialog" aria-labelledby="away-leaving" onClose={goOn}>
      <div className="form">
        <h2 id="away-leaving">{words.sentence('away.leavingTitle', { readings })}</h2>
        <p>{words.sentence('away.leavingSays')}</p>
        <div className="buttons">
          <button type="button" className="button button-first" onClick={stay}>
            {words.sentence('away.leavingStay')}
          </button>
          <button type="button" className="button" onClick={leave}>
            {words.sentence('away.leavingGo')}
          </button>
        </div>
      </div>
    </dialog>
  );
}
