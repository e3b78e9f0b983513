import { type ChartedSeries, type InForce, mayAddTo, seriesMade, withSleep } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { useSendEntry } from '../app/useSendEntry.js';
import { Refused } from '../parts/Refused.js';
import { TextLine } from '../parts/TextLine.js';
import { SERIES_SCHEMA } from '../round/entries.js';
import { SignAs, useSigner } from '../round/SignAs.js';
import { reloadRecord } from '../server/load.js';
import { SleepTimes } from './SleepTimes.js';
import { sleepFields, sleepTyped } from './sleepTyped.js';

type PutRightProps = {
  readonly person: string;
  readonly series: ChartedSeries;
  /** The rules of the version that the series names. */
  readonly rules: InForce;
};

/** Puts the hours of sleep of a signed recording right, as an amendment with its reason. */
export function PutSleepRight({ person, series, rules }: PutRightProps) {
  const { words } = useApp();
  const [isOpen, setOpen] = useState(false);
  const { agent, isPreliminary } = useSigner();
  const may = mayAddTo(series, agent, isPreliminary);
  if (series.isInError || may === 'contested') return null;
  // What nobody may sign is not asked for; who may is said.
  if (agent !== null && may !== 'yes')
    return <p className="small soft not-printed">{words.sentence(`away.sleepNot-${may}`)}</p>;
  if (!isOpen)
    return (
      <div className="buttons not-printed">
        <button type="button" className="button button-quiet" onClick={() => setOpen(true)}>
          {words.sentence('away.putSleepRight')}
        </button>
      </div>
    );
  return <SleepForm person={person} series={series} rules={rules} onDone={() => setOpen(false)} />;
}

function SleepForm({ person, series, rules, onDone }: PutRightProps & { readonly onDone: () => void }) {
  const app = useApp();
  const { words, program } = app;
  const { content, amended, round } = series;
  const form = useForm(`sleep ${series.id}`, {
    ...sleepFields(content),
    asleepUnknown: content.asleep === null ? 'yes' : '',
  });
  const signer = useSigner();
  const { send, refused } = useSendEntry(form, person, () => reloadRecord(app, person));
  const [isAsked, setAsked] = useState(false);

  const isUnknown = form.text('asleepUnknown') !== '';
  const typed = sleepTyped(form.text);
  const said = isUnknown ? { asleep: null, nap: null } : typed;
  const reason = form.text('reason').trim();
  const wrong = isUnknown
    ? null
    : typed.wrong !== null
      ? words.sentence(`away.${typed.wrong}`)
      : typed.asleep === null
        ? words.sentence('away.sayAsleep')
        : null;
  const isSame = JSON.stringify(sleepFields(said)) === JSON.stringify(sleepFields(content)) && wrong === null;
  const close = () => {
    form.done();
    onDone();
  };
  const keep = async () => {
    setAsked(true);
    const [standing] = amended.current;
    if (wrong !== null || isSame || reason === '' || standing === undefined) return;
    const status = signer.isPreliminary ? 'preliminary' : 'final';
    const made = seriesMade({ ...withSleep(content, said), status }, series.rules ?? rules, program);
    const isTaken = await send({
      kind: 'series',
      schema: SERIES_SCHEMA,
      round,
      content: made,
      // What is known of the person is of the day on which the readings came in.
      measuredAt: standing.measuredAt,
      amends: { entry: standing.id, reason: 'other', text: reason },
    });
    if (isTaken) close();
  };
  return (
    <form
      className="form sign-form not-printed"
      aria-label={words.sentence('away.putSleepRight')}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <h2>{words.sentence('away.putSleepRight')}</h2>
      <SleepTimes
        form={{
          text: form.text,
          set: (field, text) => {
            form.set(field, text);
            // Hours that are typed are known.
            if (field !== 'asleepUnknown' && text !== '') form.set('asleepUnknown', '');
          },
        }}
        rules={rules.ambulatoryRules}
      />
      <TextLine
        label={words.sentence('away.reason')}
        wrong={isAsked && reason === '' ? words.sentence('away.reasonMissing') : null}
        value={form.text('reason')}
        onType={(text) => form.set('reason', text)}
      />
      <SignAs signer={signer} />
      {isAsked && (wrong !== null || isSame) ? (
        <p className="notice" role="alert">
          {wrong ?? words.sentence('away.sleepSame')}
        </p>
      ) : null}
      <Refused text={refused} />
      <div className="buttons">
        <button type="submit" className="button button-first">
          {words.sentence('away.sign')}
        </button>
        <button type="button" className="button" onClick={close}>
          {words.sentence('away.undo')}
        </button>
      </div>
    </form>
  );
}
