import type { ChartRound, StoredEntry } from '@evenfall/record';
import { useEffect, useState } from 'react';
import { formIn, useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { stampText } from '../app/times.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { knownLearners } from '../round/learning.js';
import { entriesIn, useRecord } from '../round/useRound.js';
import { loadAgents, reloadRecord } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { useMay, useMeasuring, useSignedIn } from '../signIn/useAccess.js';
import { ownRounds } from './ownRounds.js';
import { presumedSupervisor } from './presumedSupervisor.js';
import { SideBySide } from './SideBySide.js';

type CountersignProps = {
  /** The round of the signing, of whatever kind that is. */
  readonly id: string;
  /** A learner's round, beside which a round of one's own can stand; null of a series. */
  readonly round: ChartRound | null;
  readonly signing: StoredEntry;
  /** Everybody who signed in its story: none of them countersigns it. */
  readonly signers: ReadonlySet<string>;
  readonly person: string;
};

/** A supervisor looks at a learner's round or series, with a reading of their own beside it if there is one, and signs for it. */
export function Countersign({ id, round, signing, signers, person }: CountersignProps) {
  const app = useApp();
  const { words, server, store } = app;
  const { asked } = useRecord(person);
  const known = useKept(({ known: { agents } }) => agents.value) ?? [];
  const inBook = useBook();
  const form = useForm(formIn(inBook, `countersign ${id}`));
  const [isAsked, setAsked] = useState(false);
  const [isOpen, setOpen] = useState(false);
  const [isKept, setKept] = useState(false);
  // Whoever comes here without the list of people has nobody to choose from yet; a form that is closed asks for nothing.
  useEffect(() => {
    if (isOpen) void loadAgents(app);
  }, [app, isOpen]);
  const measuring = useMeasuring();
  const [refused, setRefused] = useState<string | null>(null);
  const who = useSignedIn();
  const maySupervise = useMay('supervisor');
  const supervisors = known.filter((one) => !signers.has(one.id));
  const chosen = form.text('agent');
  const ids = supervisors.map((one) => one.id);
  const learners = knownLearners(app.store.get());
  const entries = asked.value === null ? [] : entriesIn(asked.value);
  // Whoever signs in countersigns under their own name; else whoever is measuring and no learner, until somebody is chosen.
  const presumed = presumedSupervisor(measuring, ids, learners, entries);
  const agent = who?.agent.id ?? (chosen === '' ? (presumed ?? '') : chosen);
  const name = known.find((one) => one.id === agent)?.name ?? who?.agent.name ?? '';
  const own = ownRounds(entries, agent, signing);
  const ownRound = own.find((one) => one.id === form.text('own')) ?? null;
  const verdict = form.text('verdict');
  const note = form.text('note').trim();
  const needsNote = verdict === 'no' && note === '';

  const sign = async () => {
    setAsked(true);
    setRefused(null);
    if (agent === '' || verdict === '' || needsNote) return;
    const content = {
      signing: signing.id,
      agrees: verdict === 'yes',
      ownRound: ownRound?.id ?? null,
      note: note === '' ? null : note,
    };
    const entry = {
      ...form.entry(),
      ...inBook,
      kind: 'countersigned' as const,
      schema: WRITTEN_SCHEMA,
      person,
      round: id,
      agent,
      role: 'supervisor' as const,
      device: store.get().kept.device,
      amends: null,
      content,
    };
    const answer = await server.call('addEntries', { body: { entries: [entry] } });
    if (answer.ok) {
      form.done();
      setAsked(false);
      setOpen(false);
      setKept(true);
      await reloadRecord(app, person, inBook.book);
    } else if (answer.offline) setRefused(words.sentence('app.unreachable'));
    else setRefused(words.sentence('app.refusedBy', { text: refusedBecause(answer, words) }));
  };
  if (!maySupervise || (who !== null && signers.has(who.agent.id)))
    return <p className="soft small">{words.sentence('chart.waitsForSupervisor')}</p>;
  if (!isOpen) {
    return (
      <div>
        <p role="status">{isKept ? words.sentence('chart.countersignKept') : null}</p>
        <button
          type="button"
          className="button"
          onClick={() => {
            setOpen(true);
            setKept(false);
          }}
        >
          {words.sentence(isKept ? 'chart.countersignAgain' : 'chart.countersign')}
        </button>
      </div>
    );
  }
  return (
    <form
      className="form countersign"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void sign();
      }}
    >
      <h4>{words.sentence('chart.countersign')}</h4>
      {who !== null ? (
        <p>{who.agent.name}</p>
      ) : (
        <Field
          label={words.sentence('chart.supervisor')}
          hint={words.sentence('chart.supervisorHint')}
          wrong={isAsked && agent === '' ? words.sentence('chart.supervisorMissing') : null}
        >
          {(control) => (
            <select {...control} value={agent} onChange={(event) => form.set('agent', event.target.value)}>
              <option value="">{words.sentence('chart.chooseSupervisor')}</option>
              {supervisors.map((one) => (
                <option key={one.id} value={one.id}>
                  {one.name}
                </option>
              ))}
            </select>
          )}
        </Field>
      )}
      {round === null || agent === '' ? null : own.length === 0 ? (
        <p className="soft small">{words.sentence('chart.noOwnRound', { who: name })}</p>
      ) : (
        <Field label={words.sentence('chart.ownRound', { who: name })}>
          {(control) => (
            <select
              {...control}
              value={form.text('own')}
              onChange={(event) => form.set('own', event.target.value)}
            >
              <option value="">{words.sentence('chart.noOwn')}</option>
              {own.map((one) => (
                <option key={one.id} value={one.id}>
                  {stampText(one.at, words)}
                </option>
              ))}
            </select>
          )}
        </Field>
      )}
      {ownRound === null || round === null ? null : <SideBySide learner={round} own={ownRound.round} />}
      <Choices
        legend={words.sentence('chart.verdict')}
        choices={[
          { id: 'yes', text: words.sentence('chart.agree') },
          { id: 'no', text: words.sentence('chart.disagree') },
        ]}
        chosen={verdict === '' ? null : verdict}
        onChoose={(id) => form.set('verdict', id)}
        wrong={isAsked && verdict === '' ? words.sentence('chart.verdictMissing') : null}
      />
      <Field
        label={words.sentence('chart.note')}
        wrong={isAsked && needsNote ? words.sentence('chart.noteMissing') : null}
      >
        {(control) => (
          <textarea
            {...control}
            rows={2}
            maxLength={1000}
            value={form.text('note')}
            onChange={(event) => form.set('note', event.target.value)}
          />
        )}
      </Field>
      <Refused text={refused} />
      <div className="buttons">
        <button type="submit" className="button button-first">
          {words.sentence('chart.signCountersign')}
        </button>
        <button type="button" className="button button-quiet" onClick={() => setOpen(false)}>
          {words.sentence('app.cancel')}
        </button>
      </div>
    </form>
  );
}
