import {
  type ActNowClosedContent,
  type ChartRound,
  type OpenActNow,
  type StoredEntry,
  saysSomething,
  wrongTelling,
} from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useState } from 'react';
import { formIn, useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { stampText } from '../app/times.js';
import { Field } from '../parts/Field.js';
import { IncidentalNote } from '../parts/IncidentalNote.js';
import { Refused } from '../parts/Refused.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { CLOSED_SCHEMA } from '../round/entries.js';
import { closed, closingOf, isWorthRepeating } from '../round/waiting.js';
import { reloadRecord } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { useMeasuring } from '../signIn/useAccess.js';
import type { WaitingRound } from '../store/kept.js';
import { ActNowList } from './ActNowList.js';
import { type ActNowSaid, isAllOpen } from './allOpen.js';

type CloseProps = {
  readonly round: Pick<ChartRound, 'id'>;
  readonly person: string;
  readonly open: readonly OpenActNow[];
  /** Every entry of the round or series that is shown: what is closed covers those alone. */
  readonly saw: readonly StoredEntry[];
  /** What it is of, where it does not stand beside it. */
  readonly says?: string;
  /** Every alert that stands just above, told or not: what is open is named again unless it is all of them. */
  readonly above?: readonly ActNowSaid[];
  /** It is closed and goes from the page, with what was kept of it in words. */
  readonly onClosed?: (said: string) => void;
};

/** Acts-now of a round that are open, and the form that closes them: whom was told, when, what was said back. */
export function CloseActNow({ round, person, open, saw, says, above, onClosed }: CloseProps) {
  const app = useApp();
  const { words, clock, server, store, sending } = app;
  const now = clock.stamp();
  const inBook = useBook();
  const form = useForm(formIn(inBook, `close ${round.id}`), { at: now.at.slice(0, 16) });
  const agent = useMeasuring();
  const [isAsked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const [whom, said] = [form.text('whom').trim(), form.text('said').trim()];
  const toldAt = clock.stampOf(form.text('at'));
  const wrong = toldAt === null ? [] : wrongTelling({ toldWhom: whom, saidBack: said, toldAt }, saw, now.at);
  const isTooEarly = wrong.includes('before-measured');
  const isTimeWrong = toldAt === null || isTooEarly || wrong.includes('ahead');

  const waiting = useKept(({ kept }) => closingOf(kept, round.id));

  const close = async () => {
    setAsked(true);
    setRefused(null);
    if (toldAt === null || wrong.length > 0) return;
    if (agent === null) return setRefused(words.sentence('review.needsAgent'));
    const entry = {
      frame: 1 as const,
      ...form.entry(),
      ...inBook,
      kind: 'act-now-closed' as const,
      schema: CLOSED_SCHEMA,
      person,
      round: round.id,
      agent,
      role: 'observer' as const,
      device: store.get().kept.device,
      amends: null,
      content: {
        conditions: open.map(({ condition }) => condition),
        toldWhom: whom,
        toldAt,
        saidBack: said,
        saw: saw.map(({ id }) => id),
      },
    };
    const answer = await server.call('addEntries', { body: { entries: [entry] } });
    if (answer.ok) {
      form.done();
      onClosed?.(words.sentence('chart.closedNow', { whom, at: stampText(toldAt, words), said: says ?? '' }));
      await reloadRecord(app, person, inBook.book);
    } else if (isWorthRepeating(answer.status)) {
      // It was acted on, whatever the network does: it waits like a round that was signed, under the same id.
      store.change((state) => ({ ...state, kept: closed(state.kept, entry) }));
      form.done();
      void sending.now();
    } else setRefused(words.sentence('app.refusedBy', { text: refusedBecause(answer, words) }));
  };
  const missing = (text: string, key: 'chart.toldWhomMissing' | 'chart.saidBackMissing') =>
    isAsked && !saysSomething(text) ? words.sentence(key) : null;
  return (
    // A group and no landmark: a chart may have several.
    // biome-ignore lint/a11y/useSemanticElements: a fieldset holds controls alone, and this holds what was found too
    <div className="act-now" role="group" aria-label={words.sentence('result.actNow')}>
      {above !== undefined ? (
        <h2>{words.sentence('chart.actNowOpen')}</h2>
      ) : says === undefined ? (
        <h4>{words.sentence('chart.actNowOpen')}</h4>
      ) : (
        <>
          <h2>{words.sentence('chart.actNowOpen')}</h2>
          <p className="small">{says}</p>
        </>
      )}
      {above !== undefined && isAllOpen(above, open) ? null : <ActNowList alerts={open} />}
      <IncidentalNote />
      {waiting === undefined ? (
        <form
          className="form"
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            void close();
          }}
        >
          <div className="told">
            <Field label={words.sentence('chart.toldWhom')} wrong={missing(whom, 'chart.toldWhomMissing')}>
              {(control) => (
                <input
                  {...control}
                  type="text"
                  autoComplete="off"
                  maxLength={200}
                  value={form.text('whom')}
                  onChange={(event) => form.set('whom', event.target.value)}
                />
              )}
            </Field>
            <Field
              label={words.sentence('chart.toldAt')}
              wrong={
                isAsked && isTimeWrong
                  ? words.sentence(isTooEarly ? 'chart.toldTooEarly' : 'amend.timeMissing')
                  : null
              }
            >
              {(control) => (
                <input
                  {...control}
                  type="datetime-local"
                  value={form.text('at')}
                  onChange={(event) => form.set('at', event.target.value)}
                />
              )}
            </Field>
          </div>
          <Field label={words.sentence('chart.saidBack')} wrong={missing(said, 'chart.saidBackMissing')}>
            {(control) => (
              <textarea
                {...control}
                rows={2}
                maxLength={1000}
                value={form.text('said')}
                onChange={(event) => form.set('said', event.target.value)}
              />
            )}
          </Field>
          {agent === null ? <WhoMeasures /> : null}
          <Refused text={refused} />
          <button type="submit" className="button button-first">
            {words.sentence('chart.close')}
          </button>
        </form>
      ) : (
        <p className="standing" role="status">
          {waitingText(waiting, words)}
        </p>
      )}
    </div>
  );
}

/** What was said on this device and waits for the server, word for word. */
function waitingText({ entries }: WaitingRound, words: Words): string {
  const [entry] = entries;
  if (entry === undefined) return '';
  const { toldWhom, toldAt, saidBack } = entry.content as ActNowClosedContent;
  return words.sentence('chart.closedWaiting', {
    whom: toldWhom,
    at: stampText(toldAt, words),
    said: saidBack,
  });
}
